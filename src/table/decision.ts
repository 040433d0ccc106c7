import type { JointDecision, LookUp, PickedOption } from '../core/book/index.js';
import { lower } from '../base/units/index.js';
import { words } from '../sheet/index.js';
import type { Cell } from '../sheet/index.js';
import { choiceTitle, choiceWords } from './choice.js';

/** `101 Great room: stone facing, chimney breast`; of several choices, the allowance or what they are, and where. */
export function decisionTitle({ choices, allowance }: JointDecision, look: LookUp): string {
  const selections = choices.flatMap(({ selection }) => look.selection(selection) ?? []);
  const [first] = selections;
  if (!first) return '';
  if (selections.length === 1) return `${look.roomTitle(first.room)}: ${lower(choiceTitle(first, look))}`;
  const what = allowance === undefined ? look.categoryName(first.category) : look.allowanceName(allowance);
  const rooms = [...new Set(selections.map(({ room }) => look.roomName(room)))];
  const places = selections.map((selection) => lower(choiceTitle(selection, look)));
  return rooms.length === 1 ? `${what}: ${places.join(' and ')}` : `${what}: ${rooms.join(', ')}`;
}

/** The same, and where its first choice stands. */
export function decisionWords(decision: JointDecision, look: LookUp): Cell {
  const [first] = decision.choices;
  if (!first || decision.choices.length === 1) return choiceWords(decision.id, look);
  return words(decisionTitle(decision, look), { to: 'selection', id: first.selection });
}

/** `Cable, steel picket`; what several take is said once: `Matte tallow × 3`. */
export function pickedNames(options: readonly PickedOption[], look: LookUp): string {
  const count = new Map<string, number>();
  for (const { selection, option } of options) {
    const category = look.selection(selection)?.category ?? '';
    const name = look.option(category, option?.slice(category.length + 1))?.name ?? 'still open';
    count.set(name, (count.get(name) ?? 0) + 1);
  }
  return [...count].map(([name, times]) => (times > 1 ? `${name} × ${times}` : name)).join(', ');
}

/** How a range was found, in words. */
export const pricedWords = {
  all: 'every combination of what is considered, priced as a whole house',
  ends: 'too many combinations to price them all: each at its cheapest and each at its dearest, priced as whole houses; another may lie outside',
} as const;
