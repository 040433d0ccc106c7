import { acceptCautions, findCautions } from '../caution/index.js';
import type { Slips } from '../calendar/index.js';
import { layHouse } from '../lay/index.js';
import type { LaidHouse, Records, RoomMeasure } from '../model/index.js';
import type { Outcome } from '../../base/problem/index.js';
import { addCosts, noCost, orderList, type Cost } from '../price/index.js';
import { findScope } from '../scope/index.js';
import { poolSupplies, sumSupplies, type LayOut } from '../takeoff/index.js';
import { inLocale, later, withLater, type Cents, type IsoDate } from '../../base/units/index.js';
import type { Book, BookRoom, BookSelection } from './book.js';
import {
  describeCategory,
  describeChangeOrders,
  describeHouse,
  describeIssue,
  describeOption,
  paintNames,
  describeTrade,
} from './describe.js';
import { alikeProblems } from './alike-problems.js';
import { choiceDayProblems, futureProblems, measureProblems } from './day-problems.js';
import { draftSelections } from './draft-selections.js';
import { groupBy } from './group-by.js';
import { freshWork, type Work } from './kept-work.js';
import { makeHouseAlternatives } from './house-alternatives.js';
import { makeDecisions } from './make-decisions.js';
import { makeMoney } from './make-money.js';
import { invoiceProblems, quoteProblems } from './money-problems.js';
import { makeSelection } from './make-selection.js';
import { layerProblems } from './layer-problems.js';
import { orderCounter } from './order-counts.js';
import { priceDrafts } from './price-drafts.js';
import { makeSchedules } from './schedule/index.js';
import { seeHouse } from './see-house.js';

export interface Composing {
  /** What would be if milestones came later than recorded. */
  readonly slips?: Slips | undefined;
  /** Lays boards and sheets out; one that keeps its layouts may serve several Books. */
  readonly layOut?: LayOut | undefined;
  /** Where its rooms stand; absent: they are laid out here. */
  readonly laid?: LaidHouse | undefined;
  /** The contract sum as it was first agreed; absent: the record's own. */
  readonly agreedSum?: Cents | undefined;
  /** What it has in common with other Books. */
  readonly work?: Work | undefined;
}

/** Composes the Book: everything computed for a house on one day. The same records and day give the same Book.
 *  Problems are located in the records; with an error among them there is no Book. */
export function makeBook(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  on: IsoDate,
  composing: Composing = {},
): Outcome<Book> {
  return inLocale(records.house, () => compose(records, measures, on, composing));
}

function compose(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  on: IsoDate,
  composing: Composing,
): Outcome<Book> {
  const { laid } = composing;
  if (laid) return composeLaid(records, measures, on, { ...composing, laid });
  const laying = layHouse(records, measures);
  return composeLaid(records, laying.measures, on, { ...composing, laid: laying.laid });
}

function composeLaid(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  on: IsoDate,
  {
    slips,
    layOut,
    laid,
    work = freshWork,
    agreedSum = records.house.contract.sum,
  }: Composing & { readonly laid: LaidHouse },
): Outcome<Book> {
  const drafted = draftSelections(records, measures, work);
  const dated = work.dateMilestones(records.house, slips);
  const dates = new Map((dated.value ?? []).map(({ id, date }) => [id, date]));
  const problems = [...drafted.problems, ...dated.problems, ...measureProblems(records.house, records, dates)];
  if (!dated.value || problems.some((problem) => problem.severity === 'error')) return { problems };
  const { drafts, house } = priceDrafts(records, drafted.value, work);
  const milestones = dated.value;
  const decide = work.decider(records.house, milestones, on, slips);
  const selections = drafts.map(({ draft, item }) =>
    makeSelection(draft, item, house, { decide, layOut, work, issues: records.issues }),
  );
  const decisions = later(() => makeDecisions(house, selections));
  const byRoom = groupBy(selections, (selection) => selection.room);
  const found = findCautions(seeHouse(records, { measures, laid, milestones }, selections));
  const chosenOn = new Map(selections.map((each) => [each.id, each.chosenOn]));
  const accepted = acceptCautions(found, records.house, (id) => chosenOn.get(id));
  const money = makeMoney(records, house, selections, { on, agreedSum, decisions });
  const paints = paintNames(records.options, records.categories);
  const known: Omit<Book, keyof LaterParts> = {
    format: 'bookmatch/book/1',
    on,
    house: describeHouse(records.house),
    levels: records.house.levels,
    laid,
    trades: records.trades.map(describeTrade),
    categories: records.categories.map(describeCategory),
    options: records.options.map((option) => describeOption(option, records.categories, paints)),
    rooms: records.rooms.flatMap((room) => {
      const measure = measures.get(room.slug);
      return measure ? [makeRoom(room, measure, byRoom.get(room.slug) ?? [])] : [];
    }),
    selections,
    money,
    calendar: { milestones: dated.value, rules: records.house.calendar },
    cautions: accepted.cautions,
    issues: records.issues.map(describeIssue),
    changeOrders: describeChangeOrders(agreedSum, records.changes),
    sources: records.sources,
  };
  const today = { records, measures, laid, drafts, house, selections, milestones, cautions: found, decide, work };
  const book: Book = withLater<typeof known, LaterParts>(known, {
    decisions: () => decisions().map(({ decision }) => decision),
    alternatives: () => makeHouseAlternatives(today),
    orders: () => orderList(house.today, orderCounter(selections, records)),
    scope: () => findScope(records, measures, drafted.value),
    supplies: () => poolSupplies(selections.map(using)),
    schedules: () => makeSchedules(book),
  });
  const days = [...choiceDayProblems(drafts, selections, decide), ...futureProblems(records, on)];
  const pricing = [...quoteProblems(records, selections, on), ...invoiceProblems(records, money.allowances)];
  return {
    value: book,
    problems: [
      ...problems,
      ...accepted.problems,
      ...layerProblems(records.options),
      ...alikeProblems(records),
      ...days,
      ...pricing,
    ],
  };
}

/** Parts of a Book that most of what is made of it does not ask for. */
type LaterParts = Pick<Book, 'decisions' | 'alternatives' | 'orders' | 'scope' | 'supplies' | 'schedules'>;

function makeRoom(room: Records['rooms'][number], measure: RoomMeasure, own: readonly BookSelection[]): BookRoom {
  const { slug, number, name, level, use, body, viewFrom, sections } = room;
  const supplies = sumSupplies(own.map(using));
  const cost: Cost = own.length === 0 ? noCost : addCosts(own.map((selection) => selection.cost));
  return {
    slug,
    number,
    name,
    level,
    use,
    body,
    measure,
    ...(viewFrom && { viewFrom }),
    ...(sections && { sections }),
    ...(supplies.length > 0 && { supplies }),
    cost,
    selections: own.map((selection) => selection.id),
    change: own.reduce((sum, selection) => sum + selection.change, 0) as Cents,
    open: own.filter((selection) => selection.state === 'open').length,
    source: room.origin.file,
  };
}

function using({ id, trade, takeoff }: BookSelection): Parameters<typeof poolSupplies>[0][number] {
  return { selection: id, trade, takeoff };
}
