import type { Book, DoorRow } from '../../src/core/book/index.js';
import type { Order } from '../../src/core/price/index.js';
import {
  col,
  type Cell,
  type HouseCell,
  type HouseSheet,
  type MoneyFree,
  type MoneyIn,
  type Names,
  type Sieved,
  type Table,
  type TradeCell,
  type TradeSheet,
} from '../../src/sheet/index.js';

/** Who may read a sheet is the type of its cells: this file does not compile when money or words unsieved could reach a trade. */
declare const house: HouseSheet;
declare const trade: TradeSheet;
declare const names: Names;
declare const book: Book;

export const wider: HouseSheet = trade;
// @ts-expect-error a sheet of the house is no trade's
export const narrower: TradeSheet = house;

// @ts-expect-error money is no cell of a trade's
export const money: TradeCell = { is: 'money', cents: 100 };
// @ts-expect-error a record's words without the sieve
export const unsieved: TradeCell = { is: 'words', text: 'as written, $400' };
// @ts-expect-error nor deep in a list
export const hidden: TradeCell = { is: 'list', of: [{ is: 'words', text: '$400' }], parted: ', ' };
export const sieved: TradeCell = { is: 'words', text: 'as written' as Sieved };
export const forTheHouse: HouseCell = { is: 'words', text: 'as written, $400' };

// @ts-expect-error a trade's table has no column of money
export const table: Table<DoorRow> = { columns: [col.money<DoorRow>('cost', 'Cost', () => undefined)] };

export const doorsAreFree: [MoneyIn<DoorRow>] extends [never] ? true : false = true;
export const ordersAreNot: [MoneyIn<Order>] extends [never] ? true : false = false;
export const aHoleIsNot: [MoneyIn<{ readonly any?: unknown }>] extends [never] ? true : false = false;
// @ts-expect-error rows with money in them are no rows of a trade's table
export const rows: MoneyFree<Order> = book.orders[0];

// @ts-expect-error names hold no Book
export const sideways: unknown = names.book;
export const plain: Cell = { is: 'nothing' };
