import type { LookUp } from '../core/book/index.js';
import {
  col,
  layOut,
  money,
  words,
  type Column,
  type HouseBlock,
  type HouseTable,
  type Table,
} from '../sheet/index.js';
import { countsWords, orderedAmount, orderStatement, type OrderStatement } from '../core/takeoff/index.js';
import { notToldYet } from '../base/units/index.js';
import { namesOf } from './names-of.js';
import { orderLines, withoutCost, type OrderLine, type PricedLine } from './order-lines.js';
import { schedule } from './schedule.js';

const columns: readonly Column<OrderLine>[] = [
  col.finish('product', 'Product', productOf, { width: 'long' }),
  col.words('maker', 'Maker and model', ({ product }) => product, { under: 'product' }),
  col.words('standing', 'Where it stands', ({ standing }) => standing, { under: 'product' }),
  col.words('category', 'Kind', ({ category }, names) => names.category(category), { not: ['html', 'pdf', 'text'] }),
  col.words('part', 'Part', ({ part }) => part, { not: ['html', 'pdf', 'text'] }),
  col.rooms('rooms', 'Rooms', ({ rooms }, names) => rooms.map(names.number), { width: 'short' }),
  col.quantity('net', 'Net', ({ net, unit }) => ({ amount: net, unit })),
  col.exact(2)('times', 'Coats or layers', ({ times }) => times),
  col.quantity('required', 'With waste', ({ required, unit }) => ({ amount: required, unit })),
  col.quantity('ordered', 'Order', ({ laid, ordered, unit }) => ({ amount: orderedAmount(laid, ordered), unit }), {
    brief: true,
  }),
  col.unit('unit', 'Unit', ({ unit }) => unit, { width: 'fit', brief: true }),
  col.pack('packs', 'Bought as', ({ pack, packs, unit }) => pack && { count: packs, ...pack, unit }, {
    width: 'long',
  }),
  col.words('check', 'Order and check', (line) => statement(line)?.short, { under: 'packs', width: 'words' }),
  col.words('why', 'Where the pieces go', (line) => statement(line)?.why, { not: ['html', 'pdf', 'text'] }),
  col.pieces('pieces', 'Laid out', ({ stock }) => stock, { under: 'packs' }),
  col.quantity('laid', 'As laid', ({ laid }) => laid && { amount: laid.surface.bought, unit: 'sq ft' }, {
    not: ['html', 'pdf', 'text'],
  }),
  col.words('orderBy', 'Order by', ({ laid }) => laid?.orderBy, { not: ['html', 'pdf', 'text'] }),
  col.words('counted', 'Counted', ({ counts = [] }) => countsWords(counts), { under: 'packs', width: 'words' }),
  col.cell(
    'days',
    'lead',
    'Lead',
    ({ leadDays }) => (leadDays === undefined ? words(notToldYet) : { is: 'days', working: leadDays }),
    { width: 'fit' },
  ),
];

const table: Table<OrderLine> = {
  id: 'orders',
  caption: 'Order list by trade',
  columns,
  named: 'product',
  rowId: ({ option, part, supply }) => `${option}-${part}-${supply}`,
  group: ({ trade }, names) => ({ title: names.trade(trade) }),
};

/** What the whole house buys, pooled by product and part, in whole packs. */
export const orders = schedule<OrderLine>({
  table,
  rows: (look) => orderLines(look).map(withoutCost),
  trades: ({ trade }) => [trade],
});

const beside: Readonly<Record<string, Pick<Column<OrderLine>, 'width' | 'not'>>> = {
  product: { width: 'words' },
  packs: { width: 'words' },
  lead: { not: ['html'] },
};

/** The same with what it costs. */
const priced: HouseTable<PricedLine> = {
  ...table,
  columns: [
    // Money needs the room: the lead is on the page of each product.
    ...columns.map((column) => ({ ...column, ...beside[column.key] })),
    col.money('material', 'Material', ({ cost }) => cost.material),
    col.money('inPlace', 'In place', ({ cost }) => cost.total),
  ],
};

/** The order list of the house, with the sums of its finishes. */
export function pricedOrders(look: LookUp): HouseBlock {
  const { material, total } = look.book.money.finishes;
  const sums = () => [
    { what: 'All finishes', strong: true, cells: { material: money(material), inPlace: money(total) } },
  ];
  return layOut({ ...priced, sums }, orderLines(look), namesOf(look));
}

/** Which of the two counts is the order; nothing where only one is made. */
function statement({ laid, stock, required }: OrderLine): OrderStatement | undefined {
  return laid && orderStatement({ ...laid, stock }, { required, wasteWords: 'with waste' });
}

function productOf({ option, name, part, supply, isStandard }: OrderLine) {
  return {
    name: part === 'main' ? name : `${name}, ${part}`,
    standing: isStandard ? ('standard' as const) : ('chosen' as const),
    by: supply,
    place: { to: 'option' as const, id: option },
  };
}
