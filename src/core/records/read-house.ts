import type { Acceptance, Allowance, House, HouseCalendar, Level, Milestone, Slot, Studs } from '../model/index.js';
import { hasErrors, problemAt } from '../../base/problem/index.js';
import type { Path, Problem } from '../../base/problem/index.js';
import { parseDay, parseDays, parsePercent } from '../../base/units/index.js';
import { looseNames, soundItems } from './checked-record.js';
import type { Checked, SoundItem } from './checked-record.js';
import { passed, readDimension, readMoney, readSum } from './formats.js';
import type { RawAllowance, RawHouse, RawLevel, RawMilestone, RawSlot } from './raw/house.js';

/** The house's record, as far as it can be read. */
export interface HouseDraft {
  readonly record: Checked<RawHouse>;
  /** Names that others may refer to, even where the rest of the entry is wrong. */
  readonly levelIds: ReadonlySet<string>;
  readonly allowanceIds: ReadonlySet<string>;
  readonly milestoneIds: ReadonlySet<string>;
  /** Sound entries with their place in the list. */
  readonly allowances: readonly Placed<Allowance>[];
  readonly milestones: readonly Placed<Milestone>[];
  readonly whole?: House;
  readonly problems: readonly Problem[];
}

export interface Placed<T> {
  readonly value: T;
  readonly index: number;
}

export function readHouse(record: Checked<RawHouse>): HouseDraft {
  const milestoneItems = soundItems<RawMilestone>(record, 'milestones');
  const problems = [
    ...record.problems,
    ...milestoneItems.flatMap((item) => whenProblems(item, record)),
    ...closedProblems(record),
  ];
  const allowances = soundItems<RawAllowance>(record, 'allowances').map((item) => placed(item, readAllowance));
  const milestones = milestoneItems
    .filter((item) => whenProblems(item, record).length === 0)
    .map((item) => placed(item, readMilestone));
  return {
    record,
    levelIds: looseNames(record, 'levels', 'id'),
    allowanceIds: looseNames(record, 'allowances', 'id'),
    milestoneIds: looseNames(record, 'milestones', 'id'),
    allowances,
    milestones,
    problems,
    ...(!hasErrors(problems) && { whole: wholeHouse(record, allowances, milestones) }),
  };
}

function placed<Raw, T>({ raw, path }: SoundItem<Raw>, readItem: (raw: Raw) => T): Placed<T> {
  return { value: readItem(raw), index: Number(path[1]) };
}

function wholeHouse(
  { raw, body, origin }: Checked<RawHouse>,
  allowances: readonly Placed<Allowance>[],
  milestones: readonly Placed<Milestone>[],
): House {
  const { contract } = raw;
  return {
    name: raw.name,
    number: raw.number,
    place: raw.place,
    ...(raw.site !== undefined && { site: raw.site.replace(/\/+$/u, '') }),
    people: raw.people.map(({ role, name, contact }) => ({ role, name, ...(contact !== undefined && { contact }) })),
    metric: raw.metric ?? 'none',
    currency: raw.currency,
    climateZone: raw['climate-zone'],
    contract: {
      sum: passed(readMoney(contract.sum)),
      date: passed(parseDay(contract.date)),
      tax: { rate: passed(parsePercent(contract.tax.rate)), on: contract.tax.on },
      overageMarkup: passed(parsePercent(contract['overage-markup'])),
      creditReturns: passed(parsePercent(contract['credit-returns'])),
      creditMarkup: contract['credit-markup'],
      contingency: passed(readMoney(contract.contingency)),
      ...(contract['day-cost'] !== undefined && { dayCost: passed(readMoney(contract['day-cost'])) }),
      ownerFurnishedInstall: contract['owner-furnished-install'],
      rounding: contract.rounding,
    },
    levels: raw.levels.map(({ id, name }: RawLevel): Level => ({ id, name })),
    allowances: allowances.map(({ value }) => value),
    calendar: readCalendar(raw.calendar),
    milestones: milestones.map(({ value }) => value),
    acceptances: (raw.cautions ?? []).flatMap(readAcceptances),
    ...(raw.studs && { studs: readStuds(raw.studs) }),
    ...(raw.slots && { slots: raw.slots.map(readSlot) }),
    body,
    origin,
  };
}

function readAllowance({ id, name, amount, covers, categories, note }: RawAllowance): Allowance {
  return { id, name, amount: passed(readSum(amount)), covers, categories, ...(note !== undefined && { note }) };
}

function readCalendar({ weekend, holidays, closed, review }: RawHouse['calendar']): HouseCalendar {
  return { weekend, holidays, closed: closed ?? [], reviewDays: passed(parseDays(review)) };
}

/** One for each caution that is accepted for the reason. */
function readAcceptances(
  { accept, by, on, why }: NonNullable<RawHouse['cautions']>[number],
  index: number,
): readonly Acceptance[] {
  const read = (caution: string, path: Path): Acceptance => ({ caution, by, on: passed(parseDay(on)), why, path });
  const path = ['cautions', index, 'accept'];
  return typeof accept === 'string' ? [read(accept, path)] : accept.map((id, place) => read(id, [...path, place]));
}

function readStuds({ inside, outside }: NonNullable<RawHouse['studs']>): Studs {
  return { inside: passed(readDimension(inside)), outside: passed(readDimension(outside)) };
}

/** One name is written without a list. */
function readSlot({ at, needs, in: uses, except }: RawSlot): Slot {
  return {
    at,
    needs: typeof needs === 'string' ? [needs] : needs,
    ...(uses && { in: uses }),
    ...(except && { except }),
  };
}

function readMilestone({ id, name, date, after, days, note, 'done-on': doneOn }: RawMilestone): Milestone {
  const when: Milestone['when'] =
    date === undefined ? { by: 'after', after: after ?? '', days: days ?? 0 } : { by: 'date', date };
  return { id, name, when, ...(doneOn !== undefined && { doneOn }), ...(note !== undefined && { note }) };
}

/** A milestone is on a day, or days after another. */
function whenProblems({ raw, path }: SoundItem<RawMilestone>, { origin }: Checked<RawHouse>): readonly Problem[] {
  const { date, after, days } = raw;
  const fix = 'write date, or after and days';
  if (date !== undefined && (after !== undefined || days !== undefined)) {
    return [problemAt(origin, path, 'milestone-when', `milestone '${raw.id}' has a date and follows another`, { fix })];
  }
  if (date === undefined && (after === undefined || days === undefined)) {
    return [problemAt(origin, path, 'milestone-when', `milestone '${raw.id}' does not say when it is`, { fix })];
  }
  return [];
}

function closedProblems(record: Checked<RawHouse>): readonly Problem[] {
  if (!record.sound(['calendar'])) return [];
  return (record.raw.calendar.closed ?? []).flatMap(({ from, to }, index) => {
    if (from <= to) return [];
    const fix = 'the first day closed comes first';
    return [
      problemAt(record.origin, ['calendar', 'closed', index, 'to'], 'date-order', `${to} is before ${from}`, { fix }),
    ];
  });
}
