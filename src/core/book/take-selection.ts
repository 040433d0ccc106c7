import type { Category, Option, RoomMeasure, Selection } from '../model/index.js';
import { resolvePlaces, takeOff, type Place, type Takeoff } from '../takeoff/index.js';
import type { Neighbours } from './neighbours.js';

/** What a selection takes, with each option that could stand there. */
export interface Taken {
  readonly places: readonly Place[];
  /** Words of its record that are no places of its room. */
  readonly unknown: readonly string[];
  /** Places that its category does not measure. */
  readonly unsuited: readonly Place[];
  /** In the order of the options. */
  readonly takeoffs: readonly (readonly Takeoff[])[];
}

export type TakeSelection = typeof takeSelection;

/** Finds the places of a selection and takes its options off. `neighbours` are absent where the category does not count by them. */
export function takeSelection(
  selection: Selection,
  _id: string,
  category: Category,
  measure: RoomMeasure,
  options: readonly Option[],
  neighbours?: Neighbours,
): Taken {
  const { places, unknown } = resolvePlaces(selection, measure);
  const taken = options.map((option) => takeOff({ selection, category, measure, ...neighbours }, places, option));
  return {
    places,
    unknown,
    unsuited: taken[0]?.unsuited ?? [],
    takeoffs: taken.map(({ takeoffs }) => takeoffs),
  };
}
