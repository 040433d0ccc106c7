import type { BookSelection } from '../../src/core/book/index.js';
import type { Plain } from '../../src/handout/cleared.js';
import { own } from '../../src/handout/own.js';
import type { Handout, HandoutProduct } from '../../src/handout/index.js';
import type { HouseCell, TradeCell } from '../../src/sheet/index.js';
import type { Order } from '../../src/core/price/index.js';
import type { Cents, Decimal } from '../../src/base/units/index.js';

/** A handout holds no money, by type: this file does not compile when a field of money comes in. */

/** Names that would be money whatever their type. */
type MoneyName =
  | 'price'
  | 'prices'
  | 'cost'
  | 'costs'
  | 'rate'
  | 'change'
  | 'amount'
  | 'allowance'
  | 'allowances'
  | 'contract'
  | 'contractSum'
  | 'credit'
  | 'freight'
  | 'material'
  | 'labor'
  | 'tax'
  | 'markup'
  | 'overage'
  | 'money'
  | 'quoted'
  | 'private'
  | 'againstStandard'
  | 'againstToday';

type Depth = readonly unknown[];
type Deeper<D extends Depth> = readonly [unknown, ...D];

/** Paths of a type at which money stands: Cents, a Decimal (a rate), a name of money, or a hole where anything may be.
 *  `amount` as a plain number is a quantity in an adjustment, so that name alone is looked at by its type. */
type MoneyPaths<T, P extends string = '', D extends Depth = []> = D['length'] extends 14
  ? never
  : unknown extends T
    ? `${P}: unknown`
    : T extends Cents
      ? `${P}: Cents`
      : T extends Decimal
        ? `${P}: Decimal`
        : T extends string | number | boolean | null | undefined
          ? never
          : T extends readonly (infer Item)[]
            ? MoneyPaths<Item, `${P}[]`, Deeper<D>>
            : T extends object
              ? {
                  [K in keyof T & string]:
                    | (K extends Exclude<MoneyName, 'amount'> ? `${P}.${K}: name` : never)
                    | MoneyPaths<T[K], `${P}.${K}`, Deeper<D>>;
                }[keyof T & string]
              : never;

type IsNever<T> = [T] extends [never] ? true : false;

/** Holds at compile time: `true` is the only value it takes. */
export const handoutIsFreeOfMoney: IsNever<MoneyPaths<Handout>> = true;

// The test finds what it looks for: in the Book's own types, and in fields added to a handout.
export const selectionsHoldMoney: IsNever<MoneyPaths<BookSelection>> = false;
export const ordersHoldMoney: IsNever<MoneyPaths<Order>> = false;
export const aPriceIsFound: IsNever<MoneyPaths<HandoutProduct & { readonly price: string }>> = false;
export const centsAreFound: IsNever<MoneyPaths<{ readonly rooms: readonly { readonly sum: Cents }[] }>> = false;
export const aRateIsFound: IsNever<MoneyPaths<{ readonly per?: Decimal }>> = false;
export const aHoleIsFound: IsNever<MoneyPaths<{ readonly data: unknown }>> = false;

/** Paths of a type at which a plain string stands: neither one of a closed list nor the program's, the sieve's or an id's. Keys
 *  of records count too, except those of cells, which are keys of columns. */
type PlainPaths<T, P extends string = '', D extends Depth = []> = D['length'] extends 14
  ? `${P}: too deep`
  : unknown extends T
    ? `${P}: unknown`
    : // Both hold themselves: plain data has sieved strings alone, cells are looked at below.
      Same<Exclude<T, undefined>, TradeCell> | ([T] extends [Plain | undefined] ? true : false) extends false
      ? PlainPathsIn<T, P, D>
      : never;

type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : false) : false;

type PlainPathsIn<T, P extends string, D extends Depth> = T extends string
  ? string extends T
    ? `${P}: string`
    : never
  : T extends number | boolean | null | undefined
    ? never
    : T extends readonly (infer Item)[]
      ? PlainPaths<Item, `${P}[]`, Deeper<D>>
      : T extends object
        ? { [K in keyof T & string]-?: PlainPaths<T[K], `${P}.${K}`, Deeper<D>> }[keyof T & string]
        : never;

/** Cells but those that are made of cells. */
export const cellsAreSieved: IsNever<PlainPaths<Exclude<TradeCell, { is: 'list' | 'lines' }>>> = true;
export const cellsOfTheHouseAreNot: IsNever<PlainPaths<Exclude<HouseCell, { is: 'list' | 'lines' }>>> = false;

/** No string of a record reaches a handout but through the sieve. */
export const handoutIsSieved: PlainPaths<Handout> extends never ? true : PlainPaths<Handout> = true;

// The test finds what it looks for, and lists of words, sieved words and ids pass.
export const aNameIsFound: IsNever<PlainPaths<{ readonly rooms: readonly { readonly name?: string }[] }>> = false;
export const selectionsHoldStrings: IsNever<PlainPaths<BookSelection>> = false;
export const wordsOfAListPass: IsNever<PlainPaths<{ readonly state: 'open' | 'chosen' }>> = true;

// The program's own words are literals: a string that came from elsewhere is none.
declare const fromRecord: string;
// @ts-expect-error a string is no literal
export const notOwn = own(fromRecord);
export const isOwn = own('Ceiling height');
