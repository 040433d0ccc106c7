import type { BookSelection } from '../../core/book/index.js';
import type { CostPart } from '../../core/model/index.js';
import type { Status } from '../../sheet/index.js';

export const partWords: Readonly<Record<CostPart, string>> = {
  material: 'material',
  freight: 'freight',
  tax: 'tax',
  labor: 'labor',
};

export { counted } from '../../base/units/index.js';

/** The state that people act on: an open choice is open, due soon or late. */
export type ShownState = Status;

export function shownState({ state, decision }: Pick<BookSelection, 'state' | 'decision'>): ShownState {
  if (state !== 'open') return state;
  return decision.state === 'late' || decision.state === 'due-soon' ? decision.state : 'open';
}
