import type { Cents, Decimal } from '../base/units/index.js';

/** Where money stands in a row's type, however deep: cents, a rate, or a hole where anything may be. */
export type MoneyIn<T, Depth extends readonly 0[] = []> = Depth['length'] extends 10
  ? never
  : unknown extends T
    ? unknown
    : T extends Cents | Decimal
      ? T
      : T extends string | number | boolean | null | undefined
        ? never
        : T extends readonly (infer Item)[]
          ? MoneyIn<Item, [...Depth, 0]>
          : { [K in keyof T]-?: MoneyIn<T[K], [...Depth, 0]> }[keyof T];

/** A row that a trade's table may be made of. With money in it, no value has the type. */
export type MoneyFree<T> = [MoneyIn<T>] extends [never] ? T : never;
