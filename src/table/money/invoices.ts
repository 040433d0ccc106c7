import type { LookUp } from '../../core/book/index.js';
import type { Invoice } from '../../core/model/index.js';
import { col } from '../../sheet/index.js';
import type { Cents } from '../../base/units/index.js';
import { houseSchedule } from '../schedule.js';

interface Line extends Invoice {
  readonly allowance: string;
  readonly name: string;
  /** Of the whole order, beside its last invoice. */
  readonly order?: { readonly sum: Cents; readonly computed: Cents };
}

/** What was invoiced on the allowances, and beside the last invoice of an order what was computed for it. */
export const invoices = houseSchedule<Line>(
  {
    id: 'invoices',
    caption: 'Invoices on the allowances, beside what was computed',
    named: 'product',
    rowId: ({ option, number }) => `${option}-${number}`,
    group: ({ allowance }) => ({ title: allowance }),
    columns: [
      col.words('product', 'Product', ({ name }) => name, { width: 'words' }),
      col.words('number', 'Invoice', ({ number }) => number),
      col.day('on', 'Day', ({ on }) => on),
      col.words('heldBy', 'Held by', ({ heldBy }) => heldBy, { width: 'short' }),
      col.words('status', 'Status', ({ last }) => (last ? 'Last of the order' : 'More to come'), { width: 'short' }),
      col.money('amount', 'Invoiced', ({ amount }) => amount, { brief: true }),
      col.money('order', 'Order, invoiced', ({ order }) => order?.sum),
      col.money('computed', 'Order, computed', ({ order }) => order?.computed),
      col.money('difference', 'Difference', ({ order }) => order && ((order.sum - order.computed) as Cents), {
        change: true,
      }),
    ],
  },
  lines,
);

function lines(look: LookUp): readonly Line[] {
  const names = new Map(look.book.options.map(({ id, name }) => [id, name]));
  return look.book.money.allowances.flatMap(({ name: allowance, invoiced }) =>
    invoiced.flatMap(({ option, invoices: own, sum, computed, complete }) =>
      own.map((invoice, index): Line => {
        const ends = complete && computed !== undefined && index === own.length - 1;
        const order = ends ? { order: { sum, computed } } : {};
        return { ...invoice, allowance, name: names.get(option) ?? option, ...order };
      }),
    ),
  );
}
