import { lookUp, type Book, type BookSelection, type LookUp, type PricedChoices } from '../book/index.js';
import { workingDays } from '../calendar/index.js';
import type { Cents } from '../../base/units/index.js';
import type { Pair } from './match.js';
import type { Aspect, SelectionChange, SelectionSide } from './room-change.js';

export interface SelectionContext {
  readonly from: Book;
  readonly to: Book;
  /** The newer rooms at the older prices, as far as they can be composed; else the newer Book. */
  readonly byChoice: PricedChoices;
  /** Are two option slugs of a category one product, be it renamed? */
  readonly sameOption: (category: string, from: string | undefined, to: string | undefined) => boolean;
}

type Priced = PricedChoices['selections'][number];

/** What differs between two sides of one selection, or undefined when nothing does. */
export type CompareSelections = (pair: Pair<BookSelection>) => SelectionChange | undefined;

/** Aspects that stand in the room's own record; the others are moved by something elsewhere. */
const ownAspects: ReadonlySet<Aspect> = new Set<Aspect>([
  'added',
  'removed',
  'choice',
  'places',
  'supply',
  'standard',
  'allowance',
  'considering',
  'state',
  'note',
]);

export function selectionComparer(context: SelectionContext): CompareSelections {
  const chosenAlone = new Map(context.byChoice.selections.map((selection) => [selection.id, selection]));
  const names = lookUp(context.to);
  const namesBefore = lookUp(context.from);
  const before = sideDescriber(namesBefore);
  const after = sideDescriber(names);
  const calendar = workingDays(context.to.calendar.rules);

  return ({ from, to }) => {
    const either = to ?? from;
    if (!either) return undefined;
    const alone = to && chosenAlone.get(to.id);
    const quantities = compareQuantities(from, to);
    const isLater = from && to && leadDaysOf(from, namesBefore) !== leadDaysOf(to, names);
    const aspects = [
      ...findAspects(from, to, alone, quantities.length > 0, context.sameOption),
      ...(isLater ? ['lead-time' as const] : []),
    ];
    const byChoice = ((alone?.change ?? 0) - (from?.change ?? 0)) as Cents;
    if (aspects.length === 0 && byChoice === 0) return undefined;
    const [was, now] = [from && before(from), to && after(to)];
    const sameThing = quantities.length === 0 && context.sameOption(either.category, from?.counted, to?.counted);
    const pounds = poundsBetween(from, to, sameThing);
    const days = (a: string | undefined, b: string | undefined): number =>
      a === undefined || b === undefined ? 0 : calendar.between(a, b);
    return {
      selection: either.id,
      placeText: either.placeText,
      category: either.category,
      categoryName: (to ? names : namesBefore).categoryName(either.category),
      trade: either.trade,
      tradeName: (to ? names : namesBefore).tradeName(either.trade),
      aspects: aspects.length === 0 ? ['cost'] : aspects,
      own:
        aspects.some((aspect) => ownAspects.has(aspect)) ||
        compareQuantities(from, alone).length > 0 ||
        differsInWaste(from, alone),
      ...(was && { from: was }),
      ...(now && { to: now }),
      quantities,
      cost: ((to?.cost.total ?? 0) - (from?.cost.total ?? 0)) as Cents,
      contract: ((to?.change ?? 0) - (from?.change ?? 0)) as Cents,
      byChoice,
      ...(pounds !== undefined && { pounds }),
      days: {
        lead: leadBetween(was, now),
        decideBy: days(was?.decideBy, now?.decideBy),
        orderBy: days(was?.orderBy, now?.orderBy),
      },
    };
  };
}

function findAspects(
  from: BookSelection | undefined,
  to: BookSelection | undefined,
  alone: Priced | undefined,
  quantity: boolean,
  sameOption: SelectionContext['sameOption'],
): Aspect[] {
  if (!from) return ['added'];
  if (!to) return ['removed'];
  const { category } = to;
  const sameConsidering =
    from.considering.length === to.considering.length &&
    from.considering.every((option, index) => sameOption(category, option, to.considering[index]));
  const found: [Aspect, boolean][] = [
    ['choice', !sameOption(category, from.chosen, to.chosen) || (from.state === 'none') !== (to.state === 'none')],
    ['places', placeIds(from) !== placeIds(to)],
    ['quantity', quantity],
    ['waste', !quantity && differsInWaste(from, alone)],
    ['supply', from.supply !== to.supply],
    ['standard', !sameOption(category, from.standard, to.standard)],
    ['allowance', from.allowance !== to.allowance],
    ['considering', !sameConsidering],
    ['state', from.state !== to.state],
    ['note', from.note !== to.note],
    ['cost', from.cost.total !== to.cost.total || from.change !== to.change],
    [
      'weight',
      Math.abs((from.pounds ?? 0) - (to.pounds ?? 0)) >= 0.05 ||
        (from.pounds === undefined) !== (to.pounds === undefined),
    ],
    ['decide-by', from.decision.by !== to.decision.by],
    ['order-by', from.decision.orderBy !== to.decision.orderBy],
  ];
  return found.filter(([, differs]) => differs).map(([aspect]) => aspect);
}

