import { lastIssue, type LookUp } from '../../core/book/index.js';
import { cautionWords } from '../../core/caution/index.js';
import { lower } from '../../base/units/index.js';

/** How many there are of what somebody should look at. */
export interface NeedsALook {
  readonly count: number;
  /** After the count: `rooms changed since they were signed`. */
  readonly what: string;
  /** The first of them, or what is to be done. */
  readonly of: string;
  readonly where: 'scope' | 'cautions' | 'prices' | 'agreed';
}

/** Kinds of cautions that are named. */
const named = 4;

export function needsALook({ book, roomTitle }: LookUp): readonly NeedsALook[] {
  const { findings } = book.scope;
  const never = findings.filter(({ kind }) => kind === 'never-chosen');
  const gaps = findings.filter(({ kind }) => kind !== 'never-chosen');
  const cautions = book.cautions.filter(({ accepted }) => !accepted);
  const prices = book.money.quotes.filter(({ state }) => state === 'expired' || state === 'old');
  const changed = book.rooms.filter(({ signed }) => signed?.state === 'changed');
  const issue = lastIssue(book);
  const first = ([one]: typeof findings): string => (one ? `${roomTitle(one.room)}: ${lower(one.what)}` : '');
  const one = (count: number, single: string, many: string): string => (count === 1 ? single : many);
  const all: readonly NeedsALook[] = [
    { count: never.length, what: 'never chosen', of: first(never), where: 'scope' },
    { count: gaps.length, what: 'with a gap in the scope', of: first(gaps), where: 'scope' },
    {
      count: cautions.length,
      what: one(cautions.length, 'caution not accepted', `${lower(cautionWords.title)} not accepted`),
      of: [...new Set(cautions.map(({ title }) => lower(title)))].slice(0, named).join(', '),
      where: 'cautions',
    },
    {
      count: prices.length,
      what: one(prices.length, 'price past its day', 'prices past their day'),
      of: 'ask the supplier again before ordering',
      where: 'prices',
    },
    {
      count: changed.length,
      what: one(changed.length, 'room changed since it was signed', 'rooms changed since they were signed'),
      of: issue ? `issue ${issue.number}` : '',
      where: 'agreed',
    },
  ];
  return all.filter(({ count }) => count > 0);
}
