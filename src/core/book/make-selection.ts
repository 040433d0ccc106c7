import { sourceOf } from '../../base/problem/index.js';
import { noCost, type HousePrice, type Item, type ReasonedFigure } from '../price/index.js';
import { layPlaces, partOf, selectionText, type LayOut, type Takeoff } from '../takeoff/index.js';
import type { BookSelection, ChangedOrder, SelectionState } from './book.js';
import { countSelection, type Counted } from './count-selection.js';
import type { FactStep, InsteadOf, Issue } from '../model/index.js';
import { bearingOf } from './bearing-of.js';
import { delayOf } from './cost-of-days.js';
import type { Draft } from './draft.js';
import type { KeptWork } from './kept-work.js';
import { makeAlternatives, restOf } from './make-alternatives.js';
import type { Decider } from './make-decider.js';
import { openSince } from './open-since.js';
import { weigh } from './weigh.js';

export interface SelectionMakers {
  readonly issues: readonly Issue[];
  readonly decide: Decider;
  readonly layOut?: LayOut | undefined;
  readonly kept?: Pick<KeptWork, 'laid'> | undefined;
}

export function makeSelection(
  draft: Draft,
  item: Item,
  house: HousePrice,
  { decide, layOut, kept, issues }: SelectionMakers,
): BookSelection {
  const { id, room, selection, category, places, options } = draft;
  const { product, cost = noCost, reckoning, change, restocking } = countSelection(draft, item, house);
  const deciding = product && item.decided ? [product.option] : [...options.values()].map(({ option }) => option);
  const rest = restOf(item, house);
  const pounds = product && weigh(product.option, product.takeoffs);
  const alternatives = makeAlternatives(draft, item, house, decide);
  const decision = decide({ ...bearingOf(draft), options: deciding, chosen: item.decided });
  const laid = product && ((): readonly Takeoff[] => withLayout(draft, product, layOut));
  return {
    id,
    room: room.slug,
    category: category.slug,
    trade: category.trade,
    places: places.map((place) => {
      const part = partOf(place);
      return { id: place.id, name: place.name, ...(part && { part }) };
    }),
    placeText: selectionText(selection, places, draft.measure),
    ...(selection.standard !== undefined && { standard: selection.standard }),
    ...(selection.allowance !== undefined && { allowance: selection.allowance }),
    considering: selection.considering,
    ...(selection.chosen !== undefined && selection.chosen !== 'none' && { chosen: selection.chosen }),
    ...(selection.chosenOn !== undefined && { chosenOn: selection.chosenOn }),
    ...(selection.chosenBy !== undefined && { chosenBy: selection.chosenBy }),
    ...(selection.slip !== undefined && { slip: selection.slip }),
    supply: selection.supply,
    state: stateOf(selection),
    ...(selection.note !== undefined && { note: selection.note }),
    ...(product && { counted: product.slug }),
    takeoff: product && laid ? (kept ? kept.laid(draft, product.slug, laid) : laid()) : [],
    cost,
    ...(pounds !== undefined && { pounds }),
    change,
    ...(reckoning && { reckoning }),
    alternatives,
    ...(rest && { rest }),
    decision,
    ...(selection.chosen === undefined && openSince(id, issues)),
    ...delayOf(decision, house.book.contract),
    facts: selection.facts,
    ...(selection.insteadOf && { insteadOf: changedOrder(selection.insteadOf, restocking) }),
    ...(selection.finishSet !== undefined && { finishSet: selection.finishSet }),
    ...sourceOf(room.origin, selection.path),
  };
}

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

/** The take-off of what is counted, with its pieces laid out where the category asks for it. Only what is counted is laid:
 *  alternatives are compared by area. */
function withLayout(
  { places, category, measure, selection }: Draft,
  { option, takeoffs }: Required<Counted>['product'],
  layOut: LayOut | undefined,
): readonly Takeoff[] {
  const layout = layPlaces(places, option, category.measure, measure, selection.courses, layOut);
  return layout ? takeoffs.map((takeoff, index) => (index === 0 ? { ...takeoff, layout } : takeoff)) : takeoffs;
}

function stateOf(selection: Draft['selection']): SelectionState {
  if (selection.chosen === undefined) return 'open';
  if (selection.chosen === 'none') return 'none';
  const has = (step: FactStep): boolean => selection.facts.some((fact) => fact.step === step);
  if (has('installed')) return 'installed';
  return has('ordered') ? 'ordered' : 'chosen';
}
