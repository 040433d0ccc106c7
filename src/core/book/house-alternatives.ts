import { findCautions, type Caution } from '../caution/index.js';
import type { DatedMilestone, Decision } from '../calendar/index.js';
import { choicesOf, type HouseAlternative, type LaidHouse, type Records, type RoomMeasure } from '../model/index.js';
import type { HousePrice } from '../price/index.js';
import type { Cents } from '../../base/units/index.js';
import { alternativeLine, type Picked } from './alternative-line.js';
import type { BookSelection } from './book.js';
import type { AlternativeAllowance, BookHouseAlternative } from './book-alternative.js';
import { countSelection, type Counted } from './count-selection.js';
import { slugOf, withChoice, withNeighbours } from './draft.js';
import type { Work } from './kept-work.js';
import { lastMilestone, type Decider } from './make-decider.js';
import { movesNeighbours } from './neighbours.js';
import { houseMoney } from './price-choices.js';
import { priceDrafts, type PricedDraft } from './price-drafts.js';
import { seeHouse, type SeenSelection } from './see-house.js';
import { weigh } from './weigh.js';

/** The house as it stands, beside which alternatives are held. */
export interface HouseToday {
  readonly records: Records;
  readonly measures: ReadonlyMap<string, RoomMeasure>;
  readonly laid: LaidHouse;
  readonly drafts: readonly PricedDraft[];
  readonly house: HousePrice;
  /** In the order of the drafts. */
  readonly selections: readonly BookSelection[];
  readonly milestones: readonly DatedMilestone[];
  readonly cautions: readonly Caution[];
  readonly decide: Decider;
  readonly work: Work;
}

/** A place today, and what is counted there with an alternative. */
interface Place {
  readonly before: PricedDraft;
  readonly selection: BookSelection;
  readonly after: PricedDraft;
  readonly then: Counted;
}

type HouseMoney = ReturnType<typeof houseMoney>;

/** Each alternative with the whole house computed for it: priced, weighed, dated and looked over as the house itself is. */
export function makeHouseAlternatives(today: HouseToday): readonly BookHouseAlternative[] {
  if (today.records.alternatives.length === 0) return [];
  const moneyToday = houseMoney(today.house, today.selections);
  return today.records.alternatives.map((alternative) => makeAlternative(alternative, today, moneyToday));
}

function makeAlternative(
  { origin, throughout, choices, ...alternative }: HouseAlternative,
  today: HouseToday,
  moneyToday: HouseMoney,
): BookHouseAlternative {
  const picks = withRest(choicesOf({ throughout, choices }, today.records.rooms), today);
  const { house, places } = choose(picks, today);
  const money = houseMoney(
    house,
    places.map(({ then }) => then),
  );
  const lines = places.flatMap(({ before: { draft }, selection, then }) => {
    const picked = picks.get(draft.id);
    return picked ? [alternativeLine(picked, { draft, selection, then }, today.decide)] : [];
  });
  const decisions = lines.flatMap(({ line }) => line.decision ?? []);
  return {
    ...alternative,
    total: money.today,
    lines: lines.map(({ line }) => line),
    ...compareMoney(
      money,
      moneyToday,
      lines.map(({ line }) => line),
    ),
    open: places.filter(({ after }) => !after.item.decided).length,
    ...daysOf(decisions, today),
    pounds: sum(lines.map(({ pounds }) => pounds)),
    poundsToday: sum(lines.map(({ poundsToday }) => poundsToday)),
    ...compareCautions(places, today),
    source: origin.file,
  };
}

/** What a set chooses, and where it chooses on an allowance, how what else is open on that one stands meanwhile. */
function withRest(chosen: ReadonlyMap<string, string>, { house, drafts }: HouseToday): ReadonlyMap<string, Picked> {
  const picks = new Map([...chosen].map(([id, option]) => [id, { option, isRest: false }]));
  const moved = drafts.filter(({ draft: { id, selection } }) => chosen.has(id) && chosen.get(id) !== selection.chosen);
  const drawnOn = new Set(moved.flatMap(({ item }) => item.allowance ?? []));
  const rest = [...drawnOn].flatMap((id) => house.choices.restOn(id));
  for (const { item, stand } of rest) {
    const option = stand.option === undefined ? undefined : slugOf(stand.option, item.category);
    if (option !== undefined && !picks.has(item.selection)) picks.set(item.selection, { option, isRest: true });
  }
  return picks;
}

