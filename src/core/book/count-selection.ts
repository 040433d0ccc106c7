import type { Option } from '../model/index.js';
import {
  countedOption,
  noCost,
  type Cost,
  type HousePrice,
  type Item,
  type ReasonedFigure,
  type Reckoning,
} from '../price/index.js';
import type { Takeoff } from '../takeoff/index.js';
import type { Cents } from '../../base/units/index.js';
import { slugOf, type Draft } from './draft.js';
import { reckon } from './reckon.js';

/** What stands at a selection today. */
export interface Counted {
  /** Absent while nothing is counted. */
  readonly product?: { readonly slug: string; readonly option: Option; readonly takeoffs: readonly Takeoff[] };
  readonly cost?: Cost;
  readonly reckoning?: Reckoning;
  /** What the supplier keeps of an order that was changed. */
  readonly restocking?: ReasonedFigure;
  /** What it changes in the contract, beside its allowance; with what the supplier keeps. */
  readonly change: Cents;
}

export function countSelection({ id, category, options }: Draft, item: Item, house: HousePrice): Counted {
  const countedId = countedOption(item);
  const slug = countedId === undefined ? undefined : slugOf(countedId, category.slug);
  const found = slug === undefined ? undefined : options.get(slug);
  const cost = house.today.costs.get(id);
  // At its standard a place changes nothing itself: what shared packs move is told once for the house.
  const own = countedId === undefined || countedId !== item.standard;
  const reckoning = own ? reckon(house, item, countedId, cost ?? (item.decided ? noCost : undefined)) : undefined;
  const restocking = house.restocking.get(id);
  return {
    ...(slug !== undefined && found && { product: { slug, ...found } }),
    ...(cost && { cost }),
    ...(reckoning && { reckoning }),
    change: ((reckoning?.change ?? 0) + (restocking?.amount ?? 0)) as Cents,
    ...(restocking && { restocking }),
  };
}
