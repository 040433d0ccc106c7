import type {
  Acceptance,
  Allowance,
  Contract,
  House,
  HouseCalendar,
  Invoice,
  Level,
  Match,
  Milestone,
  Person,
  Slot,
  Studs,
  TaxRate,
  WallType,
} from '../model/index.js';
import { hasErrors, problemAt, type Path, type Problem } from '../../base/problem/index.js';
import { parseCalendarDays, parseDay, parseDays, parseLength, parsePercent } from '../../base/units/index.js';
import { knownNames, soundItems, type Checked, type SoundItem } from './checked-record.js';
import { passed, readDimension, readMoney, readSum } from './formats.js';
import type {
  RawAllowance,
  RawHouse,
  RawInvoice,
  RawLevel,
  RawMatch,
  RawMilestone,
  RawSlot,
  RawTax,
  RawWallType,
} from './raw/house.js';

/** The house's record, as far as it can be read. */
export interface HouseDraft {
  readonly record: Checked<RawHouse>;
  /** Names that others may refer to, even where the rest of the entry is wrong; absent where not all are known. */
  readonly levelIds?: ReadonlySet<string>;
  readonly allowanceIds?: ReadonlySet<string>;
  readonly milestoneIds?: ReadonlySet<string>;
  /** Sound entries with their place in the list. */
  readonly allowances: readonly Placed<Allowance>[];
  readonly milestones: readonly Placed<Milestone>[];
  readonly whole?: House;
  readonly problems: readonly Problem[];
}

interface Placed<T> {
  readonly value: T;
  readonly index: number;
}

