import type { Cents, IsoDate } from '../../base/units/index.js';
import type { MarkupRules } from '../price/index.js';
import type { Net } from '../model/index.js';
import type { TermChange } from './contract-terms.js';
import type { NoticeChange } from './notice-change.js';
import type { FieldChange, RoomChange } from './room-change.js';

/** What lies between two Books of one house. Plain JSON: lengths in nanometres, areas in sq ft, money in whole cents, days
 *  as YYYY-MM-DD. Comparing the other way round turns every difference of rooms, weight and money; how money splits into
 *  parts depends on whose prices are taken first. */
export interface Comparison {
  readonly format: 'bookmatch/comparison/1';
  readonly house: { readonly name: string; readonly number: string };
  readonly from: Side;
  readonly to: Side;
  /** Rooms with something in them that changed, in order of number. */
  readonly rooms: readonly RoomChange[];
  /** What suppliers and the builder changed in the options: not the owner's changes. */
  readonly priceBook: readonly OptionChange[];
  readonly allowances: readonly AllowanceChange[];
  /** Terms of the contract, the calendar's rules and other facts of the house's record, in words. */
  readonly terms: readonly FieldChange[];
  /** Terms of the contract as the house's record writes them, each by its id: what a change order must cover. */
  readonly contract: readonly TermChange[];
  readonly milestones: readonly MilestoneChange[];
  readonly cautions: readonly NoticeChange[];
  /** Layers that nobody does, that two do, or that wait for somebody. */
  readonly scope: readonly NoticeChange[];
  readonly records: readonly RecordChange[];
  readonly money: MoneyChange;
  /** Mark-up and fee by the newer side's contract. */
  readonly rules: MarkupRules;
  /** Slugs of trades whose work changed: by a selection that a room's record changed, a caution or a finding of scope. */
  readonly trades: readonly TouchedTrade[];
}

export interface Side {
  /** The git version, issue or records on disk that it was read from. */
  readonly label: string;
  /** Its commit, when it was read from git. */
  readonly commit?: string;
  readonly on: IsoDate;
  readonly contractSum: Cents;
  readonly today: Cents;
  /** Given when it is an issue that owner and builder signed: the day of the later signature. */
  readonly signedOn?: IsoDate;
}

export interface OptionChange {
  readonly option: string;
  readonly name: string;
  readonly kind: 'added' | 'removed' | 'renamed' | 'changed';
  readonly renamedFrom?: string;
  readonly fields: readonly FieldChange[];
}

export interface AllowanceChange {
  readonly allowance: string;
  readonly name: string;
  readonly kind: 'added' | 'removed' | 'kept';
  /** What its record says otherwise: amount, what it covers, name. */
  readonly fields: readonly FieldChange[];
  /** Drawn by what is chosen. */
  readonly drawn: { readonly from: Cents; readonly to: Cents };
  /** What choices do to the contract through it, at the older prices and terms: over or under, then the mark-up on it. */
  readonly byChoice: { readonly overOrUnder: Cents; readonly markup: Cents; readonly total: Cents };
  /** All that it moves the contract by. */
  readonly contract: Cents;
}

export interface MilestoneChange {
  readonly id: string;
  readonly name: string;
  readonly from?: IsoDate;
  readonly to?: IsoDate;
  /** Working days later, negative when earlier; absent when it is on one side only. */
  readonly days?: number;
}

export interface RecordChange {
  readonly path: string;
  /** A record that was renamed may be edited too. */
  readonly kind: 'added' | 'removed' | 'edited' | 'renamed';
  readonly renamedFrom?: string;
  /** The text of both sides as unified hunks, when asked for; empty when only the name differs. */
  readonly diff?: string;
}

export interface TouchedTrade {
  readonly trade: string;
  readonly name: string;
  /** How many selections of it a room's record changed. */
  readonly selections: number;
}

/** Where the difference of the totals comes from. All parts add up to `difference` to the cent. */
export interface MoneyChange {
  readonly difference: Cents;
  /** By selections that the rooms' records changed, outside allowances, mark-up included. */
  readonly choices: Cents;
  /** By the same, through allowances: over, under, mark-up. */
  readonly allowances: Cents;
  /** What those choices move elsewhere, because whole packs and freight are shared by the house. */
  readonly sharedPacks: Cents;
  /** By prices, packs, waste and rules of measuring. */
  readonly priceBook: Cents;
  /** Of `priceBook`, what records of shared folders move. */
  readonly sharedBook: Cents;
  /** By allowances' amounts, tax, mark-up on each line and what a credit returns. */
  readonly terms: Cents;
  /** The contract sum itself. */
  readonly contractSum: Cents;
  /** Mark-up on the net of additions and deductions, where the contract figures it so; and the contractor's fee. */
  readonly markup: Cents;
  readonly fee: Cents;
  /** What that mark-up is on: additions less deductions, prices and terms among them. */
  readonly netChange: Net;
  /** What could not be told apart, because the newer rooms cannot be composed with the older records: they use something
   *  that those do not have. `terms-and-prices` stand in `priceBook`, the others in `choices`, `allowances`, `sharedPacks`. */
  readonly together: 'nothing' | 'terms-and-prices' | 'choices-and-terms' | 'everything';
}
