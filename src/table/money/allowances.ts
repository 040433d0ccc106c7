import type { LedgerEntry } from '../../core/price/index.js';
import { col } from '../../sheet/index.js';
import { houseSchedule } from '../schedule.js';

/** What each allowance holds, what is drawn on it and what is left. */
export const allowances = houseSchedule<LedgerEntry>(
  {
    id: 'allowance-ledger',
    caption: 'Each allowance at a glance',
    together: true,
    named: 'allowance',
    rowId: ({ id }) => id,
    columns: [
      col.words('allowance', 'Allowance', ({ id, name }) => ({ text: name, place: { to: 'allowance', id } }), {
        width: 'words',
      }),
      col.money('holds', 'Holds', ({ amount }) => amount),
      col.money('drawn', 'Drawn', ({ committed }) => committed),
      col.money('left', 'Left', ({ balance }) => balance),
      col.money('openLow', 'Open, lowest', ({ openLow }) => openLow, { not: ['html', 'pdf'] }),
      col.money('openHigh', 'Open, highest', ({ openHigh }) => openHigh, { not: ['html', 'pdf'] }),
      col.money('change', 'Change', ({ change }) => change, { change: true, brief: true }),
      col.words('status', 'Status', statusOf, { width: 'short', brief: true }),
    ],
  },
  ({ book }) => book.money.allowances,
);

function statusOf({ overage, settled, balance }: LedgerEntry): string {
  if (overage > 0) return settled ? 'Overrun' : 'Overrun, not all decided';
  if (!settled) return 'Not all decided';
  return balance === 0 ? 'Spent' : 'Underrun';
}
