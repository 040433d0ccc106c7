import type { SelectionState } from '../book/index.js';
import type { Area, Cents, IsoDate, Length, Unit } from '../../base/units/index.js';

export interface RoomChange {
  /** Slug on the newer side, or on the older when the room is gone. */
  readonly room: string;
  /** Slug on the older side; absent when the room is new. */
  readonly roomBefore?: string;
  readonly number: string;
  readonly name: string;
  readonly kind: 'added' | 'removed' | 'kept';
  /** The number and name it had before, when it was renamed. */
  readonly renamedFrom?: string;
  /** Level, use and notes. */
  readonly fields: readonly FieldChange[];
  readonly measures: readonly MeasureChange[];
  /** Openings that this room records, and features. */
  readonly parts: readonly PartChange[];
  /** Drawings that look different: 'plan', 'ceiling', a wall's or a feature's id. */
  readonly drawings: readonly { readonly kind: 'plan' | 'ceiling' | 'wall' | 'feature'; readonly id: string }[];
  readonly selections: readonly SelectionChange[];
  /** Change of cost in place, of all its selections. */
  readonly difference: Cents;
  /** What its own changed selections do to the contract outside allowances, at the older prices. */
  readonly byChoice: Cents;
  /** Change of weight in place, as far as it is recorded, and of how many selections it is not. */
  readonly pounds: number;
  readonly unweighed: number;
}

/** Of a room as a whole, or of one wall. */
export type MeasureChange = { readonly wall?: string } & (
  | {
      readonly what: string;
      readonly unit: 'sq ft';
      readonly from?: Area;
      readonly to?: Area;
      readonly difference: Area;
    }
  | {
      readonly what: string;
      readonly unit: 'length';
      readonly from?: Length;
      readonly to?: Length;
      readonly difference: Length;
    }
);

/** An opening or a feature. */
export interface PartChange {
  readonly of: 'opening' | 'feature';
  /** Mark or id. */
  readonly id: string;
  readonly name: string;
  readonly kind: 'added' | 'removed' | 'changed';
  /** In words: `door 3'-0" × 8'-0" in the south wall, to Foyer`. */
  readonly from?: string;
  readonly to?: string;
}

/** What about a selection differs. */
export type Aspect =
  | 'added'
  | 'removed'
  | 'choice'
  | 'places'
  | 'quantity'
  | 'waste'
  | 'supply'
  | 'standard'
  | 'allowance'
  | 'considering'
  | 'state'
  | 'note'
  | 'cost'
  | 'weight'
  | 'lead-time'
  | 'decide-by'
  | 'order-by';

export interface SelectionChange {
  readonly selection: string;
  readonly placeText: string;
  readonly category: string;
  readonly categoryName: string;
  readonly trade: string;
  readonly tradeName: string;
  readonly aspects: readonly Aspect[];
  /** Did its room's record change it? Otherwise prices, shared packs, terms or dates elsewhere moved it. */
  readonly own: boolean;
  readonly from?: SelectionSide;
  readonly to?: SelectionSide;
  /** Net quantities that differ. */
  readonly quantities: readonly {
    readonly part: string;
    readonly unit: Unit;
    readonly from: number;
    readonly to: number;
  }[];
  /** Change of the selection's own cost. */
  readonly cost: Cents;
  /** Change of what it does to the contract, outside allowances. */
  readonly contract: Cents;
  /** Of it, by choices at the older prices and terms. */
  readonly byChoice: Cents;
  /** Absent when the weight of one side is not recorded. */
  readonly pounds?: number;
  /** Working days: longer lead, later decide-by and order-by; negative when shorter or earlier; 0 when on one side only. */
  readonly days: { readonly lead: number; readonly decideBy: number; readonly orderBy: number };
}

export interface SelectionSide {
  /** Option slug, or absent while open or none. */
  readonly option?: string;
  /** Its name, 'open' or 'none'. */
  readonly optionName: string;
  /** The option whose figures count, and its name: the standard of an open selection, for one. */
  readonly counted?: string;
  readonly countedName?: string;
  readonly state: SelectionState;
  readonly placeText: string;
  readonly supply: 'contractor' | 'owner-furnished';
  readonly standardName?: string;
  readonly allowanceName?: string;
  readonly considering: readonly string[];
  readonly note?: string;
  readonly quantities: readonly Quantity[];
  readonly cost: Cents;
  readonly pounds?: number;
  /** Absent where its option does not tell it. */
  readonly leadDays?: number;
  readonly decideBy: IsoDate;
  readonly orderBy: IsoDate;
  /** Working days that the last day to order lies before the Book's day, when it is chosen and not ordered; else 0. */
  readonly orderLate: number;
  /** The milestone at which it is needed. */
  readonly milestoneName: string;
}

/** A fact that reads otherwise now, in words: 'material', '$7.40 / sq ft', '$7.95 / sq ft'. */
export interface FieldChange {
  readonly field: string;
  readonly from: string;
  readonly to: string;
}

export interface Quantity {
  readonly part: string;
  readonly unit: Unit;
  readonly net: number;
}
