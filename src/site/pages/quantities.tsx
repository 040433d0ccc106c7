import type { VNode } from 'preact';
import { quantityLines } from '../../table/index.js';
import { DataTable } from '../parts/data-table.js';
import { PageLink } from '../parts/link.js';
import { pagePaths, tradePath } from '../paths.js';
import { useView } from '../sheet-context.js';

/** Which trade measures how much, each on a page of its own. */
export function QuantitiesPage(): VNode {
  const view = useView();
  const lines = quantityLines(view);
  const rows = view.book.trades.flatMap((trade) => {
    const own = lines.filter((line) => line.trade === trade.slug);
    const all = (of: 'room' | 'selection' | 'option' | 'category') => new Set(own.map((line) => line[of]));
    return own.length === 0 ? [] : [{ trade, all }];
  });
  const kinds = (slugs: ReadonlySet<string>): string =>
    view.book.categories
      .filter(({ slug }) => slugs.has(slug))
      .map(({ name }) => name)
      .join(', ');
  return (
    <>
      <h1>Quantities by trade</h1>
      <p class="lead">
        What each trade measures and installs, with the rule beside every number. Net is what is covered; then come
        coats and waste.
      </p>
      <DataTable
        id="quantities-by-trade"
        caption="Trades, and what is measured for them"
        quietCaption
        rows={rows}
        rowId={({ trade }) => `trade-${trade.slug}`}
        columns={[
          {
            head: 'Trade',
            names: true,
            cell: ({ trade }) => <PageLink to={tradePath(trade)}>{trade.name}</PageLink>,
          },
          { head: 'Kinds of finish', cell: ({ all }) => kinds(all('category')) },
          { head: 'Rooms', numeric: true, cell: ({ all }) => all('room').size },
          { head: 'Places', numeric: true, cell: ({ all }) => all('selection').size },
          { head: 'Options', numeric: true, cell: ({ all }) => all('option').size },
        ]}
      />
      <p>
        What is bought of it, in packs and lots: <PageLink to={pagePaths.orders}>Order list</PageLink>.
      </p>
    </>
  );
}
