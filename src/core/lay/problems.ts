import { problemAt, type Problem } from '../../base/problem/index.js';
import { apartProblems } from './apart.js';
import { disagreementsOf, isOfTapes, misfitProblem } from './disagree.js';
import { fitOf } from './fit.js';
import type { Misfit } from './joint.js';
import type { Laying } from './lay-rooms.js';
import type { Pair } from './pair.js';
import { suspectProblems } from './suspect-problems.js';
import { inText, roomAt, theWall } from './words.js';

/** What does not fit of a house as laid out, and which tapes may be wrong. */
export function layingProblems(laying: Laying, misfits: readonly Misfit[]): readonly Problem[] {
  const fit = fitOf(laying);
  const disagreeing = disagreementsOf(laying, fit);
  return [
    ...misfits.filter((misfit) => !isOfTapes(misfit)).map((misfit) => misfitProblem(misfit, laying)),
    ...fit.facing.flatMap((pair) => typesProblem(pair, laying)),
    ...disagreeing,
    ...suspectProblems(laying, fit, disagreeing),
    ...apartProblems(laying),
  ];
}

/** One wall that two rooms' records call by types of two thicknesses: it is laid out by the first. */
function typesProblem({ a, b }: Pair, laying: Laying): readonly Problem[] {
  const [own, other] = [a.side.thickness, b.side.thickness];
  if (!own.isOwn || !other.isOwn || own.inside === other.inside) return [];
  const { record } = roomAt(laying, b.room);
  const message = `${theWall(b.side, roomAt(laying, b.room))} is of a type of ${inText(other.inside)}, and ${theWall(a.side, roomAt(laying, a.room))}, which stands against it, of one of ${inText(own.inside)}`;
  const fix = 'it is one wall: name its type in one of the two rooms, or the same in both';
  return [
    problemAt(record.origin, ['wall-types', b.side.wall.id], 'wall-types-differ', message, {
      fix,
      severity: 'warning',
    }),
  ];
}
