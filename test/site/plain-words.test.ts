import { expect, test } from 'vitest';
import { inLocale } from '../../src/base/units/index.js';
import { renderPage } from '../../src/site/render-page.js';
import { allSheets } from '../../src/site/sheets.js';
import { makeView } from '../../src/site/view.js';
import { demoBook } from '../demo-house.js';

const book = await demoBook('2026-04-23');
const view = makeView(book);
/** Pages that owners and foremen read: records and the page that lists them name files. Of choices, those of one room. */
const pages = inLocale(book.house, () => allSheets(view)).filter(
  ({ path }) => !/^records\b/u.test(path) && !/^choices\/(?!great-room\/)/u.test(path),
);

/** What stands on a page for people, tag by tag, without what `To accept it` holds. */
function lines(html: string): string[] {
  return html
    .slice(html.indexOf('<main'), html.lastIndexOf('</main>'))
    .replace(/<details class="caution-record">.*?<\/details>/gsu, '')
    .split(/<[^>]+>/u);
}

test('no page reads like a program: no file, no id of a caution, no slug of an option', () => {
  const slugs = new Set(book.options.map(({ slug }) => slug).filter((slug) => slug.split('-').length > 2));
  const ids = book.cautions.map(({ id }) => id);
  expect(slugs.size).toBeGreaterThan(20);
  expect(ids.length).toBeGreaterThan(5);
  const found = pages.flatMap((page) =>
    lines(renderPage(page, view, (_language, text) => text))
      .filter((line) => /\w\.md\b/u.test(line) || slugs.has(line.trim()) || ids.some((id) => line.includes(id)))
      .map((line) => `${page.path}: ${line.trim().slice(0, 100)}`),
  );
  expect(found.slice(0, 20)).toEqual([]);
});

test('a door says the name of the paint that it is coated with', () => {
  const door = book.options.find(({ slug }) => slug === 'three-panel-painted-80');
  const paint = book.options.find(({ category, slug }) => category === 'paint' && slug === 'satin-fog');
  expect(door?.attributes.find(({ name }) => name === 'coating')?.attribute.text).toBe(paint?.name);
});
