import type { ContractStep } from '../../core/price/index.js';
import { col, type HouseTable, type Place } from '../../sheet/index.js';

/** A way from one sum to another, each step with its reason and the running total. */
export const stepTable = (id: string, caption: string): HouseTable<ContractStep> => ({
  id,
  caption,
  named: 'step',
  rowId: ({ kind, of = '', what }) => `${kind}-${of === '' ? what : of}`,
  strong: ({ kind }) => kind === 'contract' || kind === 'total',
  columns: [
    col.words(
      'step',
      'Step, and how it comes about',
      (step) => {
        const place = placeOf(step);
        return { text: step.what, ...(place && { place }) };
      },
      { width: 'long' },
    ),
    col.words('why', 'Why', ({ why }) => why, { under: 'step' }),
    col.words('kind', 'Kind', ({ kind }) => kind.replace('-', ' '), { not: ['html', 'pdf', 'text'] }),
    col.money('amount', 'Amount', ({ kind, amount }) => (kind === 'total' ? undefined : amount), {
      change: ({ kind }) => kind !== 'contract',
      brief: true,
    }),
    col.money('running', 'Running total', ({ running }) => running),
  ],
});

function placeOf({ kind, of }: ContractStep): Place | undefined {
  if (of === undefined) return undefined;
  if (kind === 'change-order') return { to: 'change-order', id: of };
  return kind === 'allowance' ? { to: 'allowance', id: of } : undefined;
}
