import { carries, factOf } from '../../fact/index.js';
import type { OpeningMeasure } from '../../model/index.js';
import type { Length } from '../../../base/units/index.js';
import type { BookOption, BookRoom, BookSelection } from '../book.js';
import { doorFacts } from './door-facts.js';
import { hardwareSets } from './hardware.js';
import { jambOf } from './jamb.js';
import { compareMarks } from './marks.js';
import type { DoorRow, HardwareSet, OpeningRow, Trim } from './schedule.js';
import { optionOf, scheduled } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

/** Door schedule, opening schedule and hardware sets: each opening once, under the room that records it. */
export function openingSchedules(
  look: Unscheduled,
  keys: ReadonlyMap<string, string>,
): {
  readonly doors: readonly DoorRow[];
  readonly openings: readonly OpeningRow[];
  readonly hardware: readonly HardwareSet[];
} {
  const byMark = selectionsByMark(look);
  const sets = hardwareSets(look);
  const setOf = new Map(sets.flatMap(({ option, set, doors }) => doors.map(({ mark }) => [`${option} ${mark}`, set])));
  const own = look.book.rooms.flatMap((room) =>
    room.measure.openings.filter((opening) => opening.own).map((opening) => ({ room, opening })),
  );
  own.sort((a, b) => compareMarks(a.opening.mark, b.opening.mark));
  const context = { look, byMark, setOf, keys };
  return {
    doors: own.flatMap(({ room, opening }) => (opening.kind === 'door' ? [doorRow(room, opening, context)] : [])),
    openings: own.flatMap(({ room, opening }) => openingRow(room, opening, context) ?? []),
    hardware: sets,
  };
}

interface Context {
  readonly look: Unscheduled;
  readonly byMark: ReadonlyMap<string, readonly BookSelection[]>;
  /** Sets by option and mark. */
  readonly setOf: ReadonlyMap<string, string>;
  /** Keys of the finish schedule by option. */
  readonly keys: ReadonlyMap<string, string>;
}

/** Marks are unique in the house: whichever side a selection is on, it is on that opening. */
function selectionsByMark({ book }: Unscheduled): ReadonlyMap<string, readonly BookSelection[]> {
  const marks = new Set(book.rooms.flatMap(({ measure }) => measure.openings.map(({ mark }) => mark)));
  const found = new Map<string, BookSelection[]>();
  for (const selection of book.selections) {
    for (const { id } of selection.places) {
      if (!marks.has(id)) continue;
      const list = found.get(id) ?? [];
      list.push(selection);
      found.set(id, list);
    }
  }
  return found;
}

function doorRow(room: BookRoom, opening: OpeningMeasure, { look, byMark, setOf, keys }: Context): DoorRow {
  const on = byMark.get(opening.mark) ?? [];
  const door = on.find(({ category }) => carries(look.category(category), 'door', 'leaf'));
  const option = door && optionOf(door, look);
  const hardware = on.find(({ category }) => carries(look.category(category), 'door-hardware', 'backset'));
  const shown = hardware && scheduled(hardware, look);
  const set = shown?.option === undefined ? undefined : setOf.get(`${shown.option} ${opening.mark}`);
  const { mark, wall, to, width, height, shape, operation, hinge, slides, swing } = opening;
  const [thickness, core] = [factOf(option, 'door', 'leaf'), factOf(option, 'door', 'core')];
  const [face, panels] = [factOf(option, 'door', 'face'), factOf(option, 'door', 'panels')];
  const madeHeight = factOf(option, 'door', 'height');
  const fits = isMadeFor(opening, option);
  const swings = operation === 'swing' || operation === 'double';
  const [wider, higher] = [factOf(option, 'door', 'rough-width'), factOf(option, 'door', 'rough-height')];
  const facts = doorFacts(
    opening,
    { option, category: door && look.category(door.category) },
    { option: hardware && optionOf(hardware, look), category: hardware && look.category(hardware.category) },
  );
  const hand = handOf(room.slug, opening);
  return {
    mark,
    room: room.slug,
    wall,
    to,
    width,
    height,
    ...(shape && { shape }),
    ...(thickness !== undefined && { thickness }),
    ...(door && { door: scheduled(door, look) }),
    ...(face !== undefined && { face }),
    ...(panels !== undefined && { panels }),
    ...(core !== undefined && { core }),
    ...(fits !== undefined && { fits }),
    ...(madeHeight !== undefined && { madeHeight }),
    operation,
    ...(hinge !== undefined && { hinge }),
    ...(slides && { slides }),
    ...(swing !== undefined && { swing }),
    ...(hand !== undefined && { hand }),
    ...(swings &&
      fits !== false &&
      wider !== undefined &&
      higher !== undefined && { rough: { width: (width + wider) as Length, height: (height + higher) as Length } }),
    jamb: jambOf(room, opening, option, look),
    ...facts,
    trim: trimOf(on, look, keys),
    ...(shown && { hardware: { ...shown, ...(set !== undefined && { set }) } }),
    ...noteOf(opening),
  };
}

