import { factOf } from '../../fact/index.js';
import type { OpeningMeasure } from '../../model/index.js';
import type { Length } from '../../../base/units/index.js';
import type { BookOption, BookRoom } from '../book.js';
import type { Jamb } from './schedule.js';
import { optionOf } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

/** Jamb depth: studs and what lies on both sides of the wall, told only where records know all three. What fills the
 *  cavity and is deeper than the studs, such as batts with a channel, adds what stands out. Common practice, no source. */
export function jambOf(room: BookRoom, opening: OpeningMeasure, door: BookOption | undefined, look: Unscheduled): Jamb {
  const made = factOf(door, 'door', 'jamb');
  const wall = wallDepth(room, opening, look);
  return {
    ...(made !== undefined && { made }),
    ...(wall !== undefined && { wall }),
    ...(made !== undefined && wall !== undefined && { reaches: made >= wall }),
  };
}

function wallDepth(room: BookRoom, opening: OpeningMeasure, look: Unscheduled): Length | undefined {
  const stud = look.book.house.studs?.inside;
  const other = look.room(opening.to);
  const seen = other?.measure.openings.find(({ mark }) => mark === opening.mark);
  if (stud === undefined || !other || !seen) return undefined;
  const near = sideOf(room, opening.wall, stud, look);
  const far = sideOf(other, seen.wall, stud, look);
  if (near === undefined || far === undefined) return undefined;
  return (stud + near.finish + far.finish + Math.max(near.standsOut, far.standsOut)) as Length;
}

/** What lies on one side of a wall where a room is behind it, as at a door; nothing is known of it without a board. */
function sideOf(
  room: BookRoom,
  wall: string,
  stud: Length,
  look: Unscheduled,
): { readonly finish: number; readonly standsOut: number } | undefined {
  let finish = 0;
  let standsOut = 0;
  let hasBoard = false;
  for (const selection of look.selectionsOf(room)) {
    if (!selection.places.some(({ id, part }) => id === wall && part !== 'outside')) continue;
    const thickness = optionOf(selection, look)?.thickness;
    if (thickness === undefined) continue;
    const layer = look.category(selection.category)?.layer;
    if (layer === 'substrate') hasBoard = true;
    if (layer === 'substrate' || layer === 'finish') finish += thickness;
    if (layer === 'insulation') standsOut = Math.max(standsOut, thickness - stud);
  }
  return hasBoard ? { finish, standsOut } : undefined;
}
