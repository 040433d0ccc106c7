import fc from 'fast-check';
import { layOut, type LaidRegion, type Layout, type LayoutInput } from '../../../../src/core/takeoff/layout/index.js';
import { fromInches, type Length } from '../../../../src/base/units/index.js';
import { boards, feetOf } from '../../../takeoff/layout/shapes.js';
import { boardInputs, sheetInputs, surfaces } from '../../../takeoff/layout/surfaces.js';
import { bandsIn, type Band } from './courses.js';

/** Surfaces that lie in one plane or in several, each with its own direction. */
const planes = fc
  .record({
    regions: fc.array(fc.tuple(surfaces, fc.constantFrom(0, 30, 90, 450)), { minLength: 2, maxLength: 3 }),
    joined: fc.boolean(),
    through: fc.boolean(),
    turn: fc.constantFrom(0, 90, -90, 200),
  })
  .map(({ regions, joined, through, turn }): LayoutInput => {
    const placed = regions.map(([region, direction], index): LaidRegion => {
      // Side by side, and apart.
      const moved = ({ x, y }: LaidRegion['outline'][number]): LaidRegion['outline'][number] => ({
        x: (x + index * fromInches(480)) as Length,
        y,
      });
      const shape = { outline: region.outline.map(moved), holes: region.holes.map((hole) => hole.map(moved)) };
      return through ? shape : { ...shape, plane: joined ? Math.min(index, 1) : index, direction };
    });
    return boards(placed, { direction: turn }, { grid: through ? 'through' : 'each' });
  });

/** Rules that are hard to keep, so that many places do not. */
const hard = fc
  .record({
    surface: surfaces,
    stock: fc.constantFrom(feetOf(6), feetOf(6, 8)),
    stagger: fc.constantFrom(30, 40, 60),
    leastPiece: fc.constantFrom(20, 30, 40),
    framed: fc.boolean(),
    from: fc.constantFrom(4.5, 7, 10),
  })
  .map(({ surface, stock, stagger, leastPiece, framed, from }) =>
    boards(
      [surface],
      { stock },
      {
        stagger: fromInches(stagger),
        leastPiece: fromInches(leastPiece),
        ...(framed && { framing: { spacing: fromInches(24), from: fromInches(from) } }),
      },
    ),
  );

const inputs = fc.oneof(boardInputs, sheetInputs, planes, hard);
export interface Laid {
  readonly input: LayoutInput;
  readonly layout: Layout;
  readonly bands: readonly Band[];
}

/** Laid once for all that is asked of them. */
export const cases = fc.sample(inputs, { numRuns: 90, seed: 1889 }).map((input): Laid => ({
  input,
  layout: layOut(input),
  bands: bandsIn(input),
}));