/** Is the opening's height the door's, and its width among those made? */
function isMadeFor({ width, height }: OpeningMeasure, option: BookOption | undefined): boolean | undefined {
  const made = factOf(option, 'door', 'height');
  const widths = factOf(option, 'door', 'widths');
  if (made === undefined && widths === undefined) return undefined;
  return (made === undefined || made === height) && (widths === undefined || widths.includes(width));
}

function openingRow(room: BookRoom, opening: OpeningMeasure, { look, byMark, keys }: Context): OpeningRow | undefined {
  const { mark, kind, wall, to, width, height, shape, sill, floor, area, operation, glass } = opening;
  if (kind === 'door') return undefined;
  return {
    mark,
    kind,
    room: room.slug,
    wall,
    to,
    width,
    height,
    ...(shape && { shape }),
    sill,
    head: (sill + height) as Length,
    area,
    operation,
    ...(glass && { glass }),
    ...(floor !== undefined && { floor }),
    ...plumbOf(room, opening),
    trim: trimOf(byMark.get(mark) ?? [], look, keys),
    ...noteOf(opening),
  };
}

/** Heights above the floor of what lies along a wall that leans. */
function plumbOf({ measure }: BookRoom, { wall, sill, height }: OpeningMeasure): Pick<OpeningRow, 'plumb'> {
  const lean = measure.walls.find(({ id }) => id === wall)?.lean;
  if (!lean) return {};
  const plumb = (along: number): Length => Math.round((along * lean.at) / Math.hypot(lean.at, lean.by)) as Length;
  return { plumb: { sill: plumb(sill), head: plumb(sill + height) } };
}

/** Hand of a door from facts: the side of its hinges seen from the room that records it, and the room it swings into. From
 *  the side where one pushes, hinges on the left make a left hand. A leaf that swings into the recording room is pulled
 *  from there, so that its hinges change sides. Common practice, no source; makers' words differ, so the facts stand
 *  beside it. */
export function handOf(
  room: string,
  { operation, hinge, swing }: Pick<OpeningMeasure, 'operation' | 'hinge' | 'swing'>,
): 'left' | 'right' | undefined {
  if (operation !== 'swing' || hinge === undefined || swing === undefined) return undefined;
  if (swing !== room) return hinge;
  return hinge === 'left' ? 'right' : 'left';
}

function trimOf(on: readonly BookSelection[], look: Unscheduled, keys: ReadonlyMap<string, string>): readonly Trim[] {
  return on
    .filter(({ category }) => look.category(category)?.layer === 'edge')
    .map((selection) => {
      const shown = scheduled(selection, look);
      const key = shown.option === undefined ? undefined : keys.get(shown.option);
      return { ...shown, room: selection.room, ...(key !== undefined && { key }) };
    });
}

function noteOf({ record }: OpeningMeasure): { readonly note?: string } {
  return record.by === 'own' && record.note !== undefined ? { note: record.note } : {};
}
