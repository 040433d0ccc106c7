import type { BookSelection } from '../../core/book/index.js';
import { statusWords, type Status } from '../../sheet/index.js';
import { printDay } from '../../base/units/index.js';

/** State of a selection as printed: its sign, the word, and a second line. */
export interface StateMark {
  readonly sign: Status;
  readonly word: string;
  readonly detail: string;
}

export function stateMark({ state, decision, chosenOn }: BookSelection): StateMark {
  if (state === 'open') {
    const sign = decision.state === 'late' || decision.state === 'due-soon' ? decision.state : 'open';
    return { sign, word: statusWords[sign], detail: `decide by ${printDay(decision.by)}` };
  }
  return { sign: state, word: statusWords[state], detail: chosenOn === undefined ? '' : printDay(chosenOn) };
}
