import { carries } from '../../fact/index.js';
import type { OpeningMeasure, Option } from '../../model/index.js';
import { selectionsAt } from '../look-up.js';
import type { HouseView, RoomView, SelectionView } from '../view.js';

/** The door selected for an opening, on whichever side it is recorded. */
export function doorAt(
  house: HouseView,
  room: RoomView,
  { mark, to }: OpeningMeasure,
): { readonly selection: SelectionView; readonly option: Option } | undefined {
  const beside = house.bySlug.get(to);
  const selections = [...selectionsAt(room, mark), ...(beside ? selectionsAt(beside, mark) : [])];
  const selection = selections.find(({ category, counted }) => carries(category, 'door', 'rough-height') && counted);
  return selection?.counted && { selection, option: selection.counted };
}

/** Rooms on the other side of an opening, with the wall it is in there. */
export function acrossFrom(
  house: HouseView,
  { mark, to }: OpeningMeasure,
): { readonly room: RoomView; readonly wall: string } | undefined {
  const room = house.bySlug.get(to);
  const wall = room?.measure.openings.find((opening) => opening.mark === mark)?.wall;
  return room && wall !== undefined ? { room, wall } : undefined;
}
