import type { CostPart, Invoice } from '../model/index.js';
import type { LaidCount, TradeCount } from '../takeoff/index.js';
import type { Cents, Decimal, IsoDate, Length, Unit } from '../../base/units/index.js';

/** A cost by what it is made of; `total` is their sum. */
export type Cost = Readonly<Record<CostPart, Cents>> & { readonly total: Cents };

/** One product bought for the whole house. */
export interface Order {
  /** `<category>/<slug>`. */
  readonly option: string;
  readonly part: string;
  readonly trade: string;
  readonly unit: Unit;
  readonly net: number;
  /** How often that is done, in coats or layers; absent: once. */
  readonly times?: number;
  readonly required: number;
  /** Whole packs bought, and what they hold together. */
  readonly packs: number;
  readonly pack?: { readonly name: string; readonly holds: number };
  readonly ordered: number;
  /** Pieces by stock length where boards were laid out. */
  readonly stock: readonly { readonly length: Length; readonly count: number }[];
  /** Which count is the order, and where the pieces go, where all of it is laid out. */
  readonly laid?: Pick<LaidCount, 'orderBy' | 'surface'>;
  /** As the trade counts it: gallons, lineal feet, sheets. */
  readonly counts?: readonly TradeCount[];
  readonly rate: Decimal;
  readonly supply: 'contractor' | 'owner-furnished';
  readonly cost: Cost;
  /** How it is shared over the selections that use it. */
  readonly shares: readonly { readonly selection: string; readonly required: number; readonly cost: Cost }[];
}

/** What is bought of one part of a product, without who pays for what of it. */
export type Lot = Pick<Order, 'part' | 'unit' | 'packs' | 'pack' | 'ordered'>;

/** How a difference between a cost and what the contract holds for it changes the contract:
 *  change = difference + markup + retained. */
export interface Effect {
  /** Cost less what the contract holds: negative when it stays under. */
  readonly difference: Cents;
  /** Added to what goes over; negative when mark-up returns with a credit. */
  readonly markup: Cents;
  /** What of a credit stays with the builder, when it does not return in full. */
  readonly retained: Cents;
  readonly change: Cents;
}

/** How one selection changes the contract, beside what it draws on an allowance. */
export interface Reckoning extends Effect {
  /** What of the costs is compared: all of it, or what its allowance does not cover. */
  readonly parts: readonly CostPart[];
  /** Cost in these parts of what is counted, and of the standard. */
  readonly counted: Cents;
  readonly standard: Cents;
  /** In words, with the contract's percentages. */
  readonly why: string;
}

/** A figure with the reason for it. */
export interface ReasonedFigure {
  readonly what: string;
  readonly amount: Cents;
  readonly why: string;
}

/** How a range was found. `all`: every combination was priced. `ends`: there are too many, and those were compared that have
 *  each line at its cheapest, and each at its dearest. */
export type Priced = 'all' | 'ends';

/** One allowance: what it holds, what draws on it, and what is left. */
export interface LedgerEntry {
  readonly id: string;
  readonly name: string;
  readonly covers: readonly CostPart[];
  /** 'Covers material and tax. Freight and labor are not drawn on it. Tax is 6.25 % of material.' */
  readonly coversText: string;
  /** How the amount came about, in words, when it is a rate. */
  readonly basis: string;
  readonly amount: Cents;
  readonly lines: readonly {
    readonly selection: string;
    readonly option?: string;
    /** Cost in what the allowance covers. */
    readonly covered: Cents;
    readonly low: Cents;
    readonly high: Cents;
    readonly open: boolean;
    /** The same by its quantities, where an invoice counts instead. */
    readonly computed?: Cents;
    /** 'material $792.00 + tax $39.60', or the cheapest and the dearest of what is open, by name. */
    readonly why: string;
  }[];
  /** Covered cost of what is chosen. */
  readonly committed: Cents;
  /** What is open will draw, least and most, with its orders bought together. */
  readonly openLow: Cents;
  readonly openHigh: Cents;
  /** What of that the open lines move only together: their `low` or `high` + it = `openLow` or `openHigh`. */
  readonly sharedLow: Cents;
  readonly sharedHigh: Cents;
  /** Whether every combination of what is open was priced, or those at its ends. */
  readonly openPriced: Priced;
  /** amount − committed. */
  readonly balance: Cents;
  /** What was ordered on it and invoiced, beside what was computed for the same places. */
  readonly invoiced: readonly InvoicedLine[];
  /** The day of the last invoice, once every choice on it is made and invoiced: its sum is what was paid. */
  readonly truedUpOn?: IsoDate;
  /** Is every selection that draws on it decided? Only then does it move the contract total. */
  readonly settled: boolean;
  /** committed − amount when above, else 0. */
  readonly overage: Cents;
  /** On the overage; negative when mark-up returns with a credit. */
  readonly markup: Cents;
  /** What of an underrun stays with the builder. */
  readonly retained: Cents;
  /** What returns to the owner when below, mark-up included, as a positive figure. */
  readonly credit: Cents;
  /** overage + markup − credit once settled; an overrun counts at once. */
  readonly change: Cents;
  /** The same figures in the order to tick them, each with its reason. */
  readonly figures: readonly ReasonedFigure[];
  readonly note?: string;
}

/** The invoices of one order on an allowance. */
export interface InvoicedLine {
  readonly option: string;
  readonly invoices: readonly Invoice[];
  readonly sum: Cents;
  /** Is the last one in? Only then the sum counts instead of what is computed. */
  readonly complete: boolean;
  /** By quantities, for the places that were ordered; absent where none was. */
  readonly computed?: Cents;
}

/** A line of the way from the contract sum to today's total. */
export interface ContractStep {
  readonly what: string;
  readonly kind:
    | 'contract'
    | 'allowance'
    | 'upgrade'
    | 'credit'
    | 'shared-packs'
    | 'mark-up'
    | 'fee'
    | 'change-order'
    | 'not-covered'
    | 'total';
  /** Allowance id, selection id or number of the change order it comes from. */
  readonly of?: string;
  readonly amount: Cents;
  readonly running: Cents;
  readonly why: string;
}

export const noCost: Cost = makeCost({});

/** A cost from its parts; parts not named are zero. */
export function makeCost(parts: Partial<Readonly<Record<CostPart, number>>>): Cost {
  const { material = 0, freight = 0, tax = 0, labor = 0 } = parts;
  return { material, freight, tax, labor, total: material + freight + tax + labor } as Cost;
}

export function addCosts(costs: Iterable<Cost>): Cost {
  const sum = { material: 0, freight: 0, tax: 0, labor: 0 };
  for (const cost of costs) {
    sum.material += cost.material;
    sum.freight += cost.freight;
    sum.tax += cost.tax;
    sum.labor += cost.labor;
  }
  return makeCost(sum);
}

/** The sum of the parts that are named, such as what an allowance covers. */
export function costOf(cost: Cost, parts: readonly CostPart[]): Cents {
  return parts.reduce((sum, part) => sum + cost[part], 0) as Cents;
}
