import type { Records, RoomMeasure } from '../model/index.js';
import { makeLedger, type HousePrice } from '../price/index.js';
import { hasErrors, type Outcome } from '../../base/problem/index.js';
import { inLocale, type Cents } from '../../base/units/index.js';
import type { BookMoney, BookSelection } from './book.js';
import { countSelection } from './count-selection.js';
import { draftSelections } from './draft-selections.js';
import { freshWork, type Work } from './kept-work.js';
import { priceDrafts } from './price-drafts.js';

/** What the choices of a house come to. A Book has this and more. */
export interface PricedChoices {
  readonly selections: readonly Pick<BookSelection, 'id' | 'counted' | 'takeoff' | 'change'>[];
  readonly money: HouseMoney;
}

type HouseMoney = Pick<BookMoney, 'allowances' | 'sharedPacks' | 'netChange' | 'onNet' | 'today'>;

/** Prices the choices of a house as its Book does, without what else stands in a Book: alternatives, layouts, days,
 *  cautions, scope. */
export function priceChoices(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  work: Work = freshWork,
): Outcome<PricedChoices> {
  return inLocale(records.house, () => priceInLocale(records, measures, work));
}

function priceInLocale(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  work: Work,
): Outcome<PricedChoices> {
  const drafted = draftSelections(records, measures, work);
  if (hasErrors(drafted.problems)) return { problems: drafted.problems };
  const { drafts, house } = priceDrafts(records, drafted.value, work);
  const selections = drafts.map(({ draft, item }) => {
    const { product, change } = countSelection(draft, item, house);
    return { id: draft.id, change, takeoff: product?.takeoffs ?? [], ...(product && { counted: product.slug }) };
  });
  return { value: { selections, money: houseMoney(house, selections) }, problems: drafted.problems };
}

/** The ledger, today's total, and what selections, allowances and the figures on their net leave of the change: shared
 *  packs. */
export function houseMoney(house: HousePrice, selections: readonly Pick<BookSelection, 'change'>[]): HouseMoney {
  const allowances = makeLedger(house);
  const moved = [...allowances, ...selections].reduce((total, { change }) => total + change, 0);
  return {
    allowances,
    sharedPacks: (house.change - moved - house.onNet.markup - house.onNet.fee) as Cents,
    netChange: house.net,
    onNet: house.onNet,
    today: (house.book.contract.sum + house.change) as Cents,
  };
}
