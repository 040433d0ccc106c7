import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { fromFeet, printLength } from '../../src/base/units/index.js';
import { areaCategory } from '../scope/house.js';
import { threeRooms, threeRoomsBook } from '../small-house/three-rooms.js';
import { smallBook, type Edits } from './small-house.js';

/** Filled between the framing, openings off; as it is counted once where two rooms ask for one wall, or from each side. */
function batts(once = false): Edits {
  const edits = areaCategory('batts', 'insulation');
  const path = 'content/categories/batts.md';
  const rule = `measure: { by: area, openings: all, ${once ? 'between-rooms: once, ' : ''}words`;
  return { ...edits, [path]: (edits[path] as string).replace('measure: { by: area, words', rule) };
}

const at = (places: string): string => `{ at: ${places}, category: batts, chosen: batts, chosen-on: 2026-03-02 }`;

/** Places of the batts of a room, each with its net. */
function taken(book: Book, room: string): readonly (readonly [string, number])[] {
  const own = book.selections.filter((one) => one.room === room && one.category === 'batts');
  return own.flatMap(({ takeoff }) => (takeoff[0]?.places ?? []).map(({ place, net }) => [place, net] as const));
}

function net(book: Book, room: string): number {
  return taken(book, room).reduce((sum, [, one]) => sum + one, 0);
}

describe('a wall that stands outside in part', () => {
  test('is taken by its part: 144 less the window, and 96 less the door', () => {
    const outside = threeRoomsBook({ hall: { selections: [at('outside-walls')] } }, batts());
    expect(taken(outside, 'hall')).toEqual([
      ['north', expect.closeTo(144 - 20, 6)],
      ['east', 120],
      ['south', 240],
      ['west', 120],
    ]);
    const [selection] = outside.selections;
    expect(selection?.placeText).toBe('Outside walls');
    expect(selection?.places[0]).toEqual({ id: 'north', name: 'North wall', part: 'outside' });
    expect(selection?.takeoff[0]?.places[0]?.why).toBe('the part that stands outside');
    const inside = threeRoomsBook({ hall: { selections: [at('inside-walls')] } }, batts());
    expect(taken(inside, 'hall')).toEqual([['north', expect.closeTo(96 - 2.5 * (6 + 2 / 3), 6)]]);
    expect(inside.selections[0]?.takeoff[0]?.places[0]?.why).toBe('the part with a room behind it');
  });

  test('does not where it is open to a room above its neighbour, nor before the floor between them', () => {
    // Above the den the loft is open to the hall from its floor, at 9', to the hall's ceiling: nothing of that, nor of the foot below it.
    const open = {
      hall: {
        lines: [
          `  - { mark: O2, kind: open, wall: north, at: 0", width: 12'-0", height: 3'-0", sill: 9'-0", to: loft }`,
        ],
        selections: [at('outside-walls')],
      },
      loft: { lines: ['open: { south: hall }'] },
    };
    expect(taken(threeRoomsBook(open, batts()), 'hall')).toContainEqual(['north', expect.closeTo(8 * 12 - 20, 6)]);
  });

  test('does not where the wall between two rooms above its neighbour ends, one of them open to it', () => {
    // From 9' to 17' the loft is open to the hall over 6', and the nook beside it stands behind the hall's wall from 6'-4 1/2" to 12'. Nothing is
    // outside of the 4 1/2" between them: of 18' the eight feet beside the den are, less the window, and the last foot over loft and nook.
    const upper = (name: string, number: string, size: string, more: string): string =>
      `---\nname: ${name}\nnumber: "${number}"\nlevel: upper\nuse: hall\nsize: ${size}\n${more}\nceiling: flat 8'-0"\n---\n`;
    const rooms = {
      'content/rooms/loft.md': upper('Loft', '201', `6'-0" x 6'-0"`, 'open: { south: hall }'),
      'content/rooms/nook.md': upper(
        'Nook',
        '202',
        `5'-7 1/2" x 6'-0"`,
        `place: { from: hall, x: 6'-4 1/2", y: 10'-4 1/2" }`,
      ),
    };
    const hall = {
      lines: [`  - { mark: O2, kind: open, wall: north, at: 0", width: 6'-0", height: 8'-0", sill: 9'-0", to: loft }`],
      selections: [at('outside-walls')],
    };
    const book = threeRoomsBook({ hall, high: `18'-0"` }, batts(), rooms);
    expect(taken(book, 'hall')).toContainEqual(['north', expect.closeTo(8 * 18 - 20 + 12 * 1, 6)]);
  });

  test('is all of it where a selection names both parts, or the wall by its name', () => {
    const whole = 240 - 20 - 2.5 * (6 + 2 / 3);
    for (const places of ['[inside-walls, outside-walls]', '[outside-walls, north]', '[north, inside-walls]']) {
      const book = threeRoomsBook({ hall: { selections: [at(places)] } }, batts());
      expect(taken(book, 'hall').find(([place]) => place === 'north')?.[1]).toBeCloseTo(whole, 6);
    }
  });

  test('is left out whole', () => {
    const selections = [at('outside-walls, except: [north, west]')];
    const book = threeRoomsBook({ hall: { selections } }, batts());
    expect(taken(book, 'hall').map(([place]) => place)).toEqual(['east', 'south']);
  });

  test('has two selections of a category only where they take the same of it', () => {
    const apart = { hall: { selections: [at('outside-walls'), at('inside-walls')] } };
    expect(net(threeRoomsBook(apart, batts()), 'hall')).toBeCloseTo(240 - 36.6667 + 480, 3);
    const twice = { hall: { selections: [at('north'), at('outside-walls')] } };
    expect(() => threeRoomsBook(twice, batts())).toThrow(
      /'north' has two selections of batts, as 'north' and as 'outside-walls'/,
    );
  });

  test('is filled once from both sides, as far as the two rooms stand against each other', () => {
    const both = { den: { selections: [at('walls')] }, hall: { selections: [at('walls')] } };
    const once = threeRoomsBook(both, batts(true));
    const shared = 96 - 2.5 * (6 + 2 / 3);
    expect(taken(once, 'den')).toContainEqual(['south', expect.closeTo(shared, 6)]);
    expect(taken(once, 'hall')).toContainEqual(['north', expect.closeTo(240 - 20 - 16.6667 - shared, 3)]);
    const outside = { den: { selections: [at('walls')] }, hall: { selections: [at('outside-walls')] } };
    expect(taken(threeRoomsBook(outside, batts(true)), 'hall')).toContainEqual(['north', expect.closeTo(124, 6)]);
    const declined = { ...both, den: { selections: [at('walls').replace('chosen: batts', 'chosen: none')] } };
    expect(taken(threeRoomsBook(declined, batts(true)), 'hall')).toContainEqual(['north', expect.closeTo(203.3333, 3)]);
  });

  test('declined in an alternative is left to the room behind it', () => {
    const book = threeRoomsBook(
      { den: { selections: [at('south')] }, hall: { selections: [at('inside-walls')] } },
      batts(true),
      { 'content/alternatives/bare.md': '---\nname: Bare\nchoices: { den/batts/south: none }\n---\n' },
    );
    // The den's 79.33 sq ft are not bought, and the hall's 79.33 are.
    expect(net(book, 'hall')).toBe(0);
    expect(book.alternatives[0]?.change).toBe(0);
  });
});

