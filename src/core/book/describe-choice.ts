import { sourceOf } from '../../base/problem/index.js';
import type { FactStep } from '../model/index.js';
import { partOf, selectionText } from '../takeoff/index.js';
import type { BookSelection, SelectionState } from './book.js';
import type { Draft } from './draft.js';

/** What a Book says of a selection whatever prices and days are. */
export type DescribedChoice = Pick<
  BookSelection,
  | 'id'
  | 'room'
  | 'category'
  | 'trade'
  | 'places'
  | 'placeText'
  | 'standard'
  | 'allowance'
  | 'considering'
  | 'chosen'
  | 'chosenOn'
  | 'chosenBy'
  | 'slip'
  | 'supply'
  | 'state'
  | 'note'
  | 'facts'
  | 'finishSet'
  | 'source'
  | 'line'
>;

export function describeChoice({ id, room, selection, category, measure, places }: Draft): DescribedChoice {
  const { standard, allowance, considering, chosen, chosenOn, chosenBy, slip, supply, note, facts, finishSet } =
    selection;
  return {
    id,
    room: room.slug,
    category: category.slug,
    trade: category.trade,
    places: places.map((place) => {
      const part = partOf(place);
      return { id: place.id, name: place.name, ...(part && { part }) };
    }),
    placeText: selectionText(selection, places, measure),
    ...(standard !== undefined && { standard }),
    ...(allowance !== undefined && { allowance }),
    considering,
    ...(chosen !== undefined && chosen !== 'none' && { chosen }),
    ...(chosenOn !== undefined && { chosenOn }),
    ...(chosenBy !== undefined && { chosenBy }),
    ...(slip !== undefined && { slip }),
    supply,
    state: stateOf(selection),
    ...(note !== undefined && { note }),
    facts,
    ...(finishSet !== undefined && { finishSet }),
    ...sourceOf(room.origin, selection.path),
  };
}

function stateOf(selection: Draft['selection']): SelectionState {
  if (selection.chosen === undefined) return 'open';
  if (selection.chosen === 'none') return 'none';
  const has = (step: FactStep): boolean => selection.facts.some((fact) => fact.step === step);
  if (has('installed')) return 'installed';
  return has('ordered') ? 'ordered' : 'chosen';
}
