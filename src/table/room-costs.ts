import type { BookRoom, BookSelection, LookUp } from '../core/book/index.js';
import { col, layOut, money, type HouseBlock, type HouseTable } from '../sheet/index.js';
import { namesOf } from './names-of.js';

const table: HouseTable<BookSelection> = {
  id: 'costs-table',
  caption: 'What the finishes cost',
  named: 'finish',
  rowId: ({ id }) => id,
  columns: [
    col.words('finish', 'Finish', nameOf, { width: 'words' }),
    col.money('material', 'Material', ({ cost }) => cost.material),
    col.money('freight', 'Freight', ({ cost }) => cost.freight),
    col.money('tax', 'Tax', ({ cost }) => cost.tax),
    col.money('labor', 'Labor', ({ cost }) => cost.labor),
    col.money('total', 'Total', ({ cost }) => cost.total),
    col.money('change', 'Change', ({ change }) => change, { change: true }),
  ],
};

/** What the finishes of a room cost, with the options that are counted today, and what they change. */
export function roomCosts(
  { name, cost, change }: BookRoom,
  selections: readonly BookSelection[],
  look: LookUp,
): HouseBlock {
  const { material, freight, tax, labor, total } = cost;
  const cells = {
    material: money(material),
    freight: money(freight),
    tax: money(tax),
    labor: money(labor),
    total: money(total),
    change: money(change, true),
  };
  const counted = selections.filter((selection) => selection.counted !== undefined);
  const sums = () => [{ what: 'Room', strong: true, cells }];
  return layOut({ ...table, caption: `What the finishes of ${name} cost`, sums }, counted, namesOf(look));
}

function nameOf(
  { category, counted = '' }: BookSelection,
  names: { readonly option: (id: string) => string | undefined },
) {
  return names.option(`${category}/${counted}`);
}
