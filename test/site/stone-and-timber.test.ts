import { expect, test } from 'vitest';
import { renderPage } from '../../src/site/render-page.js';
import { allSheets } from '../../src/site/sheets.js';
import { makeView } from '../../src/site/view.js';
import { inLocale } from '../../src/base/units/index.js';
import { demoBook } from '../demo-house.js';

const book = await demoBook('2026-04-23');
const view = makeView(book);
const pages = inLocale(book.house, () => allSheets(view));

/** What stands on a choice's page at one scale: how wide each is, and what is said below. */
function atOneScale(path: string): readonly (readonly [wide: number, words: string])[] {
  const page = pages.find((one) => one.path === path);
  if (!page) throw new Error(`no page ${path}`);
  const html = renderPage(page, view, (_language, text) => text);
  const [, part = ''] = /class="one-scale">(.*?)<\/section>/su.exec(html) ?? [];
  return [...part.matchAll(/<figure><(?:img|svg)[^>]* width="([\d.]+)".*?<figcaption>(.*?)<\/figcaption>/gsu)].map(
    ([, wide, words = '']) => [Number(wide), words.replace(/<[^>]+>/gu, '').replaceAll('&quot;', '"')],
  );
}

test('stone that may be chosen stands beside the cut ends of the room’s timbers, all at 4 pixels an inch', () => {
  expect(atOneScale('choices/great-room/stone-facing/breast.html')).toEqual([
    [192, 'Cast ledge 4\'-0" of it'],
    [192, 'Full-bed ledge stone 4\'-0" of it'],
    [192, 'Thin natural ledge stone 4\'-0" of it'],
    [192, 'Thin natural ashlar 4\'-0" of it'],
    [30, 'Douglas fir 8x12, free of heart cut end, 7 1/2" × 11 1/2"'],
    [30, 'Douglas fir 8x10, free of heart cut end, 7 1/2" × 9 1/2"'],
  ]);
});

test('timbers that may be chosen stand beside the room’s stone, and stand for nothing where there is none', () => {
  const inGreatRoom = atOneScale('choices/great-room/exposed-timber/rafters.html');
  expect(inGreatRoom.map(([wide]) => wide)).toContain(192);
  expect(inGreatRoom.map(([, words]) => words).filter((words) => words.includes('cut end')).length).toBeGreaterThan(1);
  expect(atOneScale('choices/kitchen/exposed-timber/beams.html')).toEqual([]);
});
