import type { Category } from '../model/index.js';
import type { HouseView, RoomView, SelectionView } from './view.js';

export { breastOf, edgeOf, stairOf } from '../feature/index.js';

/** Selections at a place, with those of the whole feature when the place is one of its faces. */
export function selectionsAt(room: RoomView, place: string): readonly SelectionView[] {
  return room.at.get(place) ?? [];
}

export function selectionsOn(room: RoomView, feature: string): readonly SelectionView[] {
  return room.selections.filter(({ places }) =>
    places.some(({ id }) => id === feature || id.startsWith(`${feature}/`)),
  );
}

/** Trades that the house gives a kind of work to. */
export function tradesOf(house: HouseView, isKind: (category: Category) => boolean): readonly string[] {
  return [...new Set(house.categories.filter(isKind).map(({ trade }) => trade))];
}

export const isFraming = ({ layer }: Category): boolean => layer === 'framing';
export const isRailing = ({ measure }: Category): boolean => measure.by === 'railing';
export const isStone = ({ measure }: Category): boolean => measure.by === 'stone';
