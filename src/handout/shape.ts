import type { Opening, OpeningMeasure, RoomMeasure } from '../model/index.js';
import { cleared } from './cleared.js';
import type { HandoutShape } from './handout.js';

/** A room's measures for a trade's drawings, every word of them behind the sieve. */
export function shapeOf(measure: RoomMeasure): HandoutShape {
  return cleared({ ...measure, openings: measure.openings.map(openingOf) });
}

/** Without its place in a record. */
function openingOf(opening: OpeningMeasure): OpeningMeasure {
  return { ...opening, record: { ...opening.record, path: [] } satisfies Opening };
}
