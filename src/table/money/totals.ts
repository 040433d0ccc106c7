import type { LookUp, Total } from '../../core/book/index.js';
import {
  col,
  layOut,
  money,
  words,
  type Cell,
  type Column,
  type HouseCell,
  type HouseTable,
  type Names,
} from '../../sheet/index.js';
import { namesOf } from '../names-of.js';
import type { HouseSchedule } from '../schedule.js';

const figures: readonly Column<Total, HouseCell>[] = [
  col.money('material', 'Material', ({ cost }) => cost.material),
  col.money('freight', 'Freight', ({ cost }) => cost.freight),
  col.money('tax', 'Tax', ({ cost }) => cost.tax),
  col.money('labor', 'Labor', ({ cost }) => cost.labor),
  col.money('total', 'Total', ({ cost }) => cost.total, { brief: true }),
  col.money('change', 'Change', ({ change }) => change, { change: true }),
];

/** One way to cut the cost of all finishes; its foot is the same in every one. */
function totals(
  by: { readonly id: string; readonly caption: string; readonly key: string; readonly head: string },
  nameOf: (slug: string, names: Names) => Cell,
  rows: (look: LookUp) => readonly Total[],
): HouseSchedule {
  const { id, caption, key, head } = by;
  const kind = key === 'room' ? 'room' : 'words';
  const name = col.cell<Total>(kind, key, head, ({ of }, names) => nameOf(of, names), { width: 'words' });
  return {
    id,
    lay: (look) => {
      const { finishes, net } = look.book.money;
      const { material, freight, tax, labor, total } = finishes;
      const sum = { material, freight, tax, labor, total };
      const cells = Object.fromEntries(Object.entries(sum).map(([part, cents]) => [part, money(cents)]));
      const table: HouseTable<Total> = {
        id,
        caption,
        named: key,
        rowId: ({ of }) => of,
        columns: [name, ...figures],
        sums: () => [{ what: 'All finishes', strong: true, cells: { ...cells, change: money(net, true) } }],
      };
      const moved = rows(look).filter(({ cost, change }) => cost.total !== 0 || change !== 0);
      return layOut(table, moved, namesOf(look));
    },
  };
}

export const totalsByRoom = totals(
  { id: 'by-room', caption: 'Cost of finishes by room', key: 'room', head: 'Room' },
  (slug, names) => ({ is: 'room', ...names.room(slug) }),
  ({ book }) => book.money.byRoom,
);

export const totalsByTrade = totals(
  { id: 'by-trade', caption: 'Cost of finishes by trade', key: 'trade', head: 'Trade' },
  (slug, names) => words(names.trade(slug), { to: 'trade', id: slug }),
  ({ book }) => book.money.byTrade,
);

export const totalsByCategory = totals(
  { id: 'by-category', caption: 'Cost of finishes by category', key: 'category', head: 'Category' },
  (slug, names) => words(names.category(slug)),
  ({ book }) => book.money.byCategory,
);
