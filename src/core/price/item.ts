import type { Allowance, Contract, CostPart, Netted, Option } from '../model/index.js';
import type { Takeoff } from '../takeoff/index.js';
import type { Cents } from '../../base/units/index.js';

/** One selection as pricing sees it. */
export interface Item {
  readonly selection: string;
  readonly room: string;
  readonly category: string;
  readonly trade: string;
  readonly allowance?: string;
  readonly supply: 'contractor' | 'owner-furnished';
  /** Option ids (`<category>/<slug>`). */
  readonly standard?: string;
  readonly chosen?: string;
  /** Is the choice made, be it a deliberate none? */
  readonly decided: boolean;
  /** Was what is chosen ordered? */
  readonly ordered?: boolean;
  /** What was ordered before the choice was changed, and what its supplier kept where that is known. */
  readonly before?: { readonly option: string; readonly restocking?: Cents };
  /** What may still be chosen here: what is considered, or the standard where nothing is. */
  readonly considered: readonly string[];
  /** Every option that could stand here, with what it would take. */
  readonly takeoffs: ReadonlyMap<string, readonly Takeoff[]>;
}

/** What an order came to by its invoices: it counts instead of what was computed for the places that were ordered. */
export interface InvoicedOrder {
  readonly allowance: string;
  readonly covers: readonly CostPart[];
  readonly invoiced: Cents;
}

/** What pricing needs to know of the house. */
export interface PriceBook {
  readonly contract: Contract;
  /** What change orders have netted already; absent: nothing. */
  readonly netted?: Netted;
  /** Orders that are invoiced, by option; absent: none. */
  readonly invoiced?: ReadonlyMap<string, readonly InvoicedOrder[]>;
  /** By id. */
  readonly options: ReadonlyMap<string, Option>;
}

/** An allowance with its amount, and how that came about in words. */
export interface SizedAllowance {
  readonly allowance: Allowance;
  readonly amount: Cents;
  readonly basis: string;
}
