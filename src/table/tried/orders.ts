import type { LookUp } from '../../core/book/index.js';
import { col, layOut, type HouseBlock, type HouseTable } from '../../sheet/index.js';
import type { Cents } from '../../base/units/index.js';
import { namesOf } from '../names-of.js';
import { orderLines, type PricedLine } from '../order-lines.js';

/** A product that is bought in another amount now. */
interface TriedOrder {
  readonly id: string;
  readonly before?: PricedLine;
  readonly after?: PricedLine;
  readonly line: PricedLine;
}

const table: HouseTable<TriedOrder> = {
  id: 'tried-orders',
  caption: 'What the house buys otherwise',
  named: 'product',
  rowId: ({ id }) => id,
  columns: [
    col.words('product', 'Product', ({ line: { name, option: id } }) => ({ text: name, place: { to: 'option', id } }), {
      width: 'words',
    }),
    col.words('part', 'Part', ({ line: { part } }) => (part === 'main' ? undefined : part), { under: 'product' }),
    col.quantity('before', 'As it stands', ({ before, line }) => amountOf(before, line)),
    col.quantity('after', 'With it', ({ after, line }) => amountOf(after, line)),
    col.unit('unit', 'Unit', ({ line: { unit } }) => unit, { width: 'fit' }),
    col.pack('packs', 'Bought as', ({ after }) => packsOf(after), { width: 'words' }),
    col.money('cost', 'In place with it', ({ after }) => after?.cost.total ?? (0 as Cents)),
  ],
};

function amountOf(order: PricedLine | undefined, { unit }: PricedLine): { amount: number; unit: string } {
  return { amount: order?.ordered ?? 0, unit };
}

function packsOf(order: PricedLine | undefined) {
  return order?.pack && { count: order.packs, ...order.pack, unit: order.unit };
}

export function ordersTable(from: LookUp, to: LookUp): HouseBlock {
  const [before, after] = [linesOf(from), linesOf(to)];
  const rows = [...new Set([...after.keys(), ...before.keys()])].flatMap((id): readonly TriedOrder[] => {
    const [was, is] = [before.get(id), after.get(id)];
    const line = is ?? was;
    if (!line || (was?.ordered === is?.ordered && was?.packs === is?.packs)) return [];
    return [{ id, line, ...(was && { before: was }), ...(is && { after: is }) }];
  });
  return layOut(table, rows, namesOf(to));
}

function linesOf(look: LookUp): ReadonlyMap<string, PricedLine> {
  return new Map(orderLines(look).map((line) => [`${line.option}-${line.part}-${line.supply}`, line]));
}
