import type { LookUp } from '../core/book/index.js';
import type { HouseBlock } from '../sheet/index.js';
import * as agreed from './agreed/index.js';
import * as alternative from './alternatives/index.js';
import * as calendar from './calendar/index.js';
import * as caution from './cautions/index.js';
import { conventions } from './conventions.js';
import * as laying from './laying/index.js';
import * as money from './money/index.js';
import { rooms } from './rooms.js';
import * as scope from './scope/index.js';
import type { HouseSchedule } from './schedule.js';
import { tradeTables } from './trade-tables.js';

/** Tables that are written as files of data, by name, in the order of the book. There is no money in these. */
const schedules: Readonly<Record<string, HouseSchedule>> = tradeTables;

/** The house as laid out. */
const laid = {
  areas: laying.areas,
  'outside-faces': laying.outsideFaces,
  'outside-walls': laying.outsideWalls,
  'roof-ceilings': laying.roofCeilings,
  'rooms-over': laying.roomsOver,
  'wall-thicknesses': laying.wallThicknesses,
  'walls-between': laying.betweenRooms,
} as const;

/** What is to be looked at and settled, and how things are measured. */
const registers = {
  decisions: calendar.decisions,
  milestones: calendar.milestones,
  cautions: caution.cautions,
  'caution-rules': caution.cautionRules,
  'scope-findings': scope.findings,
  'scope-layers': scope.layers,
  conventions,
} as const;

/** For the house alone. */
const accounts = {
  rooms,
  'last-days': calendar.lastDays,
  issues: agreed.issues,
  'contract-steps': money.contractSteps,
  'agreed-steps': money.agreedSteps,
  'change-order-lines': agreed.changeLines,
  alternatives: alternative.alternatives,
  'alternative-lines': alternative.alternativeLines,
  'joint-decisions': money.jointDecisions,
  forecast: money.forecast,
  'forecast-choices': money.forecastChoices,
  allowances: money.allowances,
  'allowance-lines': money.allowanceLines,
  'allowance-figures': money.allowanceFigures,
  invoices: money.invoices,
  quotes: money.quotes,
  upgrades: money.upgrades,
  'totals-by-room': money.totalsByRoom,
  'totals-by-trade': money.totalsByTrade,
  'totals-by-category': money.totalsByCategory,
} as const;

const files: Readonly<Record<string, HouseSchedule>> = { ...schedules, ...laid, ...registers, ...accounts };

export const tableNames: readonly string[] = Object.keys(files);

/** Each with its rows; one without rows is left out. */
export function dataTables(look: LookUp): ReadonlyMap<string, HouseBlock> {
  return new Map(
    Object.entries(files)
      .map(([name, { lay }]) => [name, lay(look)] as const)
      .filter(([, { groups }]) => groups.length > 0),
  );
}

/** `schedule-doors.csv`, `allowances.csv`. */
export const dataFile = (name: string): string => `${name in schedules ? 'schedule-' : ''}${name}.csv`;
