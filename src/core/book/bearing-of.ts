import type { DecideInput } from '../calendar/index.js';
import type { Draft } from './draft.js';

/** What bears on the day of a choice, apart from its options. */
export function bearingOf({
  category,
  selection: { keptOpen, needsDone },
}: Draft): Omit<DecideInput, 'options' | 'chosen'> {
  return { category, ...(keptOpen && { keptOpen }), ...(needsDone && { needsDone }) };
}
