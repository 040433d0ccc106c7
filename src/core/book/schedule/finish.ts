import { scheduleColumns, type RoomMeasure, type ScheduleColumn } from '../../model/index.js';
import { findPlaces, placeText } from '../../takeoff/index.js';
import type { BookRoom, BookSelection } from '../book.js';
import { groupBy } from '../group-by.js';
import { finishKeys } from './finish-keys.js';
import type { FinishGroup, FinishNote, FinishRow, FinishSchedule } from './schedule.js';
import { scheduled } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

/** Room finish schedule: keys by room and column, and what each key means. */
export function finishSchedule(look: Unscheduled): FinishSchedule {
  const legend = finishKeys(look);
  const keys = new Map(legend.map(({ option, key }) => [option, key]));
  const notes: FinishNote[] = [];
  const rows = look.book.rooms.map((room): FinishRow => {
    const placed = look.selectionsOf(room).flatMap((selection) => placesOf(selection, room.measure, look));
    const remarks = remarksOf(placed, room, notes.length);
    notes.push(...remarks);
    const byColumn = groupBy(placed, ({ column }) => column);
    const cells = Object.fromEntries(
      scheduleColumns.map((column) => [column, groupsOf(byColumn.get(column) ?? [], column, { room, look, keys })]),
    ) as Record<ScheduleColumn, readonly FinishGroup[]>;
    const { lowest, highest } = room.measure;
    return { room: room.slug, cells, lowest, highest, notes: remarks.map(({ number }) => number) };
  });
  return { legend, rows, notes };
}

/** One place of a selection, with the column that it shows in. */
interface Placed {
  readonly selection: BookSelection;
  readonly place: string;
  readonly column: ScheduleColumn;
}

function placesOf(selection: BookSelection, measure: RoomMeasure, look: Unscheduled): readonly Placed[] {
  const column = look.category(selection.category)?.schedule;
  if (column === undefined) return [];
  return selection.places.map(({ id }) => {
    const own = columnOfPlace(id, measure);
    // What is made for walls shows under the ceiling where it is on the ceiling.
    const follows = column === 'place' || (column === 'walls' && own === 'ceiling');
    return { selection, place: id, column: follows ? own : column };
  });
}

function columnOfPlace(id: string, { openings }: RoomMeasure): ScheduleColumn {
  if (id === 'floor' || id === 'ceiling' || id === 'base') return id;
  return openings.some(({ mark }) => mark === id) ? 'trim' : 'walls';
}

interface Context {
  readonly room: BookRoom;
  readonly look: Unscheduled;
  readonly keys: ReadonlyMap<string, string>;
}

/** Places with the same finishes in one group. */
function groupsOf(placed: readonly Placed[], column: ScheduleColumn, context: Context): readonly FinishGroup[] {
  const { measure } = context.room;
  const byPlace = groupBy(placed, ({ place }) => place);
  const alike = groupBy([...byPlace], ([, own]) => own.map(({ selection }) => selection.id).join(' '));
  return [...alike.values()].map((group): FinishGroup => {
    const [[, own] = ['', []]] = group;
    const finishes = own.map(({ selection }) => {
      const finish = scheduled(selection, context.look);
      const key = finish.option === undefined ? undefined : context.keys.get(finish.option);
      return { ...finish, ...(key !== undefined && { key }) };
    });
    return {
      at: whereOf(
        group.map(([place]) => place),
        column,
        measure,
      ),
      finishes,
    };
  });
}

/** Where a group of places is, or nothing where it is all that the column speaks of. */
function whereOf(ids: readonly string[], column: ScheduleColumn, measure: RoomMeasure): string {
  const standing = measure.walls.filter(({ openTo }) => openTo === undefined);
  if (column === 'walls' && standing.every(({ id }) => ids.includes(id)) && ids.length === standing.length) return '';
  if (ids.length === 1 && ids[0] === column) return '';
  const windows = measure.openings.filter(({ kind }) => kind === 'window');
  if (windows.length > 1 && ids.length === windows.length && windows.every(({ mark }) => ids.includes(mark))) {
    return 'Windows';
  }
  // The column says that it is trim: marks are enough.
  if (column === 'trim' && ids.every((id) => measure.openings.some(({ mark }) => mark === id))) return ids.join(', ');
  return placeText(
    [],
    ids.flatMap((id) => findPlaces(id, measure) ?? []),
  );
}

function remarksOf(placed: readonly Placed[], { slug }: BookRoom, from: number): readonly FinishNote[] {
  const selections = [...new Set(placed.map(({ selection }) => selection))].filter(({ note }) => note !== undefined);
  return selections.map(({ id, placeText, note = '' }, index) => ({
    number: from + index + 1,
    room: slug,
    placeText,
    text: note,
    selection: id,
  }));
}
