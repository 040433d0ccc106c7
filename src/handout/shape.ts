import type { FeatureMeasure, Opening, OpeningMeasure, RoomMeasure } from '../model/index.js';
import { drawnAlike } from '../draw/index.js';
import { sieve } from './sieve.js';
import type { HandoutFeature, HandoutShape, ShapeValue } from './handout.js';

/** A room's measures for a trade's drawings, which are those of the book. Notes go through the sieve. */
export function shapeOf(measure: RoomMeasure): HandoutShape {
  const shape = {
    ...measure,
    openings: measure.openings.map(openingOf),
    features: measure.features.map((feature) => drawnAlike(featureOf(feature), feature)),
  };
  return drawnAlike(shape, measure);
}

function openingOf(opening: OpeningMeasure): OpeningMeasure {
  return { ...opening, record: recordOf(opening.record) };
}

function recordOf(record: Opening): Opening {
  if (record.by === 'seen') return { ...record, path: [] };
  const { note, ...rest } = record;
  const kept = note === undefined ? '' : sieve(note);
  return { ...rest, path: [], ...(kept !== '' && { note: kept }) };
}

function featureOf({ data, ...feature }: FeatureMeasure): HandoutFeature {
  return { ...feature, ...(data !== undefined && { data: plain(data) }) };
}

/** Plain data: what JSON would keep. */
function plain(value: unknown): ShapeValue {
  if (value === null || typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean')
    return value;
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== 'object') return null;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, part]) => part !== undefined)
      .map(([name, part]) => [name, plain(part)]),
  );
}
