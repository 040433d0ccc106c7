import { beforeAll, describe, expect, test } from 'vitest';
import { picturedRoom, type Book, type BookRoom, type BookSelection } from '../../src/core/book/index.js';
import { keepBy, type IsoDate } from '../../src/base/units/index.js';
import { svgText } from '../../src/base/svg/index.js';
import { pictureWords } from '../../src/draw/index.js';
import { compareBooks } from '../../src/disk/load/index.js';
import { comparisonPages } from '../../src/site/comparison/index.js';
import { alike, choicePictures, drawPicture, pictureFiles, setPictures } from '../../src/site/pictures.js';
import type { Page } from '../../src/site/page.js';
import { renderPage } from '../../src/site/render-page.js';
import { allSheets } from '../../src/site/sheets.js';
import { makeView, type View } from '../../src/site/view.js';
import { demoBook, demoOf } from '../demo-house.js';

const day = '2026-04-23' as IsoDate;
let book: Book;
let view: View;
let sheets: readonly Page[];

beforeAll(async () => {
  book = await demoBook(day);
  view = makeView(book);
  sheets = allSheets(view);
});

const written = (page: Page | undefined, of: View = view): string => {
  if (!page) throw new Error('no such page');
  return renderPage(page, of, (_language, text) => text);
};
const html = keepBy(
  (path: string) => path,
  (path) => written(sheets.find((sheet) => sheet.path === path)),
);
const wordsOf = (markup: string): string =>
  markup
    .replace(/<[^>]+>/g, '')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ')
    .trim();
const room = (slug: string): BookRoom => book.rooms.find((one) => one.slug === slug)!;
const selection = (id: string): BookSelection => book.selections.find((one) => one.id === id)!;
const repeatedIds = (page: string): string[] => {
  const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id!);
  return ids.filter((id, index) => ids.indexOf(id) !== index);
};

describe('the picture on a room page', () => {
  const slugs = ['great-room', 'gallery', 'stair-hall', 'kitchen', 'primary-bath'];

  test.each(slugs)('%s lists what the drawing tells: numbers, places, finishes, and what is not drawn', (slug) => {
    const page = html(`rooms/${slug}.html`);
    const { keys, unseen, drawing } = drawPicture(room(slug), view, { id: 'look' });
    const listed = [...page.matchAll(/<dl class="look-keys">(.*?)<\/dl>/gs)]
      .flatMap(([, list]) => [...list!.matchAll(/<dt>(.*?)<\/dt><dd>(.*?)<\/dd>/gs)])
      .map(([, at, finish]) => `${wordsOf(at!)} | ${wordsOf(finish!)}`);
    const told = [
      ...keys.filter(({ number }) => number !== undefined),
      ...keys.filter(({ number }) => number === undefined),
      ...unseen,
    ].map(({ number, at, finish }) => `${number === undefined ? '' : `${number} `}${at} | ${finish}`);
    expect(listed).toEqual(told);
    const svg = svgText(drawing.svg);
    const numbers = [...svg.matchAll(/class="number".*?>(\d+)<\/text>/g)].map(([, number]) => Number(number));
    expect(numbers.toSorted()).toEqual(keys.flatMap(({ number }) => number ?? []));
    for (const { at, finish } of keys) expect(drawing.description).toContain(`${at}: ${finish}`);
    expect(page).toContain('role="img"');
    expect(wordsOf(page)).toContain(pictureWords);
    expect(page.indexOf('id="look-title"')).toBeLessThan(page.indexOf('id="draw-plan-title"'));
  });

  test('says in words what is still open', () => {
    expect(wordsOf(html('rooms/great-room.html'))).toContain('Stone facing: to be decided');
  });

  test('tells finishes on what was taken away, and nothing that is hidden in the room itself', () => {
    const { unseen } = drawPicture(room('entry'), view, { id: 'look' });
    const finishes = unseen.map(({ at, finish }) => `${at}: ${finish}`);
    expect(finishes).toContain('Ceiling: Pine shiplap 1x8');
    expect(finishes.join()).not.toContain('Ceiling behind boards');
  });

  test('repeats no id, on room pages and where pictures stand beside each other', () => {
    for (const { path } of sheets.filter((sheet) => /^(rooms|choices|alternatives|index)/.test(sheet.path)))
      expect([path, repeatedIds(html(path))]).toEqual([path, []]);
  });

  test('weighs 60 kB at most, and says nothing of how it was made', () => {
    for (const each of book.rooms) {
      const text = svgText(drawPicture(each, view, { id: 'look' }).drawing.svg);
      expect(text.length).toBeLessThanOrEqual(60_000);
      expect(text).not.toMatch(/render/i);
    }
  });
});

