import type { ScheduleName } from '../core/model/index.js';
import { backing } from './backing.js';
import { doors } from './doors.js';
import { finishes, finishKeys, finishRemarks } from './finish.js';
import { hardware } from './hardware.js';
import { insulation } from './insulation.js';
import { openings } from './openings.js';
import { paint } from './paint.js';
import { railings } from './railings.js';
import type { Schedule } from './schedule.js';
import { soundWalls } from './sound-walls.js';
import { stone } from './stone.js';
import { timbers } from './timbers.js';

/** The schedules that a trade's record may ask for; orders and supplies are in every handout. The same names as in `schemas/trade.schema.json`. */
export const tradeTables = {
  finish: finishes,
  'finish-keys': finishKeys,
  'finish-remarks': finishRemarks,
  doors,
  openings,
  hardware,
  railings,
  timbers,
  stone,
  insulation,
  'sound-walls': soundWalls,
  paint,
  backing,
} as const satisfies Readonly<Record<ScheduleName, Schedule>>;