function placeIds(selection: BookSelection): string {
  return selection.places.map((place) => place.id).join(' ');
}

/** Net quantities by part that are not equal to a thousandth. */
function compareQuantities(from: Priced | undefined, to: Priced | undefined): SelectionChange['quantities'] {
  const [before, after] = [from?.takeoff ?? [], to?.takeoff ?? []];
  const keys = new Map([...before, ...after].map(({ part, unit }) => [`${part}/${unit}`, { part, unit }]));
  return [...keys.values()].flatMap(({ part, unit }) => {
    const net = (list: typeof before) =>
      list.find((takeoff) => takeoff.part === part && takeoff.unit === unit)?.net ?? 0;
    const [a, b] = [net(before), net(after)];
    return Math.abs(a - b) < 1e-3 ? [] : [{ part, unit, from: a, to: b }];
  });
}

/** The same net of the same parts, and more or less of it to buy: a place's own waste or coats changed. */
function differsInWaste(from: Priced | undefined, to: Priced | undefined): boolean {
  if (!from || !to || from.counted !== to.counted) return false;
  return from.takeoff.some((takeoff) => {
    const now = to.takeoff.find(({ part, unit }) => part === takeoff.part && unit === takeoff.unit);
    return (
      now !== undefined && Math.abs(now.net - takeoff.net) < 1e-3 && Math.abs(now.required - takeoff.required) >= 1e-3
    );
  });
}

/** Nothing counted weighs nothing; an option without a recorded weight leaves the difference unknown. */
function poundsBetween(
  from: BookSelection | undefined,
  to: BookSelection | undefined,
  sameThing: boolean,
): number | undefined {
  const weigh = (side: BookSelection | undefined) => (side?.counted === undefined ? 0 : side.pounds);
  const [before, after] = [weigh(from), weigh(to)];
  if (before === undefined && after === undefined && sameThing) return 0;
  return before === undefined || after === undefined ? undefined : after - before;
}

/** Of one product and another: against nothing none is longer. */
function leadBetween(was: SelectionSide | undefined, now: SelectionSide | undefined): number {
  const [before, after] = [was, now].map((side) => (side?.counted === undefined ? undefined : side.leadDays));
  return before === undefined || after === undefined ? 0 : after - before;
}

/** Nothing has to come where nothing is counted. */
function leadDaysOf({ category, chosen, counted }: BookSelection, names: LookUp): number | undefined {
  const option = names.option(category, chosen ?? counted);
  return option ? option.leadDays : 0;
}

/** Describes selections of one Book so that they can be read without it. */
function sideDescriber(names: LookUp): (selection: BookSelection) => SelectionSide {
  const { book } = names;
  const calendar = workingDays(book.calendar.rules);
  return (selection) => {
    const { chosen, counted, category, standard, allowance, state, note, pounds, decision } = selection;
    const leadDays = leadDaysOf(selection, names);
    const nameOf = (slug: string): string => names.option(category, slug)?.name ?? slug;
    const late = state === 'chosen' && decision.orderBy < book.on;
    return {
      ...(chosen !== undefined && { option: chosen }),
      optionName: state === 'open' ? 'open' : chosen === undefined ? 'none' : nameOf(chosen),
      ...(counted !== undefined && { counted, countedName: nameOf(counted) }),
      state,
      placeText: selection.placeText,
      supply: selection.supply,
      ...(standard !== undefined && { standardName: nameOf(standard) }),
      ...(allowance !== undefined && { allowanceName: names.allowanceName(allowance) }),
      considering: selection.considering.map(nameOf),
      ...(note !== undefined && { note }),
      quantities: selection.takeoff.map(({ part, unit, net }) => ({ part, unit, net })),
      cost: selection.cost.total,
      ...(pounds !== undefined && { pounds }),
      ...(leadDays !== undefined && { leadDays }),
      decideBy: decision.by,
      orderBy: decision.orderBy,
      orderLate: late ? calendar.between(decision.orderBy, calendar.onOrAfter(book.on)) : 0,
      milestoneName: names.milestoneName(names.category(category)?.neededAt ?? decision.milestone),
    };
  };
}
