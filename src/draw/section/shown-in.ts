import { placeOn } from '../../base/geometry/index.js';
import { solidSpace, solidsOf, timberOf } from '../../core/feature/index.js';
import type { RoomMeasure } from '../../core/model/index.js';
import type { LetteredSection } from './choose.js';
import { beyond, cutOf } from './cut.js';

/** For timbers of a room, which of its sections they stand in or beyond: `section A`, `sections A and B`. */
export function timbersIn(measure: RoomMeasure, sections: readonly LetteredSection[]): ReadonlyMap<string, string> {
  const timbers = measure.features.filter((feature) => timberOf(feature)?.place);
  if (timbers.length === 0 || sections.length === 0) return new Map();
  const space = solidSpace(measure);
  return new Map(
    timbers.flatMap((feature) => {
      const places = solidsOf(feature, space).flatMap(({ plane, patches }) =>
        patches.flatMap(({ outline }) => outline.map((corner) => placeOn(plane, corner))),
      );
      const letters = sections
        .filter((section) => places.some((place) => beyond(cutOf(measure, section), place) > 0))
        .map(({ letter }) => letter);
      if (letters.length === 0) return [];
      const words = letters.length === 1 ? `section ${letters[0] ?? ''}` : `sections ${letters.join(' and ')}`;
      return [[feature.id, words] as const];
    }),
  );
}
