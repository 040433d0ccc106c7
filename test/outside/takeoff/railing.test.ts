import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Attribute, Run } from '../../../src/core/model/index.js';
import { bracketCounts, bracketsAlong } from '../../../src/core/takeoff/railing/brackets.js';
import { buildRail, postsOf } from '../../../src/core/takeoff/railing/build.js';
import { infillCounts } from '../../../src/core/takeoff/railing/infill-counts.js';
import type { SharedEnd } from '../../../src/core/takeoff/railing/rail.js';
import { fromInches, printLength, type Length } from '../../../src/base/units/index.js';
import { option } from '../../takeoff/room.js';

/** Railings by a second way: posts are walked to one after another, bays filled until no gap is too wide. No publication is behind it; where posts and brackets stand is common practice, no source. In inches. */

const inches = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 4, max: most * 4 }).map((quarters) => quarters / 4);
const length = (size: number): Attribute => ({ text: '', value: { kind: 'length', length: fromInches(size) } });
const product = (facts: Readonly<Record<string, number | undefined>>, parts: readonly string[] = []) =>
  option(
    parts.map((part) => ({ part })),
    Object.fromEntries(
      Object.entries(facts).flatMap(([name, size]) => (size === undefined ? [] : [[name, length(size)]])),
    ),
  );
const run = (pieces: readonly number[], slope?: number): Run => ({
  id: 'edge/rail',
  name: 'Rail',
  length: fromInches(pieces.reduce((sum, piece) => sum + piece, 0)),
  pieces: pieces.map(fromInches),
  ...(slope !== undefined && { slope }),
});
const say = (size: number): string => printLength(fromInches(size));
const near = (list: readonly Length[]): readonly number[] =>
  list.map((one) => Math.round((one / fromInches(1)) * 100) / 100);

/** Spaces that are none too wide, the fewest. */
function spacesIn(piece: number, apart: number | undefined): number {
  let count = 1;
  while (apart !== undefined && piece / count > apart) count += 1;
  return count;
}

const runs = fc.record({
  pieces: fc.array(inches(10, 300), { minLength: 1, maxLength: 3 }),
  apart: fc.option(inches(36, 72), { nil: undefined }),
  slope: fc.constantFrom(0, 0.5, 0.75, 1),
  post: fc.constantFrom(0, 1.5, 3.5, 5.5),
});
const sharedEnds = fc.subarray(['from', 'to'] as const);

