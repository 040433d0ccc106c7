import { printWorkingDays } from '../calendar/index.js';
import {
  counted,
  printArea,
  printLength,
  type Cents,
  type Length,
  type Area,
  printQuantity,
  printSize,
  unitName,
} from '../../base/units/index.js';
import type { Comparison, MoneyChange } from './comparison.js';
import type { Quantity, Aspect, MeasureChange, RoomChange, SelectionChange, SelectionSide } from './room-change.js';

/** What stands at a place: 'Oak strip', 'none', 'open, standard Oak strip counted', 'Pine strip, owner-furnished'. */
export function sideWords(side: SelectionSide | undefined): string {
  if (!side) return 'not there';
  const { state, optionName, countedName, supply } = side;
  const name =
    state === 'open' ? `open${countedName === undefined ? '' : `, standard ${countedName} counted`}` : optionName;
  return supply === 'owner-furnished' ? `${name}, owner-furnished` : name;
}

/** `120 sq ft`, `flats 64.5 sq ft and corners 18 lin ft`. */
export function quantityWords(quantities: readonly Quantity[]): string {
  return quantities
    .map(({ part, unit, net }) => `${part === 'main' ? '' : `${part} `}${printQuantity(net, unit)}`)
    .join(' and ');
}

/** The quantity of a changed selection: `120 → 130 sq ft` where it differs, else what there is. */
export function quantityChangeWords({ quantities, from, to }: SelectionChange): string {
  if (quantities.length === 0) return quantityWords(to?.quantities ?? from?.quantities ?? []);
  return quantities
    .map((quantity) => {
      const part = quantity.part === 'main' ? '' : `${quantity.part} `;
      return `${part}${printSize(quantity.from, quantity.unit)} → ${printQuantity(quantity.to, quantity.unit)}`;
    })
    .join(', ');
}

/** Both sides of the quantities that differ: `120 sq ft` and `130 sq ft`; undefined where none does. */
export function quantitySides({
  quantities,
}: Pick<SelectionChange, 'quantities'>): { readonly from: string; readonly to: string } | undefined {
  if (quantities.length === 0) return undefined;
  const side = (which: 'from' | 'to'): string =>
    quantityWords(quantities.map(({ part, unit, [which]: net }) => ({ part, unit, net })));
  return { from: side('from'), to: side('to') };
}

const aspectNames: Readonly<Record<Aspect, string>> = {
  added: 'new',
  removed: 'taken out',
  choice: 'choice',
  places: 'places',
  quantity: 'quantity',
  waste: 'waste or coats',
  supply: 'who supplies',
  standard: 'standard',
  allowance: 'allowance',
  considering: 'what is considered',
  state: 'state',
  note: 'note',
  cost: 'cost',
  weight: 'weight',
  'lead-time': 'lead time',
  'decide-by': 'decide-by day',
  'order-by': 'order-by day',
};

/** What differs, in words, as the record says it; what follows from it (cost, weight, days) is left to its own figures. */
export function aspectWords({ aspects, own }: SelectionChange): string {
  const follows: readonly Aspect[] = ['cost', 'weight', 'lead-time', 'decide-by', 'order-by'];
  const told = own ? aspects.filter((aspect) => !follows.includes(aspect)) : aspects;
  return (told.length === 0 ? aspects : told).map((aspect) => aspectNames[aspect]).join(', ');
}

/** One side of a measure: `120 sq ft`, `9'-0"`. */
export function measureWords(measure: MeasureChange, side: 'from' | 'to'): string {
  if (measure.unit === 'sq ft') return measure[side] === undefined ? 'not there' : printArea(measure[side]);
  return measure[side] === undefined ? 'not there' : printLength(measure[side]);
}

/** `+10 sq ft`, `−1'-0"`. */
export function measureDifference(measure: MeasureChange): string {
  const { difference, unit } = measure;
  const sign = difference > 0 ? '+' : '−';
  const size = Math.abs(difference);
  return `${sign}${unit === 'sq ft' ? printArea(size as Area) : printLength(size as Length)}`;
}

/** `+312 lb`, `no change`, `not recorded`. */
export function poundsWords(pounds: number | undefined): string {
  if (pounds === undefined) return 'not recorded';
  const whole = printSize(Math.abs(pounds), 'lb', 0);
  return whole === '0' ? 'no change' : `${pounds > 0 ? '+' : '−'}${whole} ${unitName('lb')}`;
}

/** `3 working days later`, `1 working day earlier`, `no working day apart`. */
export function laterWords(days: number): string {
  if (days === 0) return 'no working day apart';
  return `${printWorkingDays(days)} ${days > 0 ? 'later' : 'earlier'}`;
}

/** `20 working days longer`. */
export function leadWords(days: number): string {
  return `${printWorkingDays(days)} ${days > 0 ? 'longer' : 'shorter'}`;
}