describe('a picture', () => {
  test('is drawn once, and issued with the ids that are asked for', () => {
    const [one, other] = ['one', 'other'].map((id) => drawPicture(room('primary-bath'), view, { id }));
    expect(other!.nodes).toBe(one!.nodes);
    expect(svgText(other!.drawing.svg).replace(/other-/g, 'one-')).toBe(svgText(one!.drawing.svg));
  });

  test('that is cut to a place leaves out what lies beyond, and is named for the place', () => {
    const focus = ['breast/hearth'];
    const cut = drawPicture(room('great-room'), view, { id: 'look', plain: true, focus });
    const whole = drawPicture(room('great-room'), view, { id: 'look', plain: true });
    expect(cut.nodes.length).toBeLessThan(whole.nodes.length / 2);
    expect(cut.drawing.description).toMatch(/^Chimney breast, Hearth, and what is around/);
    expect(whole.drawing.description).toContain('Floor: White oak, engineered, 7 inch');
  });
});

describe('options in the room', () => {
  test('stand side by side from one view, at one scale, each with its name', () => {
    for (const id of ['great-room/stone-facing/breast', 'stair-hall/railing/stair']) {
      const pictures = choicePictures(selection(id), view);
      expect(pictures.map(({ option }) => option.slug)).toEqual(selection(id).alternatives.map(({ option }) => option));
      expect(new Set(pictures.map(({ cutaway }) => JSON.stringify([cutaway.view, cutaway.bounds]))).size).toBe(1);
      const page = html(view.choicePath(selection(id))!);
      const sources = pictures.map(({ path }) => page.indexOf(`src="../../../${path}"`));
      const names = pictures.map(({ option }) => page.indexOf(`${option.name}</`, sources.at(-1)));
      // Pictures in a row, and below them the names in the same order.
      expect(Math.min(...sources)).toBeGreaterThan(0);
      expect([...sources, ...names].toSorted((a, b) => a - b)).toEqual([...sources, ...names]);
      expect(alike(pictures)).toHaveLength(pictures.length);
      expect(page).not.toContain('cannot be told apart');
    }
  });

  test('are seen from where their place is seen, where the room’s own view has it not', () => {
    const door = selection('kitchen/interior-door/D10');
    const pictures = choicePictures(door, view);
    expect(pictures.length).toBeGreaterThan(1);
    const own = drawPicture(room('kitchen'), view, { id: 'look' });
    expect(own.unseen.map(({ at }) => at)).toContain('Door D10');
    for (const { cutaway } of pictures) {
      expect(cutaway.view).not.toEqual(own.view);
      expect(cutaway.keys.map(({ at }) => at)).toContain('Door D10');
    }
    // Beams that stand before the door are seen through.
    expect(svgText(pictures[0]!.cutaway.drawing.svg)).toContain('stroke-opacity="0.6"');
    const [breast] = choicePictures(selection('great-room/stone-facing/breast'), view);
    expect(svgText(breast!.cutaway.drawing.svg)).not.toContain('stroke-opacity');
    // What the room's own view has is seen from there.
    const [beams] = choicePictures(selection('kitchen/exposed-timber/beams'), view);
    expect(beams!.cutaway.view).toEqual(own.view);
  });

  test('are not drawn where the choice cannot be seen', () => {
    const insulation = selection('great-room/insulation/north');
    expect(choicePictures(insulation, view)).toEqual([]);
    expect(html(view.choicePath(insulation)!)).not.toContain('class="pictures"');
  });

  test('are said to look the same where two do and a third does not', () => {
    const stair = selection('stair-hall/stair/stair');
    const [same] = alike(choicePictures(stair, view)).filter((group) => group.length > 1);
    const names = same!.map(({ option }) => option.name).join('; ');
    expect(wordsOf(html(view.choicePath(stair)!))).toContain(`These cannot be told apart in the drawing: ${names}.`);
  });
});

