import type { BookRoom, LookUp } from '../book/index.js';
import type { Cents } from '../../base/units/index.js';
import { compareDrawings, compareMeasures, compareParts, type RoomNames } from './compare-measures.js';
import { compareText } from './compare-text.js';
import type { CompareSelections } from './compare-selections.js';
import { matchSelections, type Pair } from './match.js';
import type { RoomChange } from './room-change.js';

/** What differs between two sides of one room, or undefined when nothing does. */
export function compareRooms(
  { from, to }: Pair<BookRoom>,
  names: { readonly from: LookUp; readonly to: LookUp },
  compareSelections: CompareSelections,
  roomName: RoomNames,
): RoomChange | undefined {
  const room = to ?? from;
  if (!room) return undefined;
  const [before, now] = [from ? names.from.selectionsOf(from) : [], to ? names.to.selectionsOf(to) : []];
  const selections = matchSelections(before, now)
    .map(compareSelections)
    .filter((change) => change !== undefined);
  const renamed = from && to && (from.slug !== to.slug || from.name !== to.name || from.number !== to.number);
  const fields = from && to ? describeFields(from, to, names) : [];
  // What was measured once for both sides is the same object.
  const isSame = from && from.measure === to?.measure;
  const measures = isSame ? [] : compareMeasures(from?.measure, to?.measure);
  const parts = compareParts(from, to, roomName);
  const drawings = isSame ? [] : compareDrawings(from?.measure, to?.measure);
  const found = [selections, fields, measures, parts, drawings].some((list) => list.length > 0);
  if (from && to && !renamed && !found) return undefined;
  return {
    room: room.slug,
    ...(from && { roomBefore: from.slug }),
    number: room.number,
    name: room.name,
    kind: !from ? 'added' : !to ? 'removed' : 'kept',
    ...(renamed && { renamedFrom: `${from.number} ${from.name}` }),
    fields,
    measures,
    parts,
    drawings,
    selections,
    difference: selections.reduce((sum, selection) => sum + selection.cost, 0) as Cents,
    byChoice: selections.reduce((sum, { own, byChoice }) => sum + (own ? byChoice : 0), 0) as Cents,
    pounds: selections.reduce((sum, selection) => sum + (selection.pounds ?? 0), 0),
    unweighed: selections.filter((selection) => selection.pounds === undefined).length,
  };
}

function describeFields(from: BookRoom, to: BookRoom, names: { from: LookUp; to: LookUp }): RoomChange['fields'] {
  return compareText([
    ['level', names.from.levelName(from.level), names.to.levelName(to.level)],
    ['use', from.use, to.use],
    ['notes', from.body.trim(), to.body.trim()],
  ]);
}
