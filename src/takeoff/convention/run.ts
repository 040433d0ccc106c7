import type { OpeningMeasure, RoomMeasure } from '../../model/index.js';
import { feet } from '../../units/index.js';
import type { Length } from '../../units/index.js';
import type { PlaceQuantity } from '../takeoff.js';
import type { ConventionContext, ConventionRule } from './convention.js';

/** Lineal feet: base along walls less openings, casing around openings, edges and runs of features. */
export const run: ConventionRule = {
  by: 'run',
  parts: { main: 'lin ft' },
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
        .map((opening) => ({ what: opening.mark, amount: -feet(opening.width), why: 'opening down to the floor' }));
      const features = measure.features.flatMap((feature) =>
        feature.covers
          .filter((cover) => cover.wall === wall.id)
          .map((cover) => ({
            what: feature.name,
            amount: -feet((cover.to - cover.from) as Length),
            why: 'stands against the wall',
          })),
      );
      const adjustments = [...openings, ...features];
      const gross = feet(wall.run);
      const net = Math.max(
        0,
        adjustments.reduce((sum, { amount }) => sum + amount, gross),
      );
      return { place: wall.id, name: `Base, ${wall.name}`, gross, adjustments, net };
    });
}

/** Two legs and a head; a window is trimmed on four sides. The head runs past the legs by the trim's face on each side
 *  (attribute `face`). Common practice, no source. */
function trimAround(opening: OpeningMeasure, name: string, { option }: ConventionContext): PlaceQuantity {
  const face = option.attributes['face']?.value;
  const past = face?.kind === 'length' ? 2 * feet(face.length) : 0;
  const heads = opening.kind === 'window' ? 2 : 1;
  const gross = 2 * feet(opening.height) + heads * feet(opening.width);
  if (past === 0) return { place: opening.mark, name, gross, adjustments: [], net: gross };
  const amount = heads * past;
  const why = heads === 2 ? 'head and sill run past the legs' : 'the head runs past the legs';
  return { place: opening.mark, name, gross, adjustments: [{ what: 'Corners', amount, why }], net: gross + amount };
}