/** The house with what is picked chosen in it. */
function choose(
  picks: ReadonlyMap<string, Picked>,
  { records, measures, drafts, selections, work }: HouseToday,
): { readonly house: HousePrice; readonly places: readonly Place[] } {
  const chosen = drafts.map(({ draft }) => {
    const picked = picks.get(draft.id);
    const isSame = picked === undefined || picked.option === draft.selection.chosen;
    return isSame ? draft : withChoice(draft, picked.option, records.options);
  });
  const isMoved = chosen.some(({ category, selection }, index) => {
    const before = drafts[index]?.draft.selection;
    return before !== undefined && movesNeighbours(category, before, selection);
  });
  const moved = isMoved ? withNeighbours(chosen, records, measures) : chosen;
  const { drafts: priced, house } = priceDrafts(records, moved, work);
  const places = priced.flatMap((after, index): readonly Place[] => {
    const [before, selection] = [drafts[index], selections[index]];
    return before && selection
      ? [{ before, selection, after, then: countSelection(after.draft, after.item, house) }]
      : [];
  });
  return { house, places };
}

/** Where the difference to today's total comes from. */
function compareMoney(
  money: HouseMoney,
  today: HouseMoney,
  lines: BookHouseAlternative['lines'],
): Pick<BookHouseAlternative, 'change' | 'allowances' | 'elsewhere' | 'onNet'> {
  const allowances = money.allowances.flatMap(({ id, committed, balance, change }, index): AlternativeAllowance[] => {
    const before = today.allowances[index];
    const moved = (change - (before?.change ?? 0)) as Cents;
    return moved === 0 && committed === before?.committed ? [] : [{ id, committed, left: balance, change: moved }];
  });
  const change = (money.today - today.today) as Cents;
  const onNet = {
    markup: (money.onNet.markup - today.onNet.markup) as Cents,
    fee: (money.onNet.fee - today.onNet.fee) as Cents,
  };
  const told = sum([...lines, ...allowances].map((each) => each.change)) + onNet.markup + onNet.fee;
  return { change, allowances, onNet, elsewhere: (change - told) as Cents };
}

/** When the first of it must be decided, and what is moved where that day is past. */
function daysOf(
  decisions: readonly Decision[],
  { milestones, records }: HouseToday,
): Pick<BookHouseAlternative, 'decideBy' | 'slack' | 'late' | 'endMoves' | 'delayCost'> {
  const [first] = decisions.toSorted((a, b) => a.slack - b.slack);
  const end = lastMilestone(milestones)?.id;
  const moves = decisions.flatMap((decision) => (decision.moves ?? []).filter(({ id }) => id === end));
  const endMoves = Math.max(0, ...moves.map(({ days }) => days));
  const { dayCost } = records.house.contract;
  return {
    ...(first && { decideBy: first.by, slack: first.slack }),
    late: decisions.filter(({ state }) => state === 'late').length,
    endMoves,
    ...(dayCost !== undefined && endMoves > 0 && { delayCost: (dayCost * endMoves) as Cents }),
  };
}

/** What is seen with it and was not before, and the other way around. */
function compareCautions(
  places: readonly Place[],
  { records, measures, laid, milestones, cautions: before }: HouseToday,
): Pick<BookHouseAlternative, 'cautions' | 'cautionsGone'> {
  const seen = findCautions(seeHouse(records, { measures, laid, milestones }, places.map(seePlace)));
  const [idsThen, idsBefore] = [seen, before].map((cautions) => new Set(cautions.map(({ id }) => id)));
  return {
    cautions: seen.filter(({ id }) => !idsBefore?.has(id)),
    cautionsGone: before.flatMap(({ id }) => (idsThen?.has(id) ? [] : id)),
  };
}

/** A selection as the rules of caution see it with the alternative. */
function seePlace({ before, after, selection, then: { product } }: Place): SeenSelection {
  const { chosen } = after.draft.selection;
  if (after.draft === before.draft) return selection;
  const { id, room, category, placeText, places, considering } = selection;
  const place = { id, room, category, placeText, places, considering };
  if (!product || chosen === undefined) return { ...place, state: 'none' };
  const pounds = weigh(product.option, product.takeoffs);
  return { ...place, state: 'chosen', counted: product.slug, chosen, ...(pounds !== undefined && { pounds }) };
}

function sum(amounts: readonly number[]): number {
  return amounts.reduce((total, amount) => total + amount, 0);
}