/** Where the difference comes from, in words; parts that are nothing are left out. They add up to the difference. */
export function moneyParts({ money }: Comparison): readonly { readonly what: string; readonly amount: Cents }[] {
  const { together } = money;
  const withTerms = together === 'choices-and-terms' ? ', the contract’s new terms with them' : '';
  const all = together === 'everything' ? ', new prices and terms with them' : withTerms;
  const parts: readonly { readonly what: string; readonly amount: Cents }[] = [
    { what: `Choices${all}`, amount: money.choices },
    { what: `Allowances drawn otherwise${all}`, amount: money.allowances },
    { what: `Whole packs and freight shared with other places${all}`, amount: money.sharedPacks },
    {
      what: together === 'terms-and-prices' ? 'Price book and terms of the contract' : 'Price book',
      amount: (money.priceBook - money.sharedBook) as Cents,
    },
    { what: 'Shared price book', amount: money.sharedBook },
    { what: 'Terms of the contract', amount: money.terms },
    { what: 'Contract sum', amount: money.contractSum },
    { what: 'Mark-up on the net of additions and deductions', amount: money.markup },
    { what: 'Contractor’s fee', amount: money.fee },
  ];
  return parts.filter(({ amount }) => amount !== 0);
}

/** Why money could not be split further, when it could not. */
export function togetherWords(together: MoneyChange['together']): string | undefined {
  if (together === 'nothing') return undefined;
  const what = {
    'terms-and-prices': 'New prices and new terms',
    'choices-and-terms': 'Choices and new terms',
    everything: 'Choices, new terms and new prices',
  }[together];
  return (
    `${what} cannot be told apart: the newer rooms use something that the older records do not have. ` +
    'The sum is what the whole house differs by; single lines may hold a part that is another line’s.'
  );
}

/** Measures worth telling aloud: a wall's own only when the walls together stay the same. */
export function mainMeasures(measures: readonly MeasureChange[]): readonly MeasureChange[] {
  const whole = measures.filter(({ wall }) => wall === undefined);
  return whole.length > 0 ? whole : measures;
}

/** Selections that their rooms' records did not change, by product: one line for all its places, those
 *  that move the contract most first. */
export function movedByProduct(rooms: readonly RoomChange[]): readonly MovedProduct[] {
  const moved = new Map<string, MovedProduct>();
  for (const { own, to, from, cost, contract, category, categoryName } of rooms.flatMap((room) => room.selections)) {
    if (own || (cost === 0 && contract === 0)) continue;
    const side = to ?? from;
    const product = side?.countedName ?? side?.optionName ?? '';
    const before = moved.get(`${category} ${product}`);
    moved.set(`${category} ${product}`, {
      product,
      categoryName,
      places: (before?.places ?? 0) + 1,
      cost: ((before?.cost ?? 0) + cost) as Cents,
      contract: ((before?.contract ?? 0) + contract) as Cents,
    });
  }
  const size = ({ contract, cost }: MovedProduct): number => Math.abs(contract) * 1e9 + Math.abs(cost);
  return [...moved.values()].sort((a, b) => size(b) - size(a));
}

export interface MovedProduct {
  readonly product: string;
  readonly categoryName: string;
  readonly places: number;
  readonly cost: Cents;
  readonly contract: Cents;
}

/** Has the room more to tell than what prices or dates elsewhere moved in it? */
export function isTold({ kind, renamedFrom, fields, measures, parts, drawings, selections }: RoomChange): boolean {
  const lists = [fields, measures, parts, drawings, selections.filter(({ own }) => own)];
  return kind !== 'kept' || renamedFrom !== undefined || lists.some((list) => list.length > 0);
}

/** `new room`, `2 choices, 3 quantities, shape`. */
export function roomWords({ kind, renamedFrom, fields, measures, parts, selections }: RoomChange): string {
  const own = selections.filter((selection) => selection.own);
  const chosen = own.filter(({ aspects }) => aspects.some((aspect) => ['choice', 'added', 'removed'].includes(aspect)));
  const others = own.length - chosen.length;
  const words = [
    ...(kind === 'kept' ? [] : [kind === 'added' ? 'new room' : 'room taken out']),
    ...(renamedFrom === undefined ? [] : [`was ${renamedFrom}`]),
    ...(chosen.length === 0 ? [] : [counted(chosen.length, 'choice')]),
    ...(others === 0 ? [] : [counted(others, 'other selection')]),
    ...(measures.length + parts.length === 0 || kind !== 'kept' ? [] : ['shape']),
    ...(fields.length === 0 ? [] : fields.map(({ field }) => field)),
  ];
  return words.length === 0 ? 'drawings' : words.join(', ');
}

/** How the days of a selection move: `decide by 5 working days later` while it is open, else `order by …`. */
export function daysWords({ days, to }: SelectionChange): string {
  const [what, moved] = to?.state === 'open' ? ['decide', days.decideBy] : ['order', days.orderBy];
  return moved === 0 ? '' : `${what} by ${laterWords(moved)}`;
}

/** The change of a room's weight: `+312 lb`, `+312 lb, 2 selections not recorded`. */
export function roomPoundsWords({ pounds, unweighed }: RoomChange): string {
  if (unweighed === 0) return poundsWords(pounds);
  const missing = `${counted(unweighed, 'selection')} not recorded`;
  return Math.abs(pounds) < 0.5 ? missing : `${poundsWords(pounds)}, ${missing}`;
}
