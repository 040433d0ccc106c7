import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { makeBook, priceChoices, type Book, type BookHouseAlternative } from '../../src/core/book/index.js';
import { selectionId, type HouseAlternative, type Records, type RoomMeasure } from '../../src/core/model/index.js';
import { keptLayouts } from '../../src/core/takeoff/index.js';
import { loadHouse } from '../../src/disk/load/index.js';
import { smallBook, type Edits } from './small-house.js';

const on = '2026-04-20';
const layOut = keptLayouts();
let records: Records;
let measures: ReadonlyMap<string, RoomMeasure>;
let today: Book;

beforeAll(async () => {
  const { house } = await loadHouse(join(import.meta.dirname, '../..'));
  if (!house) throw new Error('the demo house has errors');
  ({ records, measures } = house);
  today = bookWith([]);
});

function bookWith(alternatives: readonly HouseAlternative[]): Book {
  const book = makeBook({ ...records, alternatives }, measures, on, { layOut }).value;
  if (!book) throw new Error('the demo house has errors');
  return book;
}

function setOf(slug: string, choices: HouseAlternative['choices']): HouseAlternative {
  return { slug, name: slug, throughout: [], choices, body: '', origin: records.house.origin };
}

/** The demo's records with what stands on the lines of an alternative chosen in them, as a person would write it. */
function chosen({ lines }: BookHouseAlternative): Records {
  const options = new Map(lines.map(({ selection, option }) => [selection, option?.split('/')[1] ?? 'none']));
  return {
    ...records,
    rooms: records.rooms.map((room) => ({
      ...room,
      selections: room.selections.map((selection) => {
        const option = options.get(selectionId(room.slug, selection));
        return option === undefined || option === selection.chosen
          ? selection
          : { ...selection, chosen: option, facts: [] };
      }),
    })),
  };
}

const sum = (amounts: readonly number[]): number => amounts.reduce((total, amount) => total + amount, 0);

/** What an alternative says of its money, against the house with these choices written into its records. */
function expectSound(one: BookHouseAlternative): void {
  const { lines, allowances, elsewhere, onNet, change, total } = one;
  const parts = [...lines, ...allowances].map((each) => each.change);
  expect(sum(parts) + elsewhere + onNet.markup + onNet.fee, one.slug).toBe(change);
  expect(total - today.money.today, one.slug).toBe(change);
  expect(priceChoices(chosen(one), measures).value?.money.today, one.slug).toBe(total);
}

describe('an alternative for the whole demo house', () => {
  test('of one choice comes to what the page of that choice shows', () => {
    const open = today.selections.filter(({ state, allowance }) => state === 'open' && allowance !== undefined);
    const cases = open.flatMap(({ id, alternatives }) => alternatives.map((each) => ({ id, each })));
    expect(cases.length).toBeGreaterThan(20);
    const sets = cases.map(({ id, each }, index) => setOf(`n${index}`, [{ selection: id, option: each.option }]));
    bookWith(sets).alternatives.forEach((one, index) => {
      const { id, each } = cases[index] ?? {};
      expect(one.total, `${id} ${each?.option}`).toBe(each?.houseTotal);
      expect(one.decideBy, id).toBe(each?.decision.by);
    });
  });

  test('as recorded adds up, and is the house with its choices written down', () => {
    const { alternatives } = bookWith(records.alternatives);
    expect(alternatives.map(({ slug }) => slug)).toEqual(['plain-house', 'stone-cable-and-alder']);
    alternatives.forEach(expectSound);
  });

  test('leaves a wall that the first room declines to the room on its other side', () => {
    const choices = [{ selection: 'pantry/sound-insulation/south', option: 'none' }];
    const [one] = bookWith([setOf('bare', choices)]).alternatives;
    if (!one) throw new Error('the alternative is missing');
    expectSound(one);
    expect(one.elsewhere).toBeGreaterThan(0);
  });

  test('adds up whatever it chooses', () => {
    const places = today.selections.filter(({ alternatives }) => alternatives.length > 1);
    const choice = fc.constantFrom(...places).chain(({ id, alternatives }) =>
      fc.record({
        selection: fc.constant(id),
        option: fc.constantFrom('none', ...alternatives.map(({ option }) => option)),
      }),
    );
    const set = fc.uniqueArray(choice, { selector: ({ selection }) => selection, minLength: 1, maxLength: 12 });
    // All of them beside one Book: making that anew for each would take a minute.
    const sets = fc.array(set, { minLength: 20, maxLength: 20 });
    fc.assert(
      fc.property(sets, (all) =>
        bookWith(all.map((choices, index) => setOf(`n${index}`, choices))).alternatives.forEach(expectSound),
      ),
      { numRuns: 1 },
    );
  });

  test('that changes what is chosen on an allowance has what is open there at its standard too', () => {
    const choices = [{ selection: 'bedroom-2/floor/floor', option: 'nylon-cut-pile' }];
    const [one] = bookWith([setOf('cheaper', choices)]).alternatives;
    expect(one?.lines.filter(({ isRest }) => isRest).map(({ selection }) => selection)).toEqual([
      'bedroom-3/floor/floor',
      'bunk-room/floor/floor',
    ]);
    expect(one?.allowances.map(({ id }) => id)).toEqual(['flooring']);
  });

  test('chooses nothing: the house is what it was', () => {
    const beside = bookWith(records.alternatives);
    expect(beside.alternatives).toHaveLength(2);
    expect({ ...beside, alternatives: [] }).toEqual(today);
  });
});

describe('an alternative for the small house', () => {
  const study = 'content/rooms/study.md';
  const withSet = (front: string, edits: Edits = {}): Edits => ({
    ...edits,
    'content/alternatives/fir.md': `---\nname: Fir\n${front}\n---\n\nFir overhead.\n`,
  });

  test('throughout takes an option where it may be chosen, and leaves what is ordered', () => {
    const lines = (edits: Edits) =>
      smallBook(
        withSet('throughout: { ceiling-board: fir-tg-1x6 }', edits),
        on,
        ({ code }) => code === 'alternative-nowhere',
      ).alternatives[0]?.lines;
    expect(lines({})).toMatchObject([{ selection: 'study/ceiling-board/ceiling', isOpen: true }]);
    const ordered =
      '[pine-shiplap-1x8, fir-tg-1x6]\n    chosen: pine-shiplap-1x8\n    chosen-on: 2026-03-01\n    ordered: { on: 2026-03-02, option: pine-shiplap-1x8 }\n';
    expect(lines({ [study]: [['[pine-shiplap-1x8, fir-tg-1x6]\n', ordered]] })).toEqual([]);
  });

  test('weighs its lines with it and today, and says what is seen with it', () => {
    const [one] = smallBook(withSet('choices: { study/ceiling-board/ceiling: fir-tg-1x6 }')).alternatives;
    const ceiling = smallBook().selections.find(({ id }) => id === 'study/ceiling-board/ceiling');
    const fir = ceiling?.alternatives.find(({ option }) => option === 'fir-tg-1x6');
    expect(one).toMatchObject({ open: 0, pounds: fir?.pounds ?? 0, decideBy: fir?.decision.by, body: 'Fir overhead.' });
  });
});
