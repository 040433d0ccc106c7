import type { VNode } from 'preact';
import type { BookSelection, BookTrade } from '../../core/book/index.js';
import { lower, type Cents } from '../../base/units/index.js';
import { DataTable } from '../parts/data-table.js';
import { Day, MoneyCell } from '../parts/figures.js';
import { PageLink } from '../parts/link.js';
import { pagePaths, tradePath } from '../paths.js';
import { useView } from '../sheet-context.js';

/** Who works here, where, on what, what they wait for, and what they are handed. */
export function TradesPage(): VNode {
  const { book, beside } = useView();
  const rows = book.trades.map((trade) => {
    const own = book.selections.filter((selection) => selection.trade === trade.slug);
    return { trade, own, open: own.filter(({ state }) => state === 'open') };
  });
  const finishesOf = ({ slug }: BookTrade): Cents =>
    book.money.byTrade.find((total) => total.of === slug)?.cost.total ?? (0 as Cents);
  return (
    <>
      <h1>Trades</h1>
      <p class="lead">
        Each trade is handed its own part of the book, without any money: drawings, quantities, schedules and
        specification.
      </p>
      <DataTable
        id="trades-table"
        caption="Trades, their rooms and what is open for them"
        quietCaption
        cards
        rows={rows}
        columns={[
          { head: 'Trade', names: true, cell: ({ trade }) => <HandoutLink trade={trade} /> },
          {
            head: 'Handout',
            cell: ({ trade: { slug } }) =>
              beside.handouts === undefined ? 'not written' : <a href={`${beside.handouts}${slug}/${slug}.pdf`}>PDF</a>,
          },
          {
            head: 'Quantities',
            cell: ({ trade }) => (
              <PageLink to={tradePath(trade)}>
                Quantities<span class="for-the-ear"> of {lower(trade.name)}</span>
              </PageLink>
            ),
          },
          { head: 'Rooms', numeric: true, cell: ({ own }) => new Set(own.map(({ room }) => room)).size },
          { head: 'Choices', numeric: true, cell: ({ own }) => own.length },
          { head: 'Open', numeric: true, cell: ({ open }) => (open.length === 0 ? '–' : open.length) },
          { head: 'The first is due', cell: ({ open }) => <FirstDue open={open} /> },
          { head: 'Finishes in place', numeric: true, cell: ({ trade }) => <MoneyCell cents={finishesOf(trade)} /> },
        ]}
      />
      <p>
        Who does which layer of which place, and what nobody does: <PageLink to={pagePaths.scope}>Scope</PageLink>.
      </p>
    </>
  );
}

function HandoutLink({ trade: { slug, name } }: { trade: BookTrade }): VNode {
  const { handouts } = useView().beside;
  return handouts === undefined ? <>{name}</> : <a href={`${handouts}${slug}/index.html`}>{name}</a>;
}

function FirstDue({ open }: { open: readonly BookSelection[] }): VNode {
  const [first] = open.map(({ decision }) => decision.by).sort();
  return first === undefined ? <>–</> : <Day day={first} />;
}
