import { byText, later, once, withLater } from '../../base/units/index.js';
import type { HousePrice, Item, Stand } from '../price/index.js';
import type { BookSelection, JointDecision, PickedOption } from './book.js';
import { optionId } from './draft.js';
import { groupBy } from './group-by.js';

/** A decision with what pricing knows of it: its lines in order, and how they stand at the cheapest and the dearest. What is asked of none is not
 *  priced: a page shows few of them. */
export interface PricedDecision extends Stands {
  readonly decision: JointDecision;
  readonly lines: readonly Item[];
}

interface Stands {
  readonly lowest: readonly Stand[];
  readonly likely: readonly Stand[];
  readonly highest: readonly Stand[];
}

/** The open choices whose money moves together, each group as one decision, in the order they are due. What draws on one
 *  allowance is one decision, whatever the days: what one takes, the others no longer have. Beside allowances, choices of one
 *  category that are due on one day and may share an order are one; any other is its own. */
export function makeDecisions(house: HousePrice, selections: readonly BookSelection[]): readonly PricedDecision[] {
  const open = selections.filter(({ state }) => state === 'open');
  const byId = new Map(open.map((selection) => [selection.id, selection]));
  const items = house.items.filter(({ selection }) => byId.has(selection));
  const groups = [...groupBy(items, (item) => roughly(item, byId)).values()];
  return groups
    .flatMap((lines) => (house.choices.on(lines[0]?.allowance ?? '').length > 0 ? [lines] : sharing(lines)))
    .map((lines) => decide(lines, house, byId))
    .sort(({ decision: a }, { decision: b }) => byText(a.by, b.by));
}

/** What cannot be one decision has another key. */
function roughly({ allowance, category, supply, selection }: Item, byId: ReadonlyMap<string, BookSelection>): string {
  if (allowance !== undefined) return `on ${allowance}`;
  return [category, supply, byId.get(selection)?.decision.by].join(' ');
}

/** Splits lines into those that may take the same product, directly or by way of others. */
function sharing(lines: readonly Item[]): readonly (readonly Item[])[] {
  const groups: { products: Set<string>; lines: Item[] }[] = [];
  for (const line of lines) {
    const own = [...line.considered, ...(line.standard === undefined ? [] : [line.standard])];
    const joined = groups.filter(({ products }) => own.some((product) => products.has(product)));
    const all = { products: new Set(own), lines: [line] };
    for (const group of joined) {
      group.products.forEach((product) => all.products.add(product));
      all.lines.unshift(...group.lines);
      groups.splice(groups.indexOf(group), 1);
    }
    groups.push(all);
  }
  const order = new Map(lines.map((line, index) => [line, index]));
  return groups.map((group) => group.lines.sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0)));
}

function decide(lines: readonly Item[], house: HousePrice, byId: ReadonlyMap<string, BookSelection>): PricedDecision {
  const { choices } = house;
  const usual = once(() => lines.map((line) => usualStand(line, house)));
  const found = later(() => choices.extremes(lines, [usual()]));
  const [first] = lines;
  const likely = (): readonly Stand[] => {
    if (first?.allowance === undefined) return usual();
    const { lowest, highest, high } = found();
    const spent = lowest.map((stand) => ({ ...stand, decided: false }));
    return choices.together(lines).change(spent) <= high ? spent : highest;
  };
  const members = lines
    .flatMap((line) => {
      const selection = byId.get(line.selection);
      return selection ? [{ line, selection }] : [];
    })
    .sort(({ selection: a }, { selection: b }) => byText(a.decision.by, b.decision.by));
  const known = {
    id: members[0]?.selection.id ?? '',
    ...(first?.allowance !== undefined && { allowance: first.allowance }),
    by: members[0]?.selection.decision.by ?? '',
    choices: members.map(({ line, selection }) =>
      withLater<{ readonly selection: string }, Pick<JointChoice, 'options'>>(
        { selection: selection.id },
        { options: () => optionsOf(selection, line, { lines, choices }) },
      ),
    ),
  };
  const decision = withLater<typeof known, Pick<JointDecision, 'low' | 'high' | 'priced'>>(known, {
    low: () => ({ change: found().low, options: picked(lines, found().lowest) }),
    high: () => ({ change: found().high, options: picked(lines, found().highest) }),
    priced: () => found().priced,
  });
  return withLater<Pick<PricedDecision, 'decision' | 'lines'>, Stands>(
    { decision, lines },
    { lowest: () => found().lowest, likely, highest: () => found().highest },
  );
}

type JointChoice = JointDecision['choices'][number];

function optionsOf(
  { alternatives }: BookSelection,
  line: Item,
  { lines, choices }: Pick<HousePrice, 'choices'> & Pick<PricedDecision, 'lines'>,
): JointChoice['options'] {
  return alternatives
    .filter(({ option }) => line.considered.includes(optionId(line.category, option)))
    .map(({ option, againstToday }) => ({
      option,
      change: againstToday,
      ...(lines.length > 1 && { range: choices.range(line, optionId(line.category, option), lines) }),
    }));
}

/** The standard where it is considered, else the middle one by price: what stands if nobody has taste. */
function usualStand(line: Item, { choices, today }: HousePrice): Stand {
  const { standard, considered } = line;
  const option = standard !== undefined && considered.includes(standard) ? standard : choices.middle(line);
  return option === undefined
    ? { option: today.counted.get(line.selection), decided: false }
    : { option, decided: true };
}

export function picked(lines: readonly Item[], stands: readonly Stand[]): readonly PickedOption[] {
  return lines.map(({ selection }, index) => {
    const option = stands[index]?.option;
    return { selection, ...(option !== undefined && { option }) };
  });
}
