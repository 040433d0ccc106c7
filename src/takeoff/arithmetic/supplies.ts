import type { Area } from '../../units/index.js';
import { wholePieces, withWaste } from './whole.js';

/** Something used up over an area: so much of `unit` for every 1,000 sq ft. */
export interface SupplyRate {
  readonly name: string;
  readonly unit: string;
  readonly perThousand: number;
  /** What is sold whole, such as a roll of 50 lin ft, and the waste added before counting it. */
  readonly pack?: { readonly name: string; readonly holds: number; readonly waste: number };
}

export interface Supply {
  readonly name: string;
  readonly unit: string;
  readonly quantity: number;
  readonly packs?: { readonly name: string; readonly count: number };
}

/** Tape, compound and screws for gypsum board. Source: Estimating in Building Construction, example 16-3; the waste on tape
 *  is the example's own. */
export const gypsumBoardRates: readonly SupplyRate[] = [
  { name: 'joint tape', unit: 'lin ft', perThousand: 380, pack: { name: 'roll of 50 lin ft', holds: 50, waste: 0.1 } },
  { name: 'joint compound, ready-mixed', unit: 'gal', perThousand: 5 },
  { name: 'screws', unit: 'each', perThousand: 1000 },
];

/** Supplies for an area, by rates. */
export function suppliesFor(area: Area, rates: readonly SupplyRate[]): readonly Supply[] {
  return rates.map(({ name, unit, perThousand, pack }) => {
    const quantity = (area / 1000) * perThousand;
    if (!pack) return { name, unit, quantity };
    const count = wholePieces(withWaste(quantity, pack.waste) / pack.holds);
    return { name, unit, quantity, packs: { name: pack.name, count } };
  });
}
