import { factOf } from '../../fact/index.js';
import { measureParts, type RoomMeasure } from '../../model/index.js';
import { feet, fromFeet, isMetric, printQuantity, type Area, type Length } from '../../../base/units/index.js';
import { stoneFlats } from '../arithmetic/index.js';
import type { Place } from '../places.js';
import type { PlaceQuantity } from '../takeoff.js';
import { quantitiesOf } from './area.js';
import type { ConventionContext, ConventionRule } from './convention.js';

/** Corner pieces by the run of outside corners; flats by area less what the corners cover. How much a foot of corner
 *  covers is product data (`corner-covers`): makers publish 0.5 and 0.75 sq ft for a foot. */
export const stone: ConventionRule = {
  by: 'stone',
  parts: measureParts.stone,
  measures: 'a surface',
  quantify(place, context) {
    const flats = quantitiesOf(place, context.rule);
    if (!flats) return undefined;
    const corners = cornersOf(place, context.measure);
    if (corners.length === 0 || !sellsCorners(context)) return { flats, corners: [] };
    return { flats: lessCorners(flats, corners, context), corners };
  },
};

const metre = 1_000_000_000 as Length;

function sellsCorners({ option }: ConventionContext): boolean {
  return option.parts.some((part) => part.part === 'corners');
}

/** A feature's own outside corners, or those of its hearth with the hearth's riser. */
function cornersOf(place: Place, { features }: RoomMeasure): PlaceQuantity[] {
  const runs = place.kind === 'feature' ? place.feature.runs : features.flatMap((feature) => feature.runs);
  const id = place.kind === 'feature' ? `${place.id}/corners` : place.id.replace(/-riser$/u, '-corners');
  return runs
    .filter((candidate) => candidate.id === id)
    .map(({ length }) => {
      const run = feet(length);
      return { place: id, name: `${place.name}, outside corners`, gross: run, adjustments: [], net: run };
    });
}

/** Takes what the corners cover off the largest face, where the returns lie. */
function lessCorners(
  flats: readonly PlaceQuantity[],
  corners: readonly PlaceQuantity[],
  { option }: ConventionContext,
): readonly PlaceQuantity[] {
  const covers = factOf(option, 'stone', 'corner-covers');
  if (covers === undefined) return flats;
  const run = corners.reduce((sum, corner) => sum + corner.net, 0);
  const largest = flats.reduce((best, flat) => (flat.net > best.net ? flat : best));
  const net = stoneFlats(largest.net as Area, fromFeet(run), covers);
  const why = isMetric()
    ? `a metre of corner covers ${printQuantity(covers * feet(metre), 'sq ft')}`
    : `a foot of corner covers ${covers} sq ft`;
  const taken = { what: 'Corner pieces', amount: net - largest.net, why };
  return flats.map((flat) =>
    flat === largest ? { ...flat, adjustments: [...flat.adjustments, taken], net, covered: flat.net } : flat,
  );
}
