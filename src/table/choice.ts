import type { BookSelection, LookUp } from '../core/book/index.js';
import { words, type Cell, type Finish } from '../sheet/index.js';
import { lower } from '../base/units/index.js';
import { saidOnce } from './places-of.js';

/** `Ceiling board, ceiling`: what is chosen and where. A category that is the place's own name is said once. */
export function choiceTitle({ category, placeText }: BookSelection, look: LookUp): string {
  const [what, where] = [look.categoryName(category), lower(saidOnce(placeText))];
  return lower(what) === where ? what : `${what}, ${where}`;
}

/** `101 Great room: ceiling board, ceiling`, and where it stands. */
export function choiceWords(id: string, look: LookUp): Cell {
  const text = choiceText(id, look);
  return look.selection(id) ? words(text, { to: 'selection', id }) : words(text);
}

/** The same as text alone. */
export function choiceText(id: string, look: LookUp): string {
  const selection = look.selection(id);
  return selection ? `${look.roomTitle(selection.room)}: ${lower(choiceTitle(selection, look))}` : id;
}

/** What a selection has: the option chosen, that nothing is wanted, or that it is open. */
export function choiceFinish({ id, category, chosen, state, supply, decision }: BookSelection, look: LookUp): Finish {
  const { state: due } = decision;
  if (state === 'open') {
    const urgency = due === 'late' || due === 'due-soon' ? due : 'open';
    return { name: '', standing: 'open', by: supply, urgency, selection: id };
  }
  if (chosen === undefined) return { name: '', standing: 'none', by: supply };
  const name = look.option(category, chosen)?.name ?? chosen;
  return { name, standing: 'chosen', by: supply, place: { to: 'option', id: `${category}/${chosen}` } };
}