export function readHouse(record: Checked<RawHouse>): HouseDraft {
  const milestoneItems = soundItems<RawMilestone>(record, 'milestones');
  const problems = [
    ...record.problems,
    ...milestoneItems.flatMap((item) => whenProblems(item, record)),
    ...closedProblems(record),
    ...taxProblems(record),
  ];
  const allowances = soundItems<RawAllowance>(record, 'allowances').map((item) => placed(item, readAllowance));
  const milestones = milestoneItems
    .filter((item) => whenProblems(item, record).length === 0)
    .map((item) => placed(item, readMilestone));
  const [levelIds, allowanceIds, milestoneIds] = (['levels', 'allowances', 'milestones'] as const).map((list) =>
    knownNames(record, list, 'id'),
  );
  return {
    record,
    ...(levelIds && { levelIds }),
    ...(allowanceIds && { allowanceIds }),
    ...(milestoneIds && { milestoneIds }),
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
  return {
    name: raw.name,
    number: raw.number,
    place: raw.place,
    ...(raw.site !== undefined && { site: raw.site.replace(/\/+$/u, '') }),
    shared: raw.shared ?? [],
    people: raw.people.map(readPerson),
    units: raw.units ?? 'customary',
    beside: (raw.units === 'metric' ? raw.feet : raw.metric) === 'beside',
    currency: raw.currency,
    ...(raw.language !== undefined && { language: raw.language }),
    ...(raw.handouts?.['money-words'] && { moneyWords: raw.handouts['money-words'] }),
    ...(raw.handouts?.people === 'names' && { namesToTrades: true }),
    ...(raw['climate-zone'] !== undefined && { climateZone: raw['climate-zone'] }),
    ...(raw.code && { code: raw.code }),
    contract: readContract(raw.contract),
    ...(raw['prices-good-for'] !== undefined && {
      pricesGoodFor: passed(parseCalendarDays(raw['prices-good-for'])),
    }),
    levels: raw.levels.map(readLevel),
    allowances: allowances.map(({ value }) => value),
    calendar: readCalendar(raw.calendar),
    milestones: milestones.map(({ value }) => value),
    acceptances: (raw.cautions ?? []).flatMap(readAcceptances),
    ...(raw.studs && { studs: readStuds(raw.studs) }),
    ...(raw['wall-types'] && { wallTypes: raw['wall-types'].map(readWallType) }),
    ...(raw.north !== undefined && { north: raw.north }),
    ...(raw.picture !== undefined && { picture: raw.picture }),
    ...(raw.slots && { slots: raw.slots.map(readSlot) }),
    matches: (raw.match ?? []).map(readMatch),
    body,
    origin,
  };
}

function readPerson({ role, name, contact, phone, mail }: RawHouse['people'][number]): Person {
  return {
    role,
    name,
    ...(contact !== undefined && { contact }),
    ...(phone !== undefined && { phone }),
    ...(mail !== undefined && { mail }),
  };
}

function readLevel({ id, name, floor, 'above-ground': ground }: RawLevel): Level {
  return {
    id,
    name,
    ...(floor !== undefined && { floor: passed(parseLength(floor)) }),
    ...(ground !== undefined && { aboveGround: passed(parseLength(ground)) }),
  };
}

function readWallType({ id, name, thickness, for: usualFor }: RawWallType): WallType {
  return { id, name, thickness: passed(readDimension(thickness)), ...(usualFor && { usualFor }) };
}

function readContract(raw: RawHouse['contract']): Contract {
  const overageMarkup = passed(parsePercent(raw['overage-markup']));
  return {
    sum: passed(readMoney(raw.sum)),
    date: passed(parseDay(raw.date)),
    tax: [raw.tax].flat().map(readTax),
    markupOn: raw['markup-on'] ?? 'each-line',
    overageMarkup,
    workMarkup: raw['work-markup'] === undefined ? overageMarkup : passed(parsePercent(raw['work-markup'])),
    ...(raw.fee !== undefined && { fee: passed(parsePercent(raw.fee)) }),
    creditReturns: passed(parsePercent(raw['credit-returns'])),
    creditMarkup: readCreditMarkup(raw['credit-markup']),
    contingency: passed(readMoney(raw.contingency)),
    ...(raw['day-cost'] !== undefined && { dayCost: passed(readMoney(raw['day-cost'])) }),
    ownerFurnishedInstall: raw['owner-furnished-install'],
    rounding: raw.rounding,
  };
}

function readTax({ authority, rate, on }: RawTax): TaxRate {
  return { ...(authority !== undefined && { authority }), rate: passed(parsePercent(rate)), on };
}

function readCreditMarkup(raw: RawHouse['contract']['credit-markup']): Contract['creditMarkup'] {
  if (typeof raw === 'string') return passed(parsePercent(raw));
  return raw && 'as-added';
}

function readAllowance({ id, name, amount, covers, categories, note, invoices }: RawAllowance): Allowance {
  return {
    id,
    name,
    amount: passed(readSum(amount)),
    covers,
    categories,
    ...(note !== undefined && { note }),
    ...(invoices && { invoices: invoices.map(readInvoice) }),
  };
}

function readInvoice(raw: RawInvoice): Invoice {
  return {
    option: raw.for,
    number: raw.number,
    on: passed(parseDay(raw.on)),
    amount: passed(readMoney(raw.amount)),
    heldBy: raw['held-by'],
    last: raw['more-to-come'] !== true,
  };
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

function readMatch({ name, category, places, why }: RawMatch): Match {
  return { name, category, places: places.map(readMatchPlace), why };
}

/** `stair-hall/stair`, or a room alone. The place may have a slash of its own: `great-room/breast/hearth`. */
export function readMatchPlace(text: string): Match['places'][number] {
  const [room = '', ...rest] = text.split('/');
  return { room, ...(rest.length > 0 && { place: rest.join('/') }) };
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

/** Of several taxes each says whose it is. */
function taxProblems(record: Checked<RawHouse>): readonly Problem[] {
  const path = ['contract', 'tax'];
  if (!record.sound(path) || !Array.isArray(record.raw.contract.tax)) return [];
  const taxes: readonly RawTax[] = record.raw.contract.tax;
  return taxes.flatMap(({ authority }, index) => {
    if (authority !== undefined || taxes.length === 1) return [];
    const fix = 'write authority: and who charges it, such as State';
    const message = `'tax' lacks 'authority', as one of several`;
    return [problemAt(record.origin, [...path, index], 'key-missing', message, { fix })];
  });
}
