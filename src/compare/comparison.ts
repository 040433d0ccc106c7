import type { Cents, IsoDate } from '../units/index.js';

/** What lies between two Books of one house. Plain JSON. */
export interface Comparison {
  readonly format: 'bookmatch/comparison/1';
  readonly from: Side;
  readonly to: Side;
  /** Rooms with something in them that changed, in order of number. */
  readonly rooms: readonly RoomChange[];
  /** What suppliers and the builder changed in the options: not the owner's changes. */
  readonly priceBook: readonly OptionChange[];
  readonly records: readonly RecordChange[];
  readonly money: MoneyChange;
  readonly milestones: readonly {
    readonly id: string;
    readonly name: string;
    readonly from?: IsoDate;
    readonly to?: IsoDate;
  }[];
  /** Slugs of trades that a changed selection belongs to. */
  readonly trades: readonly string[];
}

export interface Side {
  /** The git version, issue or 'working tree' it was read from. */
  readonly label: string;
  readonly on: IsoDate;
  readonly today: Cents;
}

export interface RoomChange {
  /** Slug on the newer side, or on the older when the room is gone. */
  readonly room: string;
  readonly number: string;
  readonly name: string;
  readonly kind: 'added' | 'removed' | 'kept';
  /** The slug or name it had before, when it was renamed. */
  readonly renamedFrom?: string;
  readonly selections: readonly SelectionChange[];
  readonly difference: Cents;
}

/** What about a selection differs. `cost` alone means that only the price book or shared packs moved it. */
export type Aspect =
  | 'added'
  | 'removed'
  | 'choice'
  | 'places'
  | 'quantity'
  | 'supply'
  | 'standard'
  | 'allowance'
  | 'state'
  | 'note'
  | 'cost'
  | 'decide-by';

export interface SelectionChange {
  readonly selection: string;
  readonly placeText: string;
  readonly category: string;
  readonly trade: string;
  readonly aspects: readonly Aspect[];
  readonly from?: SelectionSide;
  readonly to?: SelectionSide;
  readonly quantities: readonly {
    readonly part: string;
    readonly unit: string;
    readonly from: number;
    readonly to: number;
  }[];
  /** Change of the selection's own cost. */
  readonly cost: Cents;
  /** Change of what it does to the contract, outside allowances. */
  readonly contract: Cents;
  readonly pounds: number;
}

export interface SelectionSide {
  /** Option slug, or absent while open or none. */
  readonly option?: string;
  readonly optionName: string;
  readonly state: string;
  readonly supply: string;
  readonly cost: Cents;
  readonly pounds?: number;
  readonly leadDays: number;
  readonly decideBy: IsoDate;
}

export interface OptionChange {
  readonly option: string;
  readonly name: string;
  readonly kind: 'added' | 'removed' | 'renamed' | 'changed';
  readonly renamedFrom?: string;
  /** Each field in words: 'material of main', '$7.40', '$7.95'. */
  readonly fields: readonly { readonly field: string; readonly from: string; readonly to: string }[];
}

export interface RecordChange {
  readonly path: string;
  readonly kind: 'added' | 'removed' | 'edited';
}

export interface MoneyChange {
  readonly difference: Cents;
  /** Of it, by choices, places and rooms: the newer rooms priced from the older price book, less the older total. Absent
   *  when that house cannot be composed, because it uses options or rules that the older side does not have. */
  readonly byChoice?: Cents;
  /** Of it, by prices, allowances and rules. */
  readonly byPriceBook?: Cents;
}
