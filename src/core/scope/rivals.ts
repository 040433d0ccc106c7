import { joinWords } from '../../base/units/index.js';
import { selectionText } from '../takeoff/index.js';
import type { Names } from './names.js';
import { possible } from './needs.js';
import type { ScopeFinding } from './scope.js';
import { isThere, type Selected } from './spot.js';

/** One thing that two trades carry, or that a trade carries although a need names another: once for each, where it is
 *  first needed. */
export function findRivals(selections: readonly Selected[], names: Names): readonly ScopeFinding[] {
  const found = new Map<string, ScopeFinding>();
  for (const selected of selections.filter(isThere)) {
    for (const { id, by } of wanted(selected)) {
      const finding = found.has(id) ? undefined : rivalsFor(id, by, selected, names);
      if (finding) found.set(id, finding);
    }
  }
  return [...found.values()];
}

/** Ids that a selection asks for, and the trade it expects them of, if it names one. */
function wanted(selected: Selected): readonly { readonly id: string; readonly by?: string }[] {
  const beneath = (selected.category.needsBeneath ?? []).flat().map((id) => ({ id }));
  const needs = possible(selected).flatMap(({ needs }) => needs);
  return [...beneath, ...needs.flatMap(({ id, by }) => (id === undefined ? [] : [{ id, by }]))];
}

function rivalsFor(id: string, by: string | undefined, selected: Selected, names: Names): ScopeFinding | undefined {
  const carriers = names.carriers(id);
  const last = carriers.at(-1);
  const [place] = selected.places;
  if (!last || !place) return undefined;
  const trades = [...new Set([...carriers.map(({ trade }) => trade.slug), ...(by === undefined ? [] : [by])])];
  if (trades.length < 2) return undefined;
  const { trade, carried } = last;
  const index = (trade.carries ?? []).indexOf(carried);
  return {
    id: `overlap/${selected.room.slug}/${place.id}/${id}`,
    kind: 'overlap',
    room: selected.room.slug,
    place: place.id,
    placeText: selectionText(selected.selection, selected.places, selected.measure),
    what: `${joinWords(trades.map((slug) => names.tradeName(slug)))} are both named for this: ${carried.what}.`,
    fix: `Keep ${id} with one trade: in what it carries, and in the needs that name it.`,
    trades,
    source: trade.origin.file,
    line: trade.origin.at(['carries', index]).line,
  };
}
