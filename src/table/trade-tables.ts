import type { ScheduleName } from '../model/index.js';
import { backing } from './backing.js';
import { doors } from './doors.js';
import { hardware } from './hardware.js';
import { openings } from './openings.js';
import type { Schedule } from './schedule.js';

/** The schedules that a trade's record may ask for: the same names as in `schemas/trade.schema.json`. */
export const tradeTables = {
  doors,
  openings,
  hardware,
  backing,
} as const satisfies Readonly<Record<ScheduleName, Schedule>>;
