import { withoutLabor } from '../core/fact/index.js';
import type { Alternative, BookSelection, JointDecision, LookUp, PickedOption } from '../core/book/index.js';
import type { Range } from '../core/price/index.js';
import { lower, printMoney, printMoneyChange, wholeMoney, type Cents } from '../base/units/index.js';
import { changeWords, words, type Cell } from '../sheet/index.js';
import { choiceTitle, choiceWords } from './choice.js';

/** `101 Great room: stone facing, chimney breast`; of several choices, the allowance or what they are, and the
 *  rooms. */
export function decisionTitle({ choices, allowance }: JointDecision, look: LookUp): string {
  const selections = choices.flatMap(({ selection }) => look.selection(selection) ?? []);
  const [first] = selections;
  if (!first) return '';
  if (selections.length === 1) return `${look.roomTitle(first.room)}: ${lower(choiceTitle(first, look))}`;
  const what = allowance === undefined ? look.categoryName(first.category) : look.allowanceName(allowance);
  const rooms = [...new Set(selections.map(({ room }) => look.roomName(room)))];
  return `${what}: ${rooms.join(', ')}`;
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

/** What an option moves the house by, as its price says; what nobody priced yet is not in it. */
export function movesWords(
  { option, againstToday }: Alternative,
  category: string,
  look: LookUp,
  cents?: 'always' | 'when-any',
): string {
  const found = look.option(category, option);
  return `${changeWords(againstToday, cents)}${found && withoutLabor(found) ? ', without labor' : ''}`;
}

/** How a range was found, in words. */
export const pricedWords = {
  all: 'every combination of what is considered, priced as a whole house',
  ends: 'too many combinations to price them all: each at its cheapest and each at its dearest, priced as whole houses; another may lie outside',
} as const;

/** Where the rest of its allowance stands in the figures of an open choice: each line
 *  by its room and place, but for several of which nothing is considered, which are counted. Empty where nothing else is open on it, and
 *  where it has no figures, as nothing is considered for it. */
export function restWords({ rest, allowance, alternatives }: BookSelection, look: LookUp): string {
  if (!rest || allowance === undefined || alternatives.length === 0) return '';
  const empty = rest.lines.filter(({ option }) => option === undefined);
  const told = empty.length > 1 ? rest.lines.filter(({ option }) => option !== undefined) : rest.lines;
  const counted = empty.length > 1 ? [`${empty.length} choices left open, since nothing is considered`] : [];
  const named = told.map(({ selection: id, option, isStandard, isConsidered }) => {
    const other = look.selection(id);
    const where = other ? `${look.roomName(other.room)}, ${lower(choiceTitle(other, look))}` : id;
    if (option === undefined) return `${where}: left open, since nothing is considered`;
    const name = pickedNames([{ selection: id, option }], look);
    if (!isStandard) return `${where}: ${name}, the middle one by price, since it has no standard`;
    return isConsidered ? `${where}: ${name}` : `${where}: ${name}, which is not considered`;
  });
  const at = rest.lines.every(({ isStandard }) => isStandard) ? ' at its standard' : '';
  return `Each figure is the difference of two whole houses, in which the rest of the allowance ${look.allowanceName(allowance)} stands${at}: ${[...named, ...counted].join('; ')}.`;
}

/** `−$5,321.34 to +$5,983.09`. */
export function rangeWords(
  { low, high }: Pick<Range, 'low' | 'high'>,
  cents: 'always' | 'when-any' = 'when-any',
): string {
  const of = (amount: Cents): string => printMoneyChange(amount, cents);
  return low === high ? of(low) : `${of(low)} to ${of(high)}`;
}

/** `−$5,321 to +$5,983`: where it is seen and not ticked. */
export function wholeRange({ low, high }: Pick<Range, 'low' | 'high'>): string {
  return rangeWords({ low: wholeMoney(low), high: wholeMoney(high) });
}

/** `$5,409.34`, `$591.22 over`. */
export function leftWords(left: Cents, cents: 'always' | 'when-any' = 'when-any'): string {
  return left < 0 ? `${printMoney(-left as Cents, cents)} over` : printMoney(left, cents);
}
