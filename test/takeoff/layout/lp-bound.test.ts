import highs from 'highs';
import { describe, expect, test } from 'vitest';
import { layOut, type Layout, type LayoutInput } from '../../../src/core/takeoff/layout/index.js';
import { feet, fromInches } from '../../../src/base/units/index.js';
import { boards, feetOf, rectangle, region } from './shapes.js';

// Its types say that a CommonJS module is its default's container; Node gives the default itself.
const loadHighs = highs as unknown as typeof highs.default;

/** Where short spans may not be joined, the pieces are given, and what to buy is the cutting stock problem. Its linear
 *  relaxation over all ways to cut a board (Gilmore and Gomory 1961), solved by HiGHS, bounds every plan from below. */
const rules = { joints: 'long-spans' } as const;
const surfaces: readonly (readonly [name: string, input: LayoutInput])[] = [
  [`30 courses of 7'`, boards([rectangle(84, 150)], {}, rules)],
  [`a closet, 3'-4" × 8'`, boards([rectangle(40, 96)], {}, rules)],
  [`a bath, 5'-4" × 8'`, boards([rectangle(64, 96)], { face: fromInches(3.125) }, rules)],
  [`a bedroom, 13'-5" × 12'`, boards([rectangle(161, 144)], {}, rules)],
  [
    'an L with a skylight',
    boards(
      [
        region(
          [
            [0, 0],
            [180, 0],
            [180, 100],
            [110, 100],
            [110, 200],
            [0, 200],
          ],
          [
            [
              [50, 20],
              [80, 20],
              [80, 70],
              [50, 70],
            ],
          ],
        ),
      ],
      {},
      rules,
    ),
  ],
  [
    'two closets and a hall',
    boards([rectangle(40, 96), rectangle(29, 60), rectangle(44, 200)], { stock: feetOf(8, 12, 16) }, rules),
  ],
  [
    'a wall with two windows',
    boards(
      [
        region(
          [
            [0, 0],
            [186, 0],
            [186, 96],
            [0, 96],
          ],
          [
            [
              [30, 36],
              [66, 36],
              [66, 80],
              [30, 80],
            ],
            [
              [110, 36],
              [150, 36],
              [150, 80],
              [110, 80],
            ],
          ],
        ),
      ],
      {},
      rules,
    ),
  ],
];

describe('against the linear relaxation of the cutting stock problem', () => {
  test.each(surfaces.map(([name, input]) => ({ name, input })))('$name', async ({ input }) => {
    const layout = layOut(input);
    const bound = await relaxation(input, layout);
    expect(feet(layout.bought)).toBeGreaterThanOrEqual(bound - 1e-6);
    // The bound counts parts of boards; a plan buys whole ones, so one of the shortest is granted on top of 4 %.
    const shortest = Math.min(...input.stock.map(feet));
    expect(feet(layout.bought)).toBeLessThanOrEqual(Math.max(bound * 1.04, bound + shortest));
  });
});

/** Least feet to buy when boards may be bought in parts. */
async function relaxation(input: LayoutInput, layout: Layout): Promise<number> {
  const lengths = layout.courses.flatMap(({ pieces }) => pieces.map(({ start, end }) => end - start));
  const distinct = [...new Set(lengths)].sort((a, b) => b - a);
  const cuts = input.stock.flatMap((board) =>
    fullCuts(board, distinct, layout.kerf).map((counts) => ({ board: feet(board), counts })),
  );
  const goal = cuts.map(({ board }, i) => `${board} x${i}`).join(' + ');
  const demands = distinct.map((length, j) => {
    const terms = cuts.flatMap(({ counts }, i) => (counts[j] ? [`${counts[j]} x${i}`] : []));
    return `d${j}: ${terms.join(' + ')} >= ${lengths.filter((other) => other === length).length}`;
  });
  const solver = await loadHighs();
  const solution = solver.solve(`Minimize\n obj: ${goal}\nSubject To\n ${demands.join('\n ')}\nEnd`);
  expect(solution.Status).toBe('Optimal');
  return solution.ObjectiveValue;
}

/** All ways to cut a board so that no further piece comes out of it: counts of each length. */
function fullCuts(board: number, lengths: readonly number[], kerf: number): readonly (readonly number[])[] {
  const [length, ...shorter] = lengths;
  if (length === undefined) return [[]];
  const most = Math.floor((board + kerf) / (length + kerf));
  const counts = shorter.length === 0 ? [most] : Array.from({ length: most + 1 }, (_, count) => count);
  return counts.flatMap((count) =>
    fullCuts(board - count * (length + kerf), shorter, kerf).map((rest) => [count, ...rest]),
  );
}
