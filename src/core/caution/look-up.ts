import { carries } from '../fact/index.js';
import type { Category } from '../model/index.js';
import { isOn } from '../takeoff/index.js';
import type { HouseView, RoomView, SelectionView } from './view.js';

export { breastOf, edgeOf, stairOf } from '../feature/index.js';

export function selectionsAt(room: RoomView, place: string): readonly SelectionView[] {
  return room.at.get(place) ?? [];
}

/** Selections at a feature or at a part of it. */
export function selectionsOn(room: RoomView, feature: string): readonly SelectionView[] {
  return room.selections.filter(({ places }) => places.some(({ id }) => isOn(feature, id)));
}

/** Trades that the house gives a kind of work to. */
export function tradesOf(house: HouseView, isKind: (category: Category) => boolean): readonly string[] {
  return [...new Set(house.categories.filter(isKind).map(({ trade }) => trade))];
}

/** Where a timber stands, and whom what is seen of it concerns: the framers, and whoever finishes it. */
export function ofTimber(
  house: HouseView,
  room: RoomView,
  { id, name }: { readonly id: string; readonly name: string },
) {
  const selections = selectionsOn(room, id);
  return {
    room: room.slug,
    place: id,
    placeText: name,
    selections: selections.map((selection) => selection.id),
    trades: [...new Set([...tradesOf(house, isFraming), ...selections.map(({ category }) => category.trade)])],
  };
}

export const isFraming = ({ layer }: Category): boolean => layer === 'framing';
export const isRailing = ({ measure }: Category): boolean => measure.by === 'railing';
export const isStone = ({ measure }: Category): boolean => measure.by === 'stone';

/** Sound insulation that is not a deliberate none. */
export const isSoundInsulation = ({ category, state }: SelectionView): boolean =>
  carries(category, 'sound-insulation', 'stc') && state !== 'none';
