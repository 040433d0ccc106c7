declare const unit: unique symbol;

/** A number that carries its unit in its type, so that feet never meet nanometres unnoticed. */
type Branded<Unit extends string> = number & { readonly [unit]: Unit };

/** A length in whole nanometres: 1/64 inch (396 875) and 1 mm (1 000 000) are both exact. */
export type Length = Branded<'nm'>;

/** An area in square feet, not rounded. */
export type Area = Branded<'sq ft'>;

/** A volume in cubic feet, not rounded. */
export type Volume = Branded<'cu ft'>;

/** Money in whole cents of the house's one currency. */
export type Cents = Branded<'cents'>;

/** A calendar day as `YYYY-MM-DD`. ISO text sorts as the days do. */
export type IsoDate = string;

/** An exact decimal: `amount` × 10^-`scale`. 7.25 % is `{ amount: 725, scale: 4 }`. */
export interface Decimal {
  readonly amount: number;
  readonly scale: number;
}

/** What a price is per, and what a quantity is counted in. */
export type Unit = 'sq ft' | 'lin ft' | 'each' | 'lump';
