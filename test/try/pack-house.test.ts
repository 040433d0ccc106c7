import { beforeAll, describe, expect, test } from 'vitest';
import { makeBook, type Book } from '../../src/core/book/index.js';
import { writeChoices } from '../../src/core/records/index.js';
import { packHouse, tryPicks, unpackHouse, withPicks, type PackedHouse, type Pick } from '../../src/try/index.js';
import { canonicalJson } from '../../src/signoff/index.js';
import { keptLayouts } from '../../src/core/takeoff/index.js';
import { demoHouse, demoOf } from '../demo-house.js';
import { packedDemo } from './packed-demo.js';
import { seededPicks } from './seeded-picks.js';

const day = '2026-04-20';
let book: Book;
let packed: PackedHouse;

beforeAll(async () => {
  ({ book, packed } = await packedDemo(day));
});

/** As it lies beside the pages and comes back from there. */
const carried = (): PackedHouse => JSON.parse(JSON.stringify(packed)) as PackedHouse;

/** What a Book says of the house as it stands: alternatives and texts of records stay behind. */
function standing({ alternatives: _, sources: _sources, ...rest }: Book): string {
  // What is signed is marked afterwards.
  return canonicalJson(rest).replaceAll(/,?"signed":\{[^}]*\}/gu, '');
}

describe('a packed house', () => {
  test('is plain JSON: nothing is lost on the way', () => {
    expect(carried()).toEqual(packed);
  });

  test('gives the Book that the records give', () => {
    const made = tryPicks(unpackHouse(carried()))([], day);
    expect(made.value && standing(made.value) === standing(book)).toBe(true);
  });

  test('gives with any picks the Book that records with these choices give', async () => {
    const house = await demoHouse();
    const compose = tryPicks(unpackHouse(carried()));
    // Layouts are held against themselves elsewhere; to lay everything out anew for each set takes its time.
    const options = { laid: house.laid, agreedSum: packed.agreedSum, layOut: keptLayouts() };
    const bare = { ...house.records, sources: [], alternatives: [], priceLists: [] };
    for (const picks of seededPicks(book, 6)) {
      const straight = makeBook(withPicks(bare, picks, day), house.measures, day, options);
      const tried = compose(picks, day);
      expect(tried.value !== undefined, JSON.stringify(picks)).toBe(true);
      expect(canonicalJson(tried.value) === canonicalJson(straight.value), JSON.stringify(picks)).toBe(true);
    }
  });

  test('gives the total of the records once the choice is written into them', () => {
    const pick: Pick = { selection: 'great-room/stone-facing/breast', option: 'full-bed-ledge' };
    const tried = tryPicks(unpackHouse(carried()))([pick], day).value;
    const sources = book.sources.map((source) => {
      if (source.path !== 'content/rooms/great-room.md') return source;
      const room = packed.records.rooms.find(({ slug }) => slug === 'great-room');
      const place = room?.selections.find(({ category }) => category === 'stone-facing');
      if (!place) throw new Error('the demo has no stone on its breast');
      const choice = { path: place.path, option: 'full-bed-ledge', on: day, by: 'The owners' };
      return { ...source, text: writeChoices(source.text, [choice]) };
    });
    expect(tried?.money.today).toBe(demoOf(sources, day).book?.money.today);
  });

  test('holds no text of a record beside its prose, and neither alternatives nor price lists', () => {
    expect(packed.records.sources).toEqual([]);
    expect(packed.records.alternatives).toEqual([]);
    expect(JSON.stringify(packed)).not.toContain('considering: [');
  });
});

test('each pick is whole: differences of single ones do not add up', () => {
  const compose = tryPicks(unpackHouse(carried()));
  const total = (picks: readonly Pick[]): number => compose(picks, day).value?.money.today ?? NaN;
  const stone: Pick = { selection: 'great-room/stone-facing/breast', option: 'full-bed-ledge' };
  const hearth: Pick = { selection: 'great-room/hearth/breast.hearth', option: 'granite-flamed-2in' };
  const today = total([]);
  const added = total([stone]) - today + (total([hearth]) - today);
  expect(total([stone, hearth]) - today).not.toBe(added);
});

test('what is picked back is as it was', () => {
  const records = unpackHouse(carried()).records;
  const none: Pick = { selection: 'great-room/stone-facing/breast', option: null };
  expect(withPicks(records, [], day)).toBe(records);
  expect(withPicks(records, [none], day)).toEqual(records);
});

test('a house is packed with what is locked, by its Book', async () => {
  const [first] = book.selections.filter(({ state }) => state === 'chosen');
  if (!first) throw new Error('nothing is chosen in the demo');
  const marked = (state: 'ordered' | 'installed'): Book => ({
    ...book,
    selections: book.selections.map((one) => (one.id === first.id ? { ...one, state } : one)),
  });
  const house = await demoHouse();
  const lockIn = (state: 'ordered' | 'installed') =>
    packHouse({ ...house, snapshot: '' }, marked(state)).locks[first.id];
  expect(lockIn('ordered')).toBe('It is ordered: changing it takes a change order.');
  expect(lockIn('installed')).toBe('It is installed: changing it takes a change order.');
});
