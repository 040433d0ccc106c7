import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import type { Book, BookSelection } from '../../src/core/book/index.js';
import { readRecords } from '../../src/core/records/index.js';
import { roomDigests } from '../../src/signoff/index.js';
import { smallBook, smallFiles, type Edits } from './small-house.js';
import { threeRooms } from '../small-house/three-rooms.js';

const slugs = ['hall', 'den', 'loft'] as const;
type Slug = (typeof slugs)[number];

interface Entry {
  readonly at: string | readonly string[];
  readonly category: string;
  readonly [key: string]: unknown;
}

/** As a line of a room's record in flow style. */
const inLine = (entry: Entry): string => JSON.stringify(entry);

const isAllowed = ({ code }: { readonly code: string }): boolean =>
  ['allowance-unused', 'set-nowhere', 'decide-late', 'decide-fixed'].includes(code);

function bookOf(
  rooms: Readonly<Record<Slug, readonly Entry[]>>,
  sets: readonly unknown[] = [],
  lines: readonly string[] = [],
): Book {
  const text = (slug: Slug) => ({ lines, selections: rooms[slug].map(inLine) });
  const house = sets.length === 0 ? '' : stringify({ 'finish-sets': sets }, { aliasDuplicateObjects: false });
  return smallBook(
    threeRooms({ hall: text('hall'), den: text('den'), loft: text('loft'), house }),
    '2026-04-20',
    isAllowed,
  );
}

/** The Book without where things are written. */
function withoutPlaces({ sources: _, ...book }: Book): unknown {
  const bare = book.selections.map(({ finishSet: _set, source: _source, line: _line, ...rest }: BookSelection) => rest);
  return JSON.parse(
    JSON.stringify({ ...book, selections: bare }, (key, value: unknown) =>
      key === 'line' || key === 'path' ? 0 : value,
    ),
  );
}

const floor: Entry = { at: 'floor', category: 'floor', standard: 'oak', considering: ['oak', 'pine'] };
const ceiling: Entry = {
  at: 'ceiling',
  category: 'ceiling-board',
  allowance: 'ceilings',
  considering: ['pine-shiplap-1x8', 'fir-tg-1x6'],
};
const made = { chosen: 'pine', 'chosen-on': '2026-03-02', 'chosen-by': 'The owner' };

/** How a room comes by its floor. */
const ways = ['set', 'set-open', 'own', 'override', 'none'] as const;

describe('a finish set', () => {
  test('is the same Book as if each room wrote it itself, whoever overrides what', () => {
    const way = fc.constantFrom(...ways);
    fc.assert(
      fc.property(fc.record({ hall: way, den: way, loft: way }), fc.boolean(), (by, defaults) => {
        const has = (...of: readonly string[]) => slugs.filter((slug) => of.includes(by[slug]));
        const { chosen, ...who } = made;
        const sets = [
          {
            name: 'Pine',
            rooms: has('set', 'override'),
            ...(defaults && who),
            selections: [{ ...floor, chosen, ...(!defaults && who) }, ceiling],
          },
          { name: 'Open', rooms: has('set-open'), selections: [floor] },
        ].filter(({ rooms }) => rooms.length > 0);
        const other: Entry = { ...floor, chosen: 'oak', 'chosen-on': '2026-03-09', 'chosen-by': 'The owner' };
        const own: Record<(typeof ways)[number], readonly Entry[]> = {
          set: [],
          'set-open': [],
          own: [floor],
          override: [other],
          none: [],
        };
        const full: typeof own = {
          set: [{ ...floor, ...made }, ceiling],
          'set-open': [floor],
          own: [floor],
          override: [other, ceiling],
          none: [],
        };
        const each = (from: typeof own) => ({ hall: from[by.hall], den: from[by.den], loft: from[by.loft] });
        const [short, long] = [bookOf(each(own), sets), bookOf(each(full))];
        expect(withoutPlaces(short)).toEqual(withoutPlaces(long));
        expect(roomDigests(short)).toEqual(roomDigests(long));
      }),
      { numRuns: 25 },
    );
  });

  test('says in each room where it stands, and who chose it', () => {
    const { chosen, ...who } = made;
    const book = bookOf({ hall: [], den: [], loft: [] }, [
      { name: 'All halls', in: ['hall'], ...who, selections: [{ ...floor, chosen }] },
    ]);
    const text = book.sources.find(({ path }) => path === 'content/house.md')?.text.split('\n') ?? [];
    expect(
      book.selections.map(({ room, finishSet, source, line, chosenBy }) => [
        room,
        finishSet,
        source,
        text[line - 1]?.trim(),
        chosenBy,
      ]),
    ).toEqual(
      ['den', 'hall', 'loft'].map((room) => [room, 'All halls', 'content/house.md', '- at: floor', 'The owner']),
    );
  });

  test('passes over what a room lacks: a window wall alone has is no fault of the others', () => {
    const windows: Entry = { at: ['floor', 'W1'], category: 'floor', standard: 'oak' };
    const records = readRecords(
      smallFiles(
        threeRooms({
          house: stringify({
            'finish-sets': [{ name: 'Floors', in: ['hall'], selections: [windows, { ...floor, at: 'sink' }] }],
          }),
        }),
      ),
    );
    expect(records.value?.rooms.map(({ slug, selections }) => [slug, selections.map(({ at }) => at)])).toEqual([
      ['den', [['floor']]],
      ['hall', [['floor', 'W1']]],
      ['loft', [['floor']]],
    ]);
    expect(records.problems.filter(({ code }) => code === 'set-nowhere').map(({ message }) => message)).toEqual([
      "no room of 'Floors' has the place 'sink' for its floor",
    ]);
  });

  test('a mistake in it is told once, at its line', () => {
    const edits: Edits = threeRooms({
      house: stringify({
        'finish-sets': [{ name: 'Floors', rooms: ['den', 'hall'], selections: [{ ...floor, standard: 'oack' }] }],
      }),
    });
    const { problems } = readRecords(smallFiles(edits));
    const told = problems.filter(({ severity }) => severity === 'error');
    expect(told.map(({ file, code, excerpt }) => [file, code, excerpt?.trim()])).toEqual([
      ['content/house.md', 'option-unknown', 'standard: oack'],
    ]);
  });
});

test('a room says once who chose, and when, for all that do not say it', () => {
  const { chosen, ...who } = made;
  const other = { ...ceiling, chosen: 'fir-tg-1x6', 'chosen-on': '2026-03-05', 'chosen-by': 'The owner' };
  const rooms = { hall: [{ ...floor, chosen }, other], den: [], loft: [] };
  const short = bookOf(
    rooms,
    [],
    Object.entries(who).map(([key, value]) => `${key}: ${value}`),
  );
  const long = bookOf({ ...rooms, hall: [{ ...floor, ...made }, other] });
  expect(withoutPlaces(short)).toEqual(withoutPlaces(long));
});