test('outside and inside parts are together the wall, whatever stands behind it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 19, max: 40 }), fc.integer({ min: 8, max: 15 }), (wide, high) => {
      const size = { wide: printLength(fromFeet(wide)), high: printLength(fromFeet(high)) };
      const sum = (word: string) => net(threeRoomsBook({ ...size, hall: { selections: [at(word)] } }, batts()), 'hall');
      expect(sum('outside-walls') + sum('inside-walls')).toBeCloseTo(sum('walls'), 6);
    }),
    { numRuns: 12 },
  );
});

test('a run along a part of a wall stops where the part ends, and both parts are the wall', () => {
  const edits = areaCategory('ledge', 'finish');
  const byRun: Edits = Object.fromEntries(
    Object.entries(edits).map(([path, text]) => [
      path,
      (text as string).replace('by: area', 'by: run').replaceAll('/ sq ft', '/ lin ft'),
    ]),
  );
  const ledge = (places: string) => {
    const line = `{ at: ${places}, category: ledge, chosen: ledge, chosen-on: 2026-03-02 }`;
    const book = threeRoomsBook({ hall: { selections: [line] } }, byRun);
    return book.selections[0]?.takeoff[0]?.places.find(({ place }) => place === 'north');
  };
  // Eight of the hall's twenty feet stand outside; the den is behind twelve, of which the door takes two and a half.
  expect(ledge('outside-walls')?.net).toBeCloseTo(8, 6);
  expect(ledge('inside-walls')?.net).toBeCloseTo(9.5, 6);
  expect(ledge('walls')?.net).toBeCloseTo(17.5, 6);
  expect(ledge('outside-walls')?.adjustments).toContainEqual({
    what: 'Room behind it',
    amount: expect.closeTo(-9.5, 6) as number,
    why: 'only the part that stands outside is asked for',
  });
});

describe('a ceiling that lies under the roof in part', () => {
  test('is taken by its part: 42 of 120', () => {
    const book = threeRoomsBook({ den: { selections: [at('roof-ceiling')] } }, batts());
    expect(taken(book, 'den')).toEqual([['ceiling', expect.closeTo(42, 6)]]);
    expect(book.selections[0]?.placeText).toBe('Ceiling under the roof');
    expect(book.selections[0]?.takeoff[0]?.places[0]?.why).toBe('the part that lies under the roof');
  });

  test('is all of it where no room is over it', () => {
    const book = threeRoomsBook({ hall: { selections: [at('roof-ceiling')] } }, batts());
    expect(taken(book, 'hall')).toEqual([['ceiling', 200]]);
    expect(book.selections[0]?.placeText).toBe('Ceiling');
  });
});

