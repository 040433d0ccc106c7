import type { Book, BookSelection } from '../book/index.js';
import { optionId } from '../book/index.js';
import type { Cents } from '../units/index.js';
import type { Aspect, SelectionChange, SelectionSide } from './comparison.js';
import type { Pair } from './match.js';

/** What differs between two sides of one selection, or undefined when nothing does. `sameOption` tells whether two option
 *  slugs of a category are one product, be it renamed. */
export function compareSelections(
  { from, to }: Pair<BookSelection>,
  books: { readonly from: Book; readonly to: Book },
  sameOption: (category: string, from: string | undefined, to: string | undefined) => boolean,
): SelectionChange | undefined {
  const either = to ?? from;
  if (!either) return undefined;
  const quantities = compareQuantities(from, to);
  const aspects = findAspects(from, to, quantities.length > 0, sameOption);
  if (aspects.length === 0) return undefined;
  return {
    selection: either.id,
    placeText: either.placeText,
    category: either.category,
    trade: either.trade,
    aspects,
    ...(from && { from: describeSide(from, books.from) }),
    ...(to && { to: describeSide(to, books.to) }),
    quantities,
    cost: ((to?.cost.total ?? 0) - (from?.cost.total ?? 0)) as Cents,
    contract: ((to?.change ?? 0) - (from?.change ?? 0)) as Cents,
    pounds: (to?.pounds ?? 0) - (from?.pounds ?? 0),
  };
}

function findAspects(
  from: BookSelection | undefined,
  to: BookSelection | undefined,
  quantity: boolean,
  sameOption: (category: string, from: string | undefined, to: string | undefined) => boolean,
): Aspect[] {
  if (!from) return ['added'];
  if (!to) return ['removed'];
  const { category } = to;
  const found: [Aspect, boolean][] = [
    ['choice', !sameOption(category, from.chosen, to.chosen) || (from.state === 'none') !== (to.state === 'none')],
    ['places', placeIds(from) !== placeIds(to)],
    ['quantity', quantity],
    ['supply', from.supply !== to.supply],
    ['standard', !sameOption(category, from.standard, to.standard)],
    ['allowance', from.allowance !== to.allowance],
    ['state', from.state !== to.state],
    ['note', from.note !== to.note],
    ['cost', from.cost.total !== to.cost.total || from.change !== to.change],
    ['decide-by', from.decision.by !== to.decision.by],
  ];
  return found.filter(([, differs]) => differs).map(([aspect]) => aspect);
}

function placeIds(selection: BookSelection): string {
  return selection.places.map((place) => place.id).join(' ');
}

/** Net quantities by part that are not equal to a thousandth. */
function compareQuantities(
  from: BookSelection | undefined,
  to: BookSelection | undefined,
): SelectionChange['quantities'] {
  const before = from?.takeoff ?? [];
  const after = to?.takeoff ?? [];
  const keys = new Set([...before, ...after].map(({ part, unit }) => `${part}/${unit}`));
  return [...keys].flatMap((key) => {
    const [part = '', unit = ''] = key.split('/');
    const net = (list: typeof before) =>
      list.find((takeoff) => takeoff.part === part && takeoff.unit === unit)?.net ?? 0;
    const [a, b] = [net(before), net(after)];
    return Math.abs(a - b) < 1e-3 ? [] : [{ part, unit, from: a, to: b }];
  });
}

function describeSide(selection: BookSelection, book: Book): SelectionSide {
  const { chosen, counted, category, state, supply, cost, pounds, decision } = selection;
  const option = book.options.find((candidate) => candidate.id === optionId(category, chosen ?? counted ?? ''));
  return {
    ...(chosen !== undefined && { option: chosen }),
    optionName: state === 'open' ? 'open' : state === 'none' ? 'none' : (option?.name ?? chosen ?? ''),
    state,
    supply,
    cost: cost.total,
    ...(pounds !== undefined && { pounds }),
    leadDays: option?.leadDays ?? 0,
    decideBy: decision.by,
  };
}
