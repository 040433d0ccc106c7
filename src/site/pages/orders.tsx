import type { VNode } from 'preact';
import type { Order } from '../../price/index.js';
import { countsWords } from '../../takeoff/index.js';
import { lower, printLength } from '../../units/index.js';
import { quantityText } from '../parts/arithmetic.js';
import { DataTable } from '../parts/data-table.js';
import { AmountCell, MoneyCell } from '../parts/figures.js';
import { OptionLink } from '../parts/link.js';
import { SupplyTable } from '../parts/supply-table.js';
import { OwnerMark } from '../parts/state-mark.js';
import { useView } from '../sheet-context.js';

/** What the whole house buys: pooled by option and part, in whole packs. */
export function OrdersPage(): VNode {
  const view = useView();
  const { trades, orders, supplies, money } = view.book;
  const groups = trades.flatMap((trade) => {
    const rows = orders.filter((order) => order.trade === trade.slug);
    return rows.length === 0 ? [] : [{ title: trade.name, rows }];
  });
  return (
    <>
      <h1>Order list</h1>
      <p class="lead">
        Each product is bought once for the whole house and rounded up once, so a bundle opened for one room serves the
        next. Open choices are counted with their standard.
      </p>
      <DataTable<Order>
        id="orders"
        caption="Orders by trade"
        quietCaption
        rows={[]}
        groups={groups}
        columns={[
          { head: 'Product', names: true, cell: (order) => <Product order={order} />, foot: 'All finishes' },
          { head: 'Places', numeric: true, cell: (order) => order.shares.length },
          { head: 'Net', numeric: true, cell: (order) => <AmountCell amount={order.net} /> },
          { head: 'Needed', numeric: true, cell: (order) => <AmountCell amount={order.required} /> },
          { head: 'Bought as', cell: (order) => <Pack order={order} /> },
          { head: 'Ordered', numeric: true, cell: (order) => <AmountCell amount={order.ordered} /> },
          { head: 'Unit', class: 'unit', cell: (order) => order.unit },
          {
            head: 'Material',
            numeric: true,
            cell: (order) => <MoneyCell cents={order.cost.material} />,
            foot: <MoneyCell cents={money.finishes.material} />,
          },
          {
            head: 'In place',
            numeric: true,
            cell: (order) => <MoneyCell cents={order.cost.total} />,
            foot: <MoneyCell cents={money.finishes.total} />,
          },
        ]}
      />
      {trades.map((trade) => (
        <SupplyTable
          id={`supplies-${trade.slug}`}
          title={`Supplies of ${lower(trade.name)}`}
          supplies={supplies.filter((supply) => supply.trade === trade.slug)}
        />
      ))}
    </>
  );
}

function Product({ order }: { order: Order }): VNode {
  const option = useView().optionById(order.option);
  return (
    <>
      {option ? <OptionLink option={option} /> : order.option}
      {order.part !== 'main' && `, ${order.part}`}
      {option && (
        <span class="maker">
          {' '}
          {option.maker} {option.model}
        </span>
      )}
      {order.supply === 'owner-furnished' && <OwnerMark />}
    </>
  );
}

function Pack({ order: { pack, packs, unit, stock, counts = [] } }: { order: Order }): VNode {
  const pieces = stock.map(({ count, length }) => `${count} × ${printLength(length)}`).join(', ');
  return (
    <>
      {pack ? `${packs} × ${pack.name} of ${quantityText(pack.holds, unit)}` : <span class="quiet">–</span>}
      {pieces !== '' && <span class="why"> {pieces}</span>}
      {counts.length > 0 && <span class="why"> {countsWords(counts)}</span>}
    </>
  );
}