describe('a house that is not all laid out', () => {
  const unsure = { floors: false };

  test('goes by openings: a wall is outside or inside as a whole', () => {
    const of = (word: string) => threeRoomsBook({ ...unsure, hall: { selections: [at(word)] } }, batts());
    expect(taken(of('outside-walls'), 'hall')).toEqual([['north', expect.closeTo(240 - 36.6667, 3)]]);
    expect(taken(of('inside-walls'), 'hall')).toEqual([]);
    expect(taken(of('roof-ceiling'), 'hall')).toEqual([]);
  });

  test('does so too where nothing joins a level to the rest, and not where no room is on that level', () => {
    const edits = { ...threeRooms({ hall: { selections: [at('outside-walls')] } }), ...batts() };
    const walls = (loft: string | null) =>
      taken(
        smallBook({ ...edits, 'content/rooms/loft.md': loft }, '2026-04-20', ({ code }) => code === 'allowance-unused'),
        'hall',
      ).map(([place]) => place);
    const loft = edits['content/rooms/loft.md'] as string;
    expect(walls(loft.replace(/place: .*\n/u, ''))).toEqual(['north']);
    expect(walls(null)).toEqual(['north', 'east', 'south', 'west']);
  });
});

describe('slots', () => {
  const slots = `slots:\n  - { at: outside-walls, needs: insulation }\n  - { at: roof-ceiling, needs: insulation }\n`;
  const found = (of: Parameters<typeof threeRoomsBook>[0], ...edits: readonly Edits[]) =>
    threeRoomsBook({ house: slots, ...of }, batts(), ...edits).scope.findings.map(({ what, fix }) => [what, fix]);

  test('say how much of each wall stands outside and how much of a ceiling lies under the roof', () => {
    const selections = [at('outside-walls'), at('roof-ceiling')];
    expect(found({ hall: { selections: [at('[east, south, west]')] }, loft: { selections } })).toEqual([
      [
        'Insulation for north, east and west walls was never chosen: 96 sq ft of the north wall, 80 sq ft of the east wall and 80 sq ft of the west wall stand outside.',
        'Add a selection at north, east, west in this room; chosen: none when there shall be none.',
      ],
      [
        'Insulation for ceiling under the roof was never chosen: 42 sq ft of the ceiling lie under the roof.',
        'Add a selection at roof-ceiling in this room; chosen: none when there shall be none.',
      ],
      [
        'Insulation for north wall was never chosen: 144 sq ft of the north wall stand outside.',
        'Add a selection at outside-walls, with except: [east, south, west], in this room; chosen: none when there shall be none.',
      ],
      [
        'Insulation for ceiling was never chosen: 200 sq ft of the ceiling lie under the roof.',
        'Add a selection at ceiling in this room; chosen: none when there shall be none.',
      ],
    ]);
  });

  test('are not met by what is on the inside part alone', () => {
    const of = (word: string) => found({ hall: { selections: [at(word), at('[east, south, west, ceiling]')] } });
    expect(of('inside-walls').some(([what]) => what?.includes('144 sq ft'))).toBe(true);
    expect(found({ hall: { selections: [at('walls')] } }).some(([what]) => what?.includes('144 sq ft'))).toBe(false);
  });
});

test('two layers of which one takes a part are two assemblies: what takes all of the wall lies over the rest by itself', () => {
  const rated = (slug: string, r: number): Edits => {
    const edits = areaCategory(
      slug,
      'insulation',
      'attributes:\n  r-value: { label: R, kind: number, required: true }\n  needs-cover: { label: Cover, kind: yes-no, required: true }\n',
      `attributes: { r-value: ${r}, needs-cover: false }\n`,
    );
    const path = `content/categories/${slug}.md`;
    return { ...edits, [path]: (edits[path] as string).replace('by: area, words', 'by: area, openings: none, words') };
  };
  const book = threeRoomsBook(
    {
      hall: {
        selections: [
          '{ at: north, category: cavity, chosen: cavity, chosen-on: 2026-03-02 }',
          '{ at: outside-walls, except: [east, south, west], category: foam, chosen: foam, chosen-on: 2026-03-02 }',
        ],
      },
    },
    rated('cavity', 13),
    rated('foam', 5),
  );
  expect(book.schedules.insulation.map(({ r, area }) => [r, area])).toEqual([
    [18, expect.closeTo(144, 6)],
    [13, expect.closeTo(96, 6)],
  ]);
});
