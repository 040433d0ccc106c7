import type { AlternativeDraft } from './read-alternative.js';
import type { CategoryDraft } from './read-category.js';
import type { ChangeOrderDraft } from './read-change-order.js';
import type { HouseDraft } from './read-house.js';
import type { IssueDraft } from './read-issue.js';
import type { OptionDraft } from './read-option.js';
import type { PriceListDraft } from './read-price-list.js';
import type { RoomDraft } from './read-room.js';
import type { TradeDraft } from './read-trade.js';

/** All records of a house as far as they can be read, for checks of what refers to what. A record that cannot be read at
 *  all is still there by its name, so that one broken file does not make every reference to it a problem. */
export interface Draft {
  /** Absent when house.md is missing or cannot be read: nothing that refers to it is checked. */
  readonly house?: HouseDraft;
  readonly rooms: readonly RoomDraft[];
  /** The same by their names. */
  readonly roomNamed: ReadonlyMap<string, RoomDraft>;
  readonly options: readonly OptionDraft[];
  readonly categories: readonly CategoryDraft[];
  readonly trades: readonly TradeDraft[];
  readonly alternatives: readonly AlternativeDraft[];
  readonly priceLists: readonly PriceListDraft[];
  readonly changes: readonly ChangeOrderDraft[];
  readonly issues: readonly IssueDraft[];
  /** Does a file stand where its name or place does not say what it is? What it refers to is then not known. */
  readonly hasStrays: boolean;
  /** Names by folder and file, whether or not they can be read. */
  readonly slugs: {
    readonly rooms: ReadonlySet<string>;
    readonly categories: ReadonlySet<string>;
    readonly trades: ReadonlySet<string>;
    readonly changes: ReadonlySet<string>;
    readonly issues: ReadonlySet<string>;
    /** Options by category. */
    readonly options: ReadonlyMap<string, ReadonlySet<string>>;
  };
}
