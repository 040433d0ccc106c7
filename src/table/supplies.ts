import type { BookRoom, LookUp } from '../core/book/index.js';
import { col, layOut, type HouseBlock, type Table } from '../sheet/index.js';
import { lower } from '../base/units/index.js';
import { namesOf } from './names-of.js';
import { supplyLines, type SupplyLine } from './order-lines.js';
import { schedule } from './schedule.js';

const table: Table<SupplyLine> = {
  id: 'supplies',
  caption: 'Supplies, used up with the finishes',
  named: 'supply',
  rowId: ({ trade, what, unit, pack }) => [trade, what, unit, ...(pack ? [pack.name, pack.holds] : [])].join('-'),
  columns: [
    col.words('supply', 'Supply', ({ what }) => what, { width: 'long' }),
    col.rooms('rooms', 'Rooms', ({ rooms }, names) => rooms.map(names.number), { width: 'short' }),
    col.quantity('net', 'Net', ({ net, unit }) => ({ amount: net, unit })),
    col.quantity('required', 'With waste', ({ required, unit }) => ({ amount: required, unit }), { brief: true }),
    col.unit('unit', 'Unit', ({ unit }) => unit, { width: 'fit', brief: true }),
    col.pack('packs', 'Bought as', packOf, { width: 'words' }),
    col.words('source', 'Source', ({ sources }) => sources.join('; '), { width: 'words' }),
  ],
  notes: () => [
    'Supplies carry no price of their own: the rate in place of the finish covers them.',
    'The installer confirms before ordering.',
  ],
};

/** What is used up with the finishes of the whole house, in whole packs. */
export const supplies = schedule<SupplyLine>({
  table: { ...table, group: ({ trade }, names) => ({ title: names.trade(trade) }) },
  rows: supplyLines,
  trades: ({ trade }) => [trade],
});

/** Of one trade, for the whole house. */
export function suppliesOfTrade(trade: string, look: LookUp): HouseBlock {
  const rows = supplyLines(look).filter((line) => line.trade === trade);
  const caption = `Supplies of ${lower(look.tradeName(trade))}, for the house`;
  return layOut({ ...table, id: `supplies-${trade}`, caption }, rows, namesOf(look));
}

/** What is used up in one room. Packs are opened for the house and left out. */
export function roomSupplies({ name, supplies: used = [] }: BookRoom, look: LookUp): HouseBlock {
  const rows = used.map(({ shares: _, packs: __, ...supply }) => ({ ...supply, rooms: [] }));
  return layOut({ ...table, id: 'room-supplies', caption: `What is used up with it in ${name}` }, rows, namesOf(look));
}

function packOf({ pack, packs, unit }: SupplyLine) {
  return pack && packs !== undefined ? { count: packs, ...pack, unit } : undefined;
}
