import { printMoney, type Cents, type IsoDate } from '../../base/units/index.js';
import type { Netted } from '../model/index.js';
import { nettedText } from '../price/index.js';
import type { AllowanceChange, Comparison } from './comparison.js';
import type { Aspect, RoomChange, SelectionChange } from './room-change.js';
import {
  mainMeasures,
  measureDifference,
  measureWords,
  quantityChangeWords,
  sideWords,
  togetherWords,
} from './words.js';

/** The lines of a change order, not yet a record. Plain JSON. */
export interface Draft {
  readonly title: string;
  /** In the order of the rooms, then what belongs to no room. Their money adds up to `money` to the cent. */
  readonly lines: readonly DraftLine[];
  /** Total of the newer side less total of the older. */
  readonly money: Cents;
  /** What mark-up on the net is figured on, and that mark-up; absent where the contract has it on each line. */
  readonly netted?: Netted;
  readonly days: DraftDays;
  /** Slugs of the trades whose work changes. */
  readonly trades: readonly string[];
  /** Given when choices, terms and prices could not be told apart: which lines hold more than they say. */
  readonly note?: string;
}

export interface DraftLine {
  readonly kind:
    | 'selection'
    | 'shape'
    | 'allowance'
    | 'mark-up'
    | 'shared-packs'
    | 'price-book'
    | 'terms'
    | 'contract-sum'
    | 'net-mark-up'
    | 'fee';
  /** Slug on the newer side, or on the older when the room is gone; absent when the line belongs to no room. */
  readonly room?: string;
  /** `101 Study`. */
  readonly roomTitle?: string;
  readonly selection?: string;
  /** The term of the contract that it changes. */
  readonly term?: string;
  readonly what: string;
  readonly from: string;
  readonly to: string;
  /** In words, with its unit; empty when the line has none. */
  readonly quantity: string;
  readonly money: Cents;
}

/** What the change does to the calendar. The change order's own days are the builder's to say. */
export interface DraftDays {
  readonly milestones: readonly {
    readonly name: string;
    readonly from: IsoDate;
    readonly to: IsoDate;
    /** Working days later, negative when earlier. */
    readonly days: number;
  }[];
  /** Changed choices whose last day to order is past: what waits for them waits so many working days. */
  readonly late: readonly {
    readonly room: string;
    readonly what: string;
    readonly milestone: string;
    readonly days: number;
  }[];
  /** The most working days of both; 0 when nothing moves. */
  readonly most: number;
}

/** What a draft is to tell beside what the contract needs. */
export interface DraftWish {
  /** Choices of the standard that the contract has already, too. */
  readonly standards?: boolean;
}

/** Drafts the lines of a change order. A changed choice is a line even when it costs nothing, unless it restates the standard. What packs shared with other
 *  places, allowances, mark-up on them, prices and terms move are lines of their own. */
export function draftLines(comparison: Comparison, { standards = false }: DraftWish = {}): Draft {
  const { rooms, money, trades, rules } = comparison;
  const note = togetherWords(money.together);
  return {
    title: titleOf(comparison),
    lines: [
      ...rooms.flatMap((room) => [...shapeLines(room), ...selectionLines(room, standards)]),
      ...comparison.allowances.flatMap((change) => [...amountLines(change, comparison), ...allowanceLines(change)]),
      ...remainders(comparison),
    ],
    money: money.difference,
    ...(rules.markupOn === 'net' && { netted: { ...money.netChange, markup: money.markup } }),
    days: daysOf(comparison),
    trades: trades.map(({ trade }) => trade),
    ...(note !== undefined && { note }),
  };
}

function titleOf({ rooms, contract }: Comparison): string {
  const changed = rooms.filter((room) => shapeLines(room).length > 0 || selectionLines(room).length > 0);
  const [first] = changed;
  if (!first) return contract.map(({ what }) => what).join(', ') || 'No change in any room';
  const what = [...new Set(changed.flatMap((room) => drafted(room).map(({ categoryName }) => categoryName)))];
  const shape = changed.some((room) => shapeLines(room).length > 0) ? ['shape'] : [];
  const words = [...what, ...shape];
  const some = words.length > 3 ? [...words.slice(0, 2), `${words.length - 2} more`] : words;
  const where = changed.length === 1 ? `${first.number} ${first.name}` : `${changed.length} rooms`;
  return `${where}: ${some.join(', ')}`;
}

