/** A Book without its schedules → the schedules of the house. One rule for each, whoever shows it. */
import type { Book } from '../book.js';
import { lookUp } from '../look-up.js';
import { finishSchedule } from './finish.js';
import { insulationSchedule, soundSchedule } from './insulation.js';
import { openingSchedules } from './openings.js';
import { paintSchedule } from './paint.js';
import { railingSchedule } from './railings.js';
import type { Schedules } from './schedule.js';
import { stoneSchedule } from './stone.js';
import { timberSchedule } from './timbers.js';

export * from './schedule.js';
export { handOf } from './openings.js';

export function makeSchedules(book: Omit<Book, 'schedules'>): Schedules {
  const look = lookUp(book);
  const finish = finishSchedule(look);
  const keys = new Map(finish.legend.map(({ option, key }) => [option, key]));
  return {
    finish,
    ...openingSchedules(look, keys),
    railings: railingSchedule(look),
    timbers: timberSchedule(look),
    stone: stoneSchedule(look),
    insulation: insulationSchedule(look),
    sound: soundSchedule(look),
    paint: paintSchedule(look),
  };
}