describe('a run of railing', () => {
  test('posts at both ends and none too far apart, less those that another run has', () => {
    fc.assert(
      fc.property(runs, sharedEnds, fc.boolean(), ({ pieces, apart }, sides, isOwn) => {
        const shared = sides.map((side): SharedEnd => ({
          piece: 0,
          side,
          end: `${side} end`,
          other: 'left end of Edge',
          isOwn,
        }));
        const chosen = product({ 'post-spacing': apart });
        const rail = buildRail(run(pieces), chosen, shared);
        const expected = pieces.map((piece, index) => {
          const bays = spacesIn(piece, apart);
          const all = Array.from({ length: bays + 1 }, (_, post) => (piece * post) / bays);
          const gone = (post: number): boolean =>
            index === 0 &&
            !isOwn &&
            ((post === 0 && sides.includes('from')) || (post === bays && sides.includes('to')));
          return { bays, posts: all.filter((_, post) => !gone(post)) };
        });
        expect(rail.pieces.map(({ bays }) => bays)).toEqual(expected.map(({ bays }) => bays));
        rail.pieces.forEach(({ posts, spacing }, index) => {
          expect(near(posts)).toEqual((expected[index]?.posts ?? []).map((at) => Math.round(at * 100) / 100));
          expect(near([spacing])[0]).toBeCloseTo((pieces[index] ?? 0) / (expected[index]?.bays ?? 1), 1);
        });
        const told = postsOf(rail, chosen, { place: 'edge', name: 'Edge' });
        const standing = expected.reduce((sum, { bays }) => sum + bays + 1, 0);
        expect([told.gross, told.net]).toEqual([standing, standing - (isOwn ? 0 : sides.length)]);
        expect(told.gross + told.adjustments.reduce((sum, { amount }) => sum + amount, 0)).toBe(told.net);
      }),
    );
  });

  test('a bay is what is clear between plumb posts, and is filled with the fewest that leave no gap too wide', () => {
    fc.assert(
      fc.property(
        runs,
        inches(0.5, 2),
        inches(2, 6),
        ({ pieces: [piece = 60], apart, slope, post }, width, opening) => {
          const facts = {
            'post-spacing': apart,
            'post-width': post,
            'baluster-width': width,
            'clear-opening': opening,
          };
          const [built] = buildRail(run([piece], slope), product(facts), []).pieces;
          const bays = spacesIn(piece, apart);
          // Level between two posts, by Pythagoras.
          const level = Math.sqrt((piece / bays) ** 2 / (1 + slope ** 2));
          const clear = Math.max(0, level - post);
          let each = 0;
          while (clear > 0 && (clear - each * width) / (each + 1) > opening + 1e-7) each += 1;
          if (built?.infill?.fill !== 'balusters') throw new Error('not balusters');
          expect(built.infill.count).toBe(each * bays);
          expect(near([built.infill.bay])[0]).toBeCloseTo(clear, 1);
          expect(near([built.infill.gap])[0]).toBeCloseTo(clear === 0 ? 0 : (clear - each * width) / (each + 1), 1);
          const counts = infillCounts([
            {
              place: 'edge',
              name: 'Edge',
              gross: 0,
              adjustments: [],
              net: 0,
              rail: { pieces: [built, built], shared: [] },
            },
          ]);
          expect(counts.map(({ unit, amount, whole }) => [unit, amount, whole])).toEqual([
            ['balusters', 2 * each * bays, 2 * each * bays],
          ]);
          expect(counts[0]?.why.split('; ')[0]).toContain(`${bays} ${bays === 1 ? 'bay' : 'bays'} of `);
          expect(counts[0]?.why).toContain(` clear with ${each} in each, `);
        },
      ),
    );
  });

  test('cables run along it, panels leave a gap at each post', () => {
    fc.assert(
      fc.property(
        runs,
        inches(1, 6),
        inches(30, 48),
        inches(0.25, 2),
        ({ pieces: [piece = 60], apart, slope, post }, each, high, gap) => {
          const along = run([piece], slope);
          const common = { 'post-spacing': apart, 'post-width': post };
          const [cabled] = buildRail(along, product({ ...common, 'cable-spacing': each, height: high }), []).pieces;
          let cables = 0;
          while (high / (cables + 1) > each) cables += 1;
          expect(cabled?.infill).toEqual({ fill: 'cables', count: cables, length: fromInches(piece) });
          const [paned] = buildRail(along, product({ ...common, 'panel-gap': gap }), []).pieces;
          const bays = spacesIn(piece, apart);
          const clear = Math.max(0, piece / bays / Math.sqrt(1 + slope ** 2) - post);
          if (!cabled || paned?.infill?.fill !== 'panels') throw new Error('not panels');
          expect(paned.infill.count).toBe(bays);
          expect(near([paned.infill.width])[0]).toBeCloseTo(Math.max(0, clear - gap - gap), 1);
          const place = { place: 'edge', name: 'Edge', gross: 0, adjustments: [], net: 0 };
          const counts = infillCounts([
            { ...place, rail: { pieces: [cabled], shared: [] } },
            { ...place, rail: { pieces: [paned, paned], shared: [] } },
          ]);
          const [number, line, panels] = counts;
          expect([number?.whole, number?.unit, line?.unit]).toEqual([cables, 'cables', 'lin ft of cable']);
          expect(line?.amount).toBeCloseTo((cables * piece) / 12, 6);
          expect(panels?.whole).toBe(2 * bays);
        },
      ),
    );
  });

  test('brackets near each end of each piece and no further apart than recorded, else four feet', () => {
    fc.assert(
      fc.property(
        fc.array(inches(20, 300), { minLength: 1, maxLength: 3 }),
        fc.option(inches(24, 60), { nil: undefined }),
        (pieces, apart) => {
          const chosen = product({ 'bracket-spacing': apart }, ['rail']);
          const brackets = bracketsAlong(run(pieces), chosen, { place: 'stair', name: 'Stair' });
          const spaces = pieces.map((piece) => spacesIn(piece, apart ?? 4 * 12));
          const all = spaces.reduce((sum, count) => sum + count + 1, 0);
          expect([brackets.gross, brackets.net]).toEqual([all, all]);
          for (const [index, count] of spaces.entries())
            expect(brackets.why).toContain(
              `${say(pieces[index] ?? 0)} in ${count} ${count === 1 ? 'space' : 'spaces'} of `,
            );
          expect(brackets.why).toContain(`none over ${say(apart ?? 48)}`);
          const handrail = { place: 'stair', name: 'Stair', gross: 3, adjustments: [], net: 3 };
          expect(
            bracketCounts([handrail, handrail], [brackets, brackets], chosen).map(({ unit, amount }) => [unit, amount]),
          ).toEqual([
            ['lin ft of handrail', 6],
            ['brackets', 2 * all],
          ]);
          expect(bracketCounts([handrail], [brackets], product({}, ['handrail', 'bracket']))).toEqual([]);
        },
      ),
    );
  });
});
