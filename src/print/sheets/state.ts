import type { BookSelection } from '../../book/index.js';
import { printDay } from '../../units/index.js';

/** State of a selection as printed: a small sign, the word, and a second line. */
export interface StateMark {
  readonly sign: 'open' | 'chosen' | 'ordered' | 'installed' | 'none';
  readonly word: string;
  readonly detail: string;
}

export function stateMark(selection: BookSelection): StateMark {
  const { state, decision, chosenOn } = selection;
  if (state === 'open') {
    const late = decision.state === 'late';
    return { sign: 'open', word: late ? 'Open, late' : 'Open', detail: `decide by ${printDay(decision.by)}` };
  }
  const words = { chosen: 'Chosen', ordered: 'Ordered', installed: 'Installed', none: 'None' } as const;
  return { sign: state, word: words[state], detail: chosenOn === undefined ? '' : printDay(chosenOn) };
}