describe('sets of choices in the rooms', () => {
  test('stand beside what is decided today, where they can be seen', () => {
    const pictures = setPictures(view);
    const page = html('alternatives.html');
    for (const { room: each, today, sets } of pictures) {
      expect(page).toContain(`id="look-${each.slug}"`);
      for (const { path, cutaway } of [today, ...sets]) {
        expect(page).toContain(`src="${path}"`);
        expect(cutaway.view).toEqual(today.cutaway.view);
      }
    }
    // The garage is in neither.
    expect(pictures.map(({ room: each }) => each.slug)).not.toContain('garage');
  });

  test('take away what they choose to leave out', () => {
    const kitchen = setPictures(view).find(({ room: each }) => each.slug === 'kitchen')!;
    const plain = kitchen.sets.find(({ set }) => set.slug === 'plain-house')!;
    const beams = ({ cutaway: { keys } }: typeof plain | typeof kitchen.today): boolean =>
      keys.some(({ at }) => at === 'Kitchen beams');
    expect([beams(kitchen.today), beams(plain)]).toEqual([true, false]);
  });
});

describe('the start page', () => {
  test('shows the room that the house names, and leads to it', () => {
    expect(picturedRoom(view.book)?.slug).toBe('great-room');
    expect(html('index.html')).toMatch(/<a href="rooms\/great-room\.html"[^>]*><figure class="picture">/);
  });

  test('else the room with most to decide', () => {
    const most = Math.max(...book.rooms.map(({ open }) => open));
    expect(picturedRoom({ ...book, house: { ...book.house, picture: 'gone' } })?.open).toBe(most);
  });
});

test('every picture that pages show from a file is written, and no other', () => {
  const withPictures = sheets.filter(({ path }) => /^(index|alternatives|choices)/.test(path));
  const shown = withPictures.flatMap(({ path }) => [
    ...html(path).matchAll(/src="(?:\.\.\/)*(assets\/pictures\/[^"]+)"/g),
  ]);
  expect([...new Set(shown.map(([, path]) => path!))].toSorted()).toEqual(
    pictureFiles(view)
      .map(({ path }) => path)
      .toSorted(),
  );
});

describe('a comparison', () => {
  const pageAfter = (edit: readonly [string, string]): string => {
    const path = 'content/rooms/great-room.md';
    const after = book.sources.map((source) =>
      source.path === path ? { path, text: source.text.replace(...edit) } : source,
    );
    const newer = demoOf(after, day).book!;
    const comparison = compareBooks(book, newer, { from: 'issue 1', to: 'today' });
    const page = comparisonPages(comparison, book, newer).find((each) => each.path === 'rooms/great-room.html');
    return written(page, makeView(newer));
  };

  test('shows the room as it was to look and as it will, where a changed choice can be seen', () => {
    const page = pageAfter(['    chosen: fir-tg-1x6\n', '    chosen: alder-nickel-gap-1x8\n']);
    expect(page).toContain('id="was-look-title"');
    expect(page).toContain('id="now-look-title"');
    expect(repeatedIds(page)).toEqual([]);
  });
});
