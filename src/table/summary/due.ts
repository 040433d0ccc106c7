import type { BookSelection, LookUp } from '../../core/book/index.js';
import { countedInWords, printDay, type IsoDate } from '../../base/units/index.js';

/** What is open and due next: all until a day, and how many of them are late. */
export interface Due {
  readonly by: IsoDate;
  readonly choices: readonly BookSelection[];
  readonly late: number;
}

/** What is late or due soon; where nothing is, what is due first. Undefined where all is decided. */
export function dueNext({ book }: LookUp): Due | undefined {
  const open = book.selections.filter(({ state }) => state === 'open');
  const days = (of: readonly BookSelection[]): IsoDate[] => of.map(({ decision }) => decision.by).sort();
  const late = open.filter(({ decision }) => decision.state === 'late');
  const lastLate = days(late).at(-1);
  const soon = days(open.filter(({ decision }) => decision.state === 'due-soon')).at(-1);
  const by = soon ?? days(open).find((day) => lastLate === undefined || day > lastLate) ?? lastLate;
  if (by === undefined) return undefined;
  return { by, choices: open.filter(({ decision }) => decision.by <= by), late: late.length };
}

/** The answer to why somebody opens the book: `Seven choices are due by 4 May 2026.`, and what of them is late: `Two are late.` */
export function headline(due: Due | undefined): { readonly due: string; readonly late: string } {
  if (!due) return { due: 'Every choice of the house is made.', late: '' };
  const { choices, late, by } = due;
  const is = (count: number): string => (count === 1 ? 'is' : 'are');
  if (late === choices.length) return { due: '', late: `${countedInWords(late, 'choice')} ${is(late)} late.` };
  return {
    due: `${countedInWords(choices.length, 'choice')} ${is(choices.length)} due by ${printDay(by)}.`,
    late: late === 0 ? '' : `${countedInWords(late)} ${is(late)} late.`,
  };
}
