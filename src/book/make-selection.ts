import type { Option } from '../model/index.js';
import { countedOption, noCost } from '../price/index.js';
import type { HousePrice, Item } from '../price/index.js';
import { layPlaces, placeText } from '../takeoff/index.js';
import type { Takeoff } from '../takeoff/index.js';
import type { Cents } from '../units/index.js';
import type { BookSelection, SelectionState } from './book.js';
import { optionId } from './draft.js';
import type { Draft } from './draft.js';
import { makeAlternatives } from './make-alternatives.js';
import type { Decider } from './make-decider.js';
import { reckon } from './reckon.js';
import { weigh } from './weigh.js';

export function makeSelection(draft: Draft, item: Item, house: HousePrice, decide: Decider): BookSelection {
  const { id, room, selection, category, places, options } = draft;
  const countedId = countedOption(item);
  const counted = [...options].find(([slug]) => optionId(category.slug, slug) === countedId);
  const cost = house.today.costs.get(id);
  // At its standard a place changes nothing itself: what shared packs move is told once for the house.
  const own = countedId === undefined || countedId !== item.standard;
  const reckoning = own ? reckon(house, item, countedId, cost ?? (item.decided ? noCost : undefined)) : undefined;
  const deciding = counted && item.decided ? [counted[1].option] : [...options.values()].map(({ option }) => option);
  const pounds = counted && weigh(counted[1].option, counted[1].takeoffs);
  return {
    id,
    room: room.slug,
    category: category.slug,
    trade: category.trade,
    places: places.map((place) => ({ id: place.id, name: place.name })),
    placeText: placeText(selection.at, places),
    ...(selection.standard !== undefined && { standard: selection.standard }),
    ...(selection.allowance !== undefined && { allowance: selection.allowance }),
    considering: selection.considering,
    ...(selection.chosen !== undefined && selection.chosen !== 'none' && { chosen: selection.chosen }),
    ...(selection.chosenOn !== undefined && { chosenOn: selection.chosenOn }),
    ...(selection.chosenBy !== undefined && { chosenBy: selection.chosenBy }),
    supply: selection.supply,
    state: stateOf(selection),
    ...(selection.note !== undefined && { note: selection.note }),
    ...(counted && { counted: counted[0] }),
    takeoff: counted ? withLayout(draft, counted[1]) : [],
    cost: cost ?? noCost,
    ...(pounds !== undefined && { pounds }),
    change: reckoning?.change ?? (0 as Cents),
    ...(reckoning && { reckoning }),
    alternatives: makeAlternatives(draft, item, house, decide),
    decision: decide({ category, options: deciding, chosen: item.decided }),
    source: room.origin.file,
    line: room.origin.at(selection.path).line,
  };
}

/** The take-off of what is counted, with its pieces laid out where the category asks for it. Only what is counted is laid:
 *  alternatives are compared by area. */
function withLayout(
  { places, category, measure, selection }: Draft,
  { option, takeoffs }: { readonly option: Option; readonly takeoffs: readonly Takeoff[] },
): readonly Takeoff[] {
  const layout = layPlaces(places, option, category.measure, measure, selection.courses);
  return layout ? takeoffs.map((takeoff, index) => (index === 0 ? { ...takeoff, layout } : takeoff)) : takeoffs;
}

function stateOf(selection: Draft['selection']): SelectionState {
  if (selection.chosen === undefined) return 'open';
  if (selection.chosen === 'none') return 'none';
  if (selection.installedOn !== undefined) return 'installed';
  return selection.orderedOn === undefined ? 'chosen' : 'ordered';
}
