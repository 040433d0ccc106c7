import { printAmount, printMoneyChange, type Cents } from '../../base/units/index.js';

/** A number cut at its decimal point, so that a column lines up on it: `1,240` and `.5`. */
export interface Figure {
  readonly whole: string;
  readonly rest: string;
  /** How it is coloured; the sign says the same without colour. */
  readonly tone: 'plain' | 'more' | 'less' | 'muted';
}

export function amountFigure(amount: number, digits = 1): Figure {
  return cut(printAmount(amount, digits), 'plain');
}

/** A change of money with its sign; nothing is an en dash. */
export function changeFigure(cents: Cents): Figure {
  if (cents === 0) return { whole: '–', rest: '', tone: 'muted' };
  return cut(printMoneyChange(cents, 'always'), cents > 0 ? 'more' : 'less');
}

function cut(text: string, tone: Figure['tone']): Figure {
  const point = text.indexOf('.');
  return point < 0 ? { whole: text, rest: '', tone } : { whole: text.slice(0, point), rest: text.slice(point), tone };
}