/** A change of state alone (ordered, installed) or of what is considered asks nothing of the contract. */
const silent: ReadonlySet<Aspect> = new Set<Aspect>([
  'state',
  'considering',
  'cost',
  'weight',
  'lead-time',
  'decide-by',
  'order-by',
]);

function drafted({ selections }: RoomChange, standards = false): SelectionChange[] {
  return selections.filter(
    (change) =>
      change.own &&
      (change.byChoice !== 0 || change.aspects.some((aspect) => !silent.has(aspect))) &&
      (standards || !restatesStandard(change)),
  );
}

/** The standard, counted while it was open, is now chosen at no change: the contract has it already. */
function restatesStandard({ aspects, byChoice, from, to }: SelectionChange): boolean {
  const only = aspects.every((aspect) => aspect === 'choice' || silent.has(aspect));
  const opens = from?.state === 'open' || to?.state === 'open';
  return only && opens && byChoice === 0 && from?.counted !== undefined && from.counted === to?.counted;
}

function selectionLines(room: RoomChange, standards = false): DraftLine[] {
  return drafted(room, standards).map((change) => {
    const { selection, placeText, categoryName, from, to, byChoice } = change;
    const drawnOn = to?.allowanceName ?? from?.allowanceName;
    const [was, now] = [sideWords(from), sideWords(to)];
    return {
      kind: 'selection',
      ...placed(room),
      selection,
      what: [
        `${placeText}, ${categoryName.toLowerCase()}`,
        ...(was === now ? [whatElse(change)] : []),
        ...(drawnOn === undefined ? [] : [`drawn on ${drawnOn}`]),
      ].join('; '),
      from: was,
      to: now,
      quantity: quantityChangeWords(change),
      money: byChoice,
    };
  });
}

function placed({ room, number, name }: RoomChange): { readonly room: string; readonly roomTitle: string } {
  return { room, roomTitle: `${number} ${name}` };
}

/** What changed when the product did not. */
function whatElse({ aspects, from, to }: SelectionChange): string {
  const words: Partial<Record<Aspect, string>> = {
    places: `places: ${from?.placeText ?? ''} → ${to?.placeText ?? ''}`,
    quantity: 'quantity',
    waste: 'waste or coats',
    standard: `standard: ${from?.standardName ?? 'none'} → ${to?.standardName ?? 'none'}`,
    allowance: `allowance: ${from?.allowanceName ?? 'none'} → ${to?.allowanceName ?? 'none'}`,
    note: `note: ${to?.note ?? 'taken out'}`,
  };
  return aspects.flatMap((aspect) => words[aspect] ?? []).join('; ') || 'decided anew';
}

/** Framing, openings and features have no price in the book: their lines say what changes, and nothing of money. */
function shapeLines(room: RoomChange): DraftLine[] {
  const nothing = 0 as Cents;
  const from = (text: string | undefined): string => text ?? 'not there';
  return [
    ...(room.kind === 'kept'
      ? mainMeasures(room.measures).map((measure) => ({
          kind: 'shape' as const,
          ...placed(room),
          what: `${measure.what}; only finishes are priced`,
          from: measureWords(measure, 'from'),
          to: measureWords(measure, 'to'),
          quantity: measureDifference(measure),
          money: nothing,
        }))
      : [
          {
            kind: 'shape' as const,
            ...placed(room),
            what: `Room ${room.kind === 'added' ? 'added' : 'taken out'}; only finishes are priced`,
            from: room.kind === 'added' ? 'not there' : 'there',
            to: room.kind === 'added' ? 'there' : 'not there',
            quantity: '',
            money: nothing,
          },
        ]),
    ...room.parts.map((part) => ({
      kind: 'shape' as const,
      ...placed(room),
      what: `${part.name}; only finishes are priced`,
      from: from(part.from),
      to: from(part.to),
      quantity: '',
      money: nothing,
    })),
  ];
}

/** An allowance at a rate holds more where more is measured on it, though nobody wrote a term of the contract anew. What that does to the total is in other
 *  lines. */
