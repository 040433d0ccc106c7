import type { BookSelection } from '../../book/index.js';
import type { CostPart } from '../../model/index.js';
import { printDays } from '../../units/index.js';

/** `material, freight and tax`. */
export function joinWords(words: readonly string[], and = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${and} ${words.at(-1) ?? ''}`;
}

export const partWords: Readonly<Record<CostPart, string>> = {
  material: 'material',
  freight: 'freight',
  tax: 'tax',
  labor: 'labor',
};

/** `1 room`, `3 rooms`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** A name inside a sentence: `doors D01 and D02`. Marks and names of makers keep their capitals. */
export function lower(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** How far off a decision is: `12 working days left`, `today is the last day`, `4 working days late`. */
export function slackWords(slack: number): string {
  if (slack === 0) return 'today is the last day';
  return slack > 0
    ? `${printDays(slack).replace(' ', ' working ')} left`
    : `${printDays(-slack).replace(' ', ' working ')} late`;
}

/** The state that people act on: an open choice is open, due soon or late. */
export type ShownState = Exclude<BookSelection['state'], never> | 'due-soon' | 'late';

export function shownState({ state, decision }: Pick<BookSelection, 'state' | 'decision'>): ShownState {
  if (state !== 'open') return state;
  return decision.state === 'late' || decision.state === 'due-soon' ? decision.state : 'open';
}
