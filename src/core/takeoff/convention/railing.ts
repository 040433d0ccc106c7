import { factOf } from '../../fact/index.js';
import { measureParts, type Run } from '../../model/index.js';
import { feet, type Length } from '../../../base/units/index.js';
import { postsAlong } from '../arithmetic/index.js';
import type { Place } from '../places.js';
import type { ConventionRule } from './convention.js';

/** Rail by the run; a post at both ends of each straight piece and no further apart than the option's `post-spacing`. */
export const railing: ConventionRule = {
  by: 'railing',
  parts: measureParts.railing,
  measures: 'an open edge or a stair',
  quantify(place, { option }) {
    const run = railOf(place);
    if (!run) return undefined;
    const length = feet(run.length);
    const spacing = factOf(option, 'railing', 'post-spacing');
    // Without a spacing the option's rail spans from end to end.
    const apart = (piece: Length) => spacing ?? piece;
    const posts = run.pieces.reduce((sum, piece) => sum + postsAlong(piece, apart(piece)).posts, 0);
    const { id, name } = place;
    return {
      rail: [{ place: id, name, gross: length, adjustments: [], net: length }],
      post: [{ place: id, name: `${name}, posts`, gross: posts, adjustments: [], net: posts }],
    };
  },
};

function railOf(place: Place): Run | undefined {
  if (place.kind === 'run') return place.run;
  if (place.kind !== 'feature') return undefined;
  return place.feature.runs.find((run) => run.id === 'rail' || run.id.endsWith('/rail'));
}
