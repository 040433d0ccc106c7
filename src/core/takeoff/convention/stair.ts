import { measureParts } from '../../model/index.js';
import type { ConventionRule } from './convention.js';

/** A stair by its treads and risers. */
export const stair: ConventionRule = {
  by: 'stair',
  parts: measureParts.stair,
  measures: 'a stair',
  quantify(place) {
    if (place.kind !== 'feature') return undefined;
    const counted = (word: string) => place.feature.counts.find((count) => count.id.endsWith(word))?.count;
    const treads = counted('treads');
    const risers = counted('risers');
    if (treads === undefined || risers === undefined) return undefined;
    const { id, name } = place;
    return {
      tread: [{ place: id, name: `${name}, treads`, gross: treads, adjustments: [], net: treads }],
      riser: [{ place: id, name: `${name}, risers`, gross: risers, adjustments: [], net: risers }],
    };
  },
};
