import type { TaxRate } from '../model/index.js';
import type { Cents } from '../../base/units/index.js';
import { sumOfShares } from './rounding.js';

type Taxed = Readonly<Record<'material' | 'freight' | 'labor', number>>;

/** Sales tax on one line: what every authority takes of the parts that it taxes, added up exactly and rounded half up once.
 *  Source: Streamlined Sales and Use Tax Agreement, sec. 324 (as in RCW 82.08.054): the rounding rule goes on the aggregated
 *  state and local taxes. */
export function taxOn(cost: Taxed, rates: readonly TaxRate[]): Cents {
  return sumOfShares(rates.map(({ rate, on }) => ({ amount: baseOf(cost, on), share: rate })));
}

/** What of a cost a tax is charged on. */
function baseOf(cost: Taxed, on: TaxRate['on']): Cents {
  return on.reduce((sum, part) => sum + cost[part], 0) as Cents;
}