function amountLines({ allowance, name, fields }: AllowanceChange, { contract }: Comparison): DraftLine[] {
  const amount = fields.find(({ field }) => field === 'amount');
  if (!amount || contract.some(({ term }) => term.startsWith(`allowances.${allowance}.`))) return [];
  const { from, to } = amount;
  const what = `Allowance ${name}: what it holds, by what is measured on it`;
  return [{ kind: 'allowance', what, from, to, quantity: '', money: 0 as Cents }];
}

function allowanceLines({ name, byChoice, drawn }: AllowanceChange): DraftLine[] {
  const { overOrUnder, markup } = byChoice;
  const sides = { from: `${printMoney(drawn.from)} drawn`, to: `${printMoney(drawn.to)} drawn`, quantity: '' };
  return [
    ...(overOrUnder === 0
      ? []
      : [
          {
            kind: 'allowance' as const,
            what: `Allowance ${name}: what lies over or under it`,
            ...sides,
            money: overOrUnder,
          },
        ]),
    ...(markup === 0
      ? []
      : [
          {
            kind: 'mark-up' as const,
            what: `Mark-up on what goes over the allowance ${name}`,
            from: '',
            to: '',
            quantity: '',
            money: markup,
          },
        ]),
  ];
}

/** Each term of the contract that changes is a line of its own, so that what is agreed of it can be read there. Its money stands on
 *  the line when no other term has a part in it. */
function termLines({ contract, money }: Comparison): DraftLine[] {
  const others = contract.filter(({ term }) => term !== contractSum);
  const [only] = others.length === 1 ? others : [];
  return others.map((change) => ({
    kind: 'terms',
    ...change,
    quantity: '',
    money: change === only ? money.terms : (0 as Cents),
  }));
}

const contractSum = 'contract.sum';

function remainders(comparison: Comparison): DraftLine[] {
  const { money, from, to, terms, rules } = comparison;
  const own = termLines(comparison);
  const told = own.reduce((sum, line) => sum + line.money, 0);
  const apart = { from: '', to: '', quantity: '' };
  const lines: DraftLine[] = [
    {
      kind: 'shared-packs',
      what: 'Whole packs and freight shared with places that do not change',
      ...apart,
      money: money.sharedPacks,
    },
    {
      kind: 'price-book',
      what:
        money.together === 'terms-and-prices'
          ? 'Price book and terms of the contract'
          : 'Price book: suppliers’ prices, packs, waste',
      ...apart,
      money: money.priceBook,
    },
    {
      kind: 'terms',
      what: `Terms of the contract: ${terms.map(({ field }) => field).join(', ') || 'allowances'}`,
      ...apart,
      money: (money.terms - told) as Cents,
    },
    {
      kind: 'contract-sum',
      term: contractSum,
      what: 'Contract sum as the house’s record gives it',
      from: printMoney(from.contractSum),
      to: printMoney(to.contractSum),
      quantity: '',
      money: money.contractSum,
    },
    {
      kind: 'net-mark-up',
      what: `Mark-up on ${nettedText({ ...money.netChange, markup: money.markup }, rules)}`,
      ...apart,
      money: money.markup,
    },
    { kind: 'fee', what: 'Contractor’s fee on what the cost changes', ...apart, money: money.fee },
  ];
  return [...own, ...lines.filter((line) => line.money !== 0)];
}

function daysOf({ milestones, rooms }: Comparison): DraftDays {
  const moved = milestones.flatMap(({ name, from, to, days }) =>
    from === undefined || to === undefined || days === undefined ? [] : [{ name, from, to, days }],
  );
  const late = rooms.flatMap((room) =>
    drafted(room).flatMap(({ categoryName, placeText, to }) =>
      to && to.orderLate > 0
        ? [
            {
              room: room.room,
              what: `${placeText}, ${categoryName.toLowerCase()}`,
              milestone: to.milestoneName,
              days: to.orderLate,
            },
          ]
        : [],
    ),
  );
  return {
    milestones: moved,
    late,
    most: Math.max(0, ...moved.map(({ days }) => days), ...late.map(({ days }) => days)),
  };
}
