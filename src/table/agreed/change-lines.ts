import type { BookChangeOrder, LookUp } from '../../core/book/index.js';
import type { ChangeLine } from '../../core/model/index.js';
import { col, layOut, money, type Column, type HouseBlock, type HouseCell } from '../../sheet/index.js';
import { namesOf } from '../names-of.js';
import { houseSchedule } from '../schedule.js';

interface Line extends ChangeLine {
  readonly order: string;
  readonly at: number;
}

const people = ['html', 'pdf', 'text'] as const;

const columns: readonly Column<Line, HouseCell>[] = [
  col.room('room', 'Room', ({ room }, names) => (room === undefined ? undefined : names.room(room)), {
    width: 'short',
  }),
  col.words('what', 'What', lineWords, { width: 'long' }),
  col.words('from', 'Was', ({ from }) => from, { not: people }),
  col.words('to', 'Now', ({ to }) => to, { not: people }),
  col.words('quantity', 'Quantity', ({ quantity }) => quantity, { width: 'short' }),
  col.money('amount', 'Amount', ({ amount }) => amount, { change: true, zero: 'told' }),
];

const table = { columns, named: 'what', rowId: ({ at }: Line) => String(at) } as const;

/** The lines of every change order, under its order. */
export const changeLines = houseSchedule<Line>(
  {
    ...table,
    id: 'change-order-lines',
    caption: 'Lines of the change orders',
    rowId: ({ order, at }) => `${order}-${at}`,
    group: ({ order }) => ({ title: order }),
  },
  ({ book }) => book.changeOrders.flatMap(linesOf),
);

/** Those of one, with their sum. */
export function linesTable(order: BookChangeOrder, look: LookUp): HouseBlock {
  const { number, amount } = order;
  const sum = { what: 'Sum', strong: true, cells: { amount: money(amount, true, 'told') } };
  const caption = `Lines of change order ${number}`;
  return layOut({ ...table, id: `change-${number}-lines`, caption, sums: () => [sum] }, linesOf(order), namesOf(look));
}

const linesOf = ({ number, title, lines }: BookChangeOrder): readonly Line[] =>
  lines.map((line, index) => ({ ...line, order: `${number}. ${title}`, at: index + 1 }));

function lineWords({ what, from, to }: ChangeLine): string {
  return from === undefined && to === undefined ? what : `${what}: ${from ?? 'nothing'} → ${to ?? 'nothing'}`;
}
