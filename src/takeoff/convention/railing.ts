import { feet } from '../../units/index.js';
import type { Run } from '../../model/index.js';
import type { Place } from '../places.js';
import type { ConventionRule } from './convention.js';

/** Rail by the run; a post at both ends of each straight piece and no further apart than the option's `post-spacing`. */
export const railing: ConventionRule = {
  by: 'railing',
  parts: { rail: 'lin ft', post: 'each' },
  measures: 'an open edge or a stair',
  quantify(place, { option }) {
    const run = railOf(place);
    if (!run) return undefined;
    const length = feet(run.length);
    const spacing = option.attributes['post-spacing']?.value;
    const apart = spacing?.kind === 'length' ? feet(spacing.length) : Infinity;
    const posts = run.pieces.reduce((sum, piece) => sum + postsAlong(feet(piece), apart), 0);
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

/** Posts at both ends, equal spaces no wider than `apart` feet. */
function postsAlong(length: number, apart: number): number {
  return Math.max(1, Math.ceil(length / apart - 1e-9)) + 1;
}
