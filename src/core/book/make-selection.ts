import { noCost, type HousePrice, type Item, type ReasonedFigure } from '../price/index.js';
import type { LayOut } from '../takeoff/index.js';
import type { BookSelection, ChangedOrder } from './book.js';
import { countSelection } from './count-selection.js';
import type { InsteadOf, Issue } from '../model/index.js';
import { bearingOf } from './bearing-of.js';
import { delayOf } from './cost-of-days.js';
import type { Draft } from './draft.js';
import type { Work } from './kept-work.js';
import { makeAlternatives, restOf } from './make-alternatives.js';
import type { Decider } from './make-decider.js';
import { openSince } from './open-since.js';
import { weigh } from './weigh.js';
import { withLater } from '../../base/units/index.js';

export interface SelectionMakers {
  readonly issues: readonly Issue[];
  readonly decide: Decider;
  readonly layOut?: LayOut | undefined;
  readonly work: Pick<Work, 'describeChoice' | 'layCounted'>;
}

export function makeSelection(
  draft: Draft,
  item: Item,
  house: HousePrice,
  { decide, layOut, work, issues }: SelectionMakers,
): BookSelection {
  const { id, selection, category, measure, places, options } = draft;
  const { product, cost = noCost, reckoning, change, restocking } = countSelection(draft, item, house);
  const deciding = product && item.decided ? [product.option] : [...options.values()].map(({ option }) => option);
  const pounds = product && weigh(product.option, product.takeoffs);
  const decision = decide({ ...bearingOf(draft), options: deciding, chosen: item.decided });
  const known: Omit<BookSelection, keyof LaterParts> = {
    ...work.describeChoice(draft),
    ...(product && { counted: product.slug }),
    takeoff: product
      ? work.layCounted(product.takeoffs, places, product.option, category, measure, selection.courses, layOut)
      : [],
    cost,
    ...(pounds !== undefined && { pounds }),
    change,
    ...(reckoning && { reckoning }),
    decision,
    ...(selection.chosen === undefined && openSince(id, issues)),
    ...delayOf(decision, house.book.contract),
    ...(selection.insteadOf && { insteadOf: changedOrder(selection.insteadOf, restocking) }),
  };
  // Each is priced with the whole house, and most of what is made of a Book asks for those of few places.
  return withLater<typeof known, LaterParts>(known, {
    ...(house.choices.linesOf(item).length > 1 && { rest: () => restOf(item, house) }),
    alternatives: () => makeAlternatives(draft, item, house, decide),
  });
}

type LaterParts = Pick<BookSelection, 'alternatives' | 'rest'>;

/** What stood before a change, with what the supplier keeps as it is reckoned. */
function changedOrder(
  { option, chosenOn, on, why, order }: InsteadOf,
  restocking: ReasonedFigure | undefined,
): ChangedOrder {
  return {
    option,
    ...(chosenOn !== undefined && { chosenOn }),
    on,
    why,
    ...(order !== undefined && { order }),
    ...(restocking && { restocking }),
  };
}
