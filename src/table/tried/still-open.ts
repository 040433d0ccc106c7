import type { LookUp } from '../../core/book/index.js';
import { counted, joinWords } from '../../base/units/index.js';

/** What an allowance waits for that some choices draw on. */
export interface StillOpen {
  readonly id: string;
  readonly name: string;
  /** How many choices on it are open. */
  readonly open: number;
  /** Is more drawn on it than it holds? That counts at once. */
  readonly isOver: boolean;
}

/** Allowances that choices draw on while others on them are open: why a total moves otherwise than the price beside an option, which has the others decided. */
export function stillOpen(after: LookUp, selections: readonly string[]): readonly StillOpen[] {
  const drawn = new Set(selections.flatMap((id) => after.selection(id)?.allowance ?? []));
  return after.book.money.allowances
    .filter(({ id, settled }) => drawn.has(id) && !settled)
    .map(({ id, name, balance }) => ({ id, name, isOver: balance < 0, open: openOn(id, after) }));
}

/** `Still open on the allowance Stone: 2 choices. What is left of it moves this total with the last of them.` */
export function stillOpenWords({ name, open, isOver }: StillOpen): string {
  const then = isOver ? 'What is over it is in this total' : 'What is left of it moves this total';
  const last = isOver ? 'already' : `with ${open === 1 ? 'that one' : 'the last of them'}`;
  return `Still open on the allowance ${name}: ${counted(open, 'choice')}. ${then} ${last}.`;
}

/** `Still open on Railing and Stone: 3 choices. This total has them open, the prices beside options have them decided.`; empty where none is. */
export function besidePricesWords(all: readonly StillOpen[]): string {
  if (all.length === 0) return '';
  const open = all.reduce((sum, one) => sum + one.open, 0);
  const them = open === 1 ? 'it' : 'them';
  const names = joinWords(all.map(({ name }) => name));
  return `Still open on ${names}: ${counted(open, 'choice')}. This total has ${them} open, the prices beside options have ${them} decided.`;
}

function openOn(allowance: string, { book }: LookUp): number {
  return book.selections.filter((one) => one.allowance === allowance && one.state === 'open').length;
}
