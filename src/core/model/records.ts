import type { ChangeOrder, Issue } from './agreement.js';
import type { HouseAlternative } from './alternative.js';
import type { House } from './house.js';
import type { PriceList } from './price-list.js';
import type { Category, Option, Trade } from './product.js';
import type { Room } from './room.js';

/** A house as its records give it: read, checked and cross-referenced. */
export interface Records {
  readonly house: House;
  /** In order of room number. */
  readonly rooms: readonly Room[];
  /** In order of category sequence, then slug. */
  readonly options: readonly Option[];
  /** In order of sequence, then slug. */
  readonly categories: readonly Category[];
  readonly trades: readonly Trade[];
  /** In order of slug. */
  readonly alternatives: readonly HouseAlternative[];
  /** In order of slug. */
  readonly priceLists: readonly PriceList[];
  /** In order of number. */
  readonly changes: readonly ChangeOrder[];
  /** In order of number. */
  readonly issues: readonly Issue[];
  /** Every record as written, in order of path. */
  readonly sources: readonly Source[];
}

/** A record's file. `path` is relative to the house folder, with `/`. */
export interface Source {
  readonly path: string;
  readonly text: string;
}
