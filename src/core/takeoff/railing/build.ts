import { factOf, type Telling } from '../../fact/index.js';
import type { Run } from '../../model/index.js';
import { fromFeet, printLength, type Length } from '../../../base/units/index.js';
import { postsAlong } from '../arithmetic/index.js';
import type { PlaceQuantity } from '../takeoff.js';
import { fillBays } from './infill.js';
import type { Rail, RailPiece, SharedEnd } from './rail.js';
import { spacesWords } from './words.js';

/** Stands the posts of a run, less those that another run has, and fills its bays. */
export function buildRail(run: Run, option: Telling, shared: readonly SharedEnd[]): Rail {
  const pieces = run.pieces.map((length, piece): RailPiece => {
    const { posts: count, spacing } = postsAlong(length, spacingOf(option) ?? length);
    const bays = Math.max(0, count - 1);
    const others = shared.filter((end) => end.piece === piece && !end.isOwn).map(({ side }) => side);
    const posts = Array.from({ length: count }, (_, index) => fromFeet(index * spacing)).filter(
      (_, index) => !(index === 0 && others.includes('from')) && !(index === bays && others.includes('to')),
    );
    const built = { length, bays, spacing: fromFeet(spacing), posts };
    const infill = fillBays(built, run.slope ?? 0, option);
    return { ...built, ...(infill && { infill }) };
  });
  return { pieces, shared };
}

/** The posts of a run: those that stand on it, less those that are another's. */
export function postsOf(
  { pieces, shared }: Rail,
  option: Telling,
  named: Pick<PlaceQuantity, 'place' | 'name'>,
): PlaceQuantity {
  const standing = pieces.reduce((sum, { bays, length }) => sum + (length > 0 ? bays + 1 : 0), 0);
  // Where three runs end together, the post is taken off once.
  const told = shared.map(({ end, other, isOwn }) => ({
    what: `Post at its ${end}`,
    amount: isOwn ? 0 : -1,
    why: isOwn ? `also at the ${other}; counted here` : `the one at the ${other}; counted there`,
  }));
  const spacing = spacingOf(option);
  const limit = spacing === undefined ? 'the option gives no spacing' : `none over ${printLength(spacing)}`;
  return {
    ...named,
    gross: standing,
    why: `${pieces.map(spacesWords).join('; ')}, ${limit}`,
    adjustments: told,
    net: pieces.reduce((sum, { posts }) => sum + posts.length, 0),
  };
}

/** Without a spacing the option's rail spans from end to end. */
function spacingOf(option: Telling): Length | undefined {
  return factOf(option, 'railing', 'post-spacing');
}
