import { acceptCautions, findCautions } from '../caution/index.js';
import { dateMilestones, decide, workingDays } from '../calendar/index.js';
import type { DatedMilestone, Slips } from '../calendar/index.js';
import type { Records, RoomMeasure } from '../model/index.js';
import type { Outcome } from '../problem/index.js';
import { addCosts, noCost, priceHouse } from '../price/index.js';
import type { Cost, HousePrice, Item } from '../price/index.js';
import type { Cents, IsoDate } from '../units/index.js';
import type { Book, BookRoom, BookSelection } from './book.js';
import {
  describeCategory,
  describeChangeOrders,
  describeHouse,
  describeIssue,
  describeOption,
  describeTrade,
} from './describe.js';
import { draftSelections, optionId } from './draft.js';
import type { Draft } from './draft.js';
import { groupBy } from './group-by.js';
import { makeMoney } from './make-money.js';
import { makeSelection } from './make-selection.js';
import type { Decider } from './make-selection.js';
import { withStock } from './order-stock.js';
import { seeHouse } from './see-house.js';
import { sizeAllowance } from './size-allowance.js';

/** Composes the Book: everything computed for a house on one day. The same records and day give the same Book.
 *  Problems are located in the records; with an error among them there is no Book. `slips` asks what would be if
 *  milestones came later than recorded. */
export function makeBook(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  on: IsoDate,
  slips?: Slips,
): Outcome<Book> {
  const drafted = draftSelections(records, measures);
  const dated = dateMilestones(records.house, slips);
  const problems = [...drafted.problems, ...dated.problems];
  if (!dated.value || problems.some((problem) => problem.severity === 'error')) return { problems };
  const drafts = drafted.value.map((draft) => ({ draft, item: makeItem(draft) }));
  const house = priceDrafts(records, drafts);
  const decider = makeDecider(records, dated.value, on);
  const selections = drafts.map(({ draft, item }) => makeSelection(draft, item, house, decider));
  const byRoom = groupBy(selections, (selection) => selection.room);
  const found = findCautions(seeHouse(records, measures, selections, dated.value));
  const days = new Map(selections.map(({ id, chosenOn }) => [id, chosenOn]));
  const accepted = acceptCautions(found, records.house, (id) => days.get(id));
  const book: Book = {
    format: 'bookmatch/book/1',
    on,
    house: describeHouse(records.house),
    levels: records.house.levels,
    trades: records.trades.map(describeTrade),
    categories: records.categories.map(describeCategory),
    options: records.options.map((option) => describeOption(option, records.categories)),
    rooms: records.rooms.flatMap((room) => {
      const measure = measures.get(room.slug);
      return measure ? [makeRoom(room, measure, byRoom.get(room.slug) ?? [])] : [];
    }),
    selections,
    orders: withStock([...house.today.pools.values()].flatMap((pool) => pool.orders).sort(byOption), selections),
    money: makeMoney(records, house, selections),
    calendar: { milestones: dated.value, rules: records.house.calendar },
    cautions: accepted.cautions,
    scope: { buildUps: [], findings: [] },
    issues: records.issues.map(describeIssue),
    changeOrders: describeChangeOrders(records.house.contract.sum, records.changes),
    sources: records.sources,
  };
  return { value: book, problems: [...problems, ...accepted.problems] };
}

function priceDrafts(records: Records, drafts: readonly { readonly draft: Draft; readonly item: Item }[]): HousePrice {
  const options = new Map(records.options.map((option) => [optionId(option.category, option.slug), option]));
  const onAllowance = groupBy(
    drafts.map(({ draft }) => draft),
    ({ selection }) => selection.allowance ?? '',
  );
  const allowances = records.house.allowances.map((each) => sizeAllowance(each, onAllowance.get(each.id) ?? []));
  const items = drafts.map(({ item }) => item);
  return priceHouse(items, allowances, { contract: records.house.contract, options });
}

function makeItem({ id, room, selection, category, options }: Draft): Item {
  const { standard, allowance, chosen, supply } = selection;
  return {
    selection: id,
    room: room.slug,
    category: category.slug,
    trade: category.trade,
    supply,
    decided: chosen !== undefined,
    ...(allowance !== undefined && { allowance }),
    ...(standard !== undefined && { standard: optionId(category.slug, standard) }),
    ...(chosen !== undefined && chosen !== 'none' && { chosen: optionId(category.slug, chosen) }),
    takeoffs: new Map([...options].map(([slug, { takeoffs }]) => [optionId(category.slug, slug), takeoffs])),
  };
}

function makeDecider(records: Records, milestones: readonly DatedMilestone[], on: IsoDate): Decider {
  const calendar = workingDays(records.house.calendar);
  return (input) => decide(input, milestones, calendar, on);
}

function makeRoom(room: Records['rooms'][number], measure: RoomMeasure, own: readonly BookSelection[]): BookRoom {
  const { slug, number, name, level, use, body } = room;
  const cost: Cost = own.length === 0 ? noCost : addCosts(own.map((selection) => selection.cost));
  return {
    slug,
    number,
    name,
    level,
    use,
    body,
    measure,
    cost,
    selections: own.map((selection) => selection.id),
    change: own.reduce((sum, selection) => sum + selection.change, 0) as Cents,
    open: own.filter((selection) => selection.state === 'open').length,
    source: room.origin.file,
  };
}

function byOption(a: { option: string; part: string }, b: { option: string; part: string }): number {
  return a.option === b.option ? 0 : a.option < b.option ? -1 : 1;
}
