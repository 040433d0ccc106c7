import { measureParts } from '../../model/index.js';
import type { ConventionRule } from './convention.js';

/** One lump for the place, whatever its size. */
export const lump: ConventionRule = {
  by: 'lump',
  parts: measureParts.lump,
  measures: 'any place',
  quantify(place) {
    return { main: [{ place: place.id, name: place.name, gross: 1, adjustments: [], net: 1 }] };
  },
};
