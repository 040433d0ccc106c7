import type { Option } from '../../model/index.js';
import { selectionsAt } from '../look-up.js';
import type { RoomView, SelectionView } from '../view.js';

/** What lies on a room's floor today. */
export function floorFinish(
  room: RoomView,
): { readonly selection: SelectionView; readonly counted: Option } | undefined {
  const selection = selectionsAt(room, 'floor').find(({ category, counted }) => category.layer === 'finish' && counted);
  return selection?.counted && { selection, counted: selection.counted };
}
