import type { LaidHouse, Records, RoomMeasure } from '../core/model/index.js';
import type { Origin, Path } from '../base/problem/index.js';
import type { PackedHouse, PackedOrigin, PackedPlace } from './pack-house.js';

/** A house that Books can be composed from, with what was packed beside it. */
export interface TriableHouse extends Omit<PackedHouse, 'records' | 'measures'> {
  readonly records: Records;
  readonly measures: ReadonlyMap<string, RoomMeasure>;
  readonly laid: LaidHouse;
}

/** A packed house as it was; its origins know only the places that a Book names. */
export function unpackHouse({ records, measures, ...beside }: PackedHouse): TriableHouse {
  return { ...beside, records: unpackValue(records) as Records, measures: new Map(measures) };
}

function unpackValue(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(unpackValue);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]: [string, unknown]) => [
      key,
      key === 'origin' ? unpackOrigin(inner as PackedOrigin) : unpackValue(inner),
    ]),
  );
}

function unpackOrigin({ file, at, key }: PackedOrigin): Origin {
  const first: PackedPlace = [1, 1];
  const find = (path: Path, places: PackedOrigin['at']): PackedPlace => {
    for (let length = path.length; length >= 0; length -= 1) {
      const place = places[path.slice(0, length).join('/')];
      if (place) return place;
    }
    return at[''] ?? first;
  };
  const position = ([line, column]: PackedPlace) => ({ line, column });
  return {
    file,
    text: '',
    at: (path) => position(find(path, at)),
    key: (path) => position(find(path, key)),
    elsewhere: (path) => {
      const place = find(path, at);
      const [line, column, other] = place;
      return other === undefined
        ? undefined
        : { origin: unpackOrigin({ file: other, at: { '': [line, column] }, key: {} }), path: [] };
    },
  };
}
