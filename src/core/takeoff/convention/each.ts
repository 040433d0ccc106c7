import { measureParts } from '../../model/index.js';
import type { PlaceQuantity } from '../takeoff.js';
import type { ConventionRule } from './convention.js';

/** Pieces: an opening or a feature is one, a feature that counts something is that many. An opening between two rooms
 *  is counted in the room that records it. */
export const each: ConventionRule = {
  by: 'each',
  parts: measureParts.each,
  measures: 'an opening or a feature',
  quantify(place) {
    switch (place.kind) {
      case 'opening': {
        if (place.opening.own) return { main: [count(place.id, place.name, 1)] };
        const counted = { what: place.id, amount: -1, why: 'counted in the room that records it' };
        return { main: [{ place: place.id, name: place.name, gross: 1, adjustments: [counted], net: 0 }] };
      }
      case 'feature':
        return { main: [count(place.id, place.name, place.feature.counts[0]?.count ?? 1)] };
      case 'count':
        return { main: [count(place.id, place.name, place.count)] };
      default:
        return undefined;
    }
  },
};

function count(place: string, name: string, pieces: number): PlaceQuantity {
  return { place, name, gross: pieces, adjustments: [], net: pieces };
}
