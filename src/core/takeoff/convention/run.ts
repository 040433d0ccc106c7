import { factOf } from '../../fact/index.js';
import { measureParts, type OpeningMeasure, type RoomMeasure } from '../../model/index.js';
import { feet, type Length } from '../../../base/units/index.js';
import { baseLength, casingLength } from '../arithmetic/index.js';
import type { PlaceQuantity } from '../takeoff.js';
import type { ConventionContext, ConventionRule } from './convention.js';

/** Lineal feet: base along walls less openings, casing around openings, edges and runs of features. */
export const run: ConventionRule = {
  by: 'run',
  parts: measureParts.run,
  measures: 'a run, a wall or an opening',
  quantify(place, context) {
    switch (place.kind) {
      case 'base':
        return { main: baseRuns(context.measure) };
      case 'wall':
        return { main: [plain(place.id, place.name, place.wall.run)] };
      case 'opening':
        return { main: [trimAround(place.opening, place.name, context)] };
      case 'run':
        return { main: [plain(place.id, place.name, place.run.length)] };
      case 'feature': {
        const first = place.feature.runs[0];
        return first && { main: [plain(place.id, `${place.name}, ${first.name}`, first.length)] };
      }
      case 'surface':
        if (place.id !== 'ceiling' && place.id !== 'floor') return undefined;
        return { main: [plain(place.id, `${place.name}, perimeter`, context.measure.perimeter)] };
      default:
        return undefined;
    }
  },
};

function plain(place: string, name: string, length: Length): PlaceQuantity {
  return { place, name, gross: feet(length), adjustments: [], net: feet(length) };
}

/** Base along each standing wall, less openings down to the floor and features that stand against it. */
function baseRuns(measure: RoomMeasure): readonly PlaceQuantity[] {
  return measure.walls
    .filter((wall) => wall.openTo === undefined)
    .map((wall) => {
      const openings = measure.openings
        .filter((opening) => opening.wall === wall.id && opening.sill === 0)
        .map(({ mark, width }) => ({ what: mark, width, why: 'opening down to the floor' }));
      const features = measure.features.flatMap(({ name, covers }) =>
        covers
          .filter((cover) => cover.wall === wall.id)
          .map(({ from, to }) => ({ what: name, width: (to - from) as Length, why: 'stands against the wall' })),
      );
      const gaps = [...openings, ...features];
      return {
        place: wall.id,
        name: `Base, ${wall.name}`,
        gross: feet(wall.run),
        adjustments: gaps.map(({ what, width, why }) => ({ what, amount: -feet(width), why })),
        net: baseLength(
          [{ run: wall.run, sides: 1 }],
          gaps.map(({ width }) => width),
        ),
      };
    });
}

/** Casing with the option's `face`, when it gives one. */
function trimAround(opening: OpeningMeasure, name: string, { option }: ConventionContext): PlaceQuantity {
  const sides = opening.kind === 'window' ? 4 : 3;
  const casing = casingLength({ ...opening, sides }, factOf(option, 'pieces', 'face'));
  const why = sides === 4 ? 'head and sill run past the legs' : 'the head runs past the legs';
  return {
    place: opening.mark,
    name,
    gross: casing.opening,
    adjustments: casing.past === 0 ? [] : [{ what: 'Corners', amount: casing.past, why }],
    net: casing.opening + casing.past,
  };
}
