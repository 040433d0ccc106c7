import { drawnAlike } from '../draw/index.js';
import type { Opening, OpeningMeasure, RoomMeasure } from '../core/model/index.js';
import { cleared } from './cleared.js';
import type { HandoutShape } from './handout.js';

/** A room's measures for a trade's drawings, every word of them behind the sieve. Where no word is left out its drawings are
 *  those of the book. */
export function shapeOf(measure: RoomMeasure): HandoutShape {
  const plain = { ...measure, openings: measure.openings.map(openingOf) };
  const shape = cleared(plain);
  if (JSON.stringify(shape) !== JSON.stringify(plain)) return shape;
  shape.features.forEach((feature, index) => drawnAlike(feature, measure.features[index] ?? feature));
  return drawnAlike(shape, measure);
}

/** Without its place in a record. */
function openingOf(opening: OpeningMeasure): OpeningMeasure {
  return { ...opening, record: { ...opening.record, path: [] } satisfies Opening };
}
