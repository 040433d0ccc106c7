import type { VNode } from 'preact';
import type { BookRoom, BookSelection } from '../../book/index.js';
import { quantitiesOfRoom, quantityLines, roomSupplies } from '../../table/index.js';
import { TableHtml } from '../../write/index.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';
import { DataTable } from './data-table.js';
import { MoneyCell } from './figures.js';

/** What a room needs and what that costs, with the options that are counted today. */
export function RoomQuantities({ room, selections }: { room: BookRoom; selections: readonly BookSelection[] }): VNode {
  const { view, path } = useSheet();
  const links = placeLinks(view, path);
  const lines = quantityLines(view).filter((line) => line.room === room.slug);
  return (
    <section aria-labelledby="quantities-title">
      <h2 id="quantities-title">Quantities</h2>
      <TableHtml table={quantitiesOfRoom(room.name, lines, view)} links={links} />
      {room.supplies && room.supplies.length > 0 && <TableHtml table={roomSupplies(room, view)} links={links} />}
      <DataTable
        id="costs-table"
        caption={`What the finishes of ${room.name} cost`}
        rows={selections.filter((selection) => selection.counted !== undefined)}
        columns={[
          {
            head: 'Finish',
            names: true,
            cell: (selection) => view.option(selection.category, selection.counted)?.name,
            foot: 'Room',
          },
          {
            head: 'Material',
            numeric: true,
            cell: ({ cost }) => <MoneyCell cents={cost.material} />,
            foot: <MoneyCell cents={room.cost.material} />,
          },
          {
            head: 'Freight',
            numeric: true,
            cell: ({ cost }) => <MoneyCell cents={cost.freight} />,
            foot: <MoneyCell cents={room.cost.freight} />,
          },
          {
            head: 'Tax',
            numeric: true,
            cell: ({ cost }) => <MoneyCell cents={cost.tax} />,
            foot: <MoneyCell cents={room.cost.tax} />,
          },
          {
            head: 'Labor',
            numeric: true,
            cell: ({ cost }) => <MoneyCell cents={cost.labor} />,
            foot: <MoneyCell cents={room.cost.labor} />,
          },
          {
            head: 'Total',
            numeric: true,
            cell: ({ cost }) => <MoneyCell cents={cost.total} />,
            foot: <MoneyCell cents={room.cost.total} />,
          },
          {
            head: 'Change',
            numeric: true,
            cell: ({ change }) => <MoneyCell cents={change} change />,
            foot: <MoneyCell cents={room.change} change />,
          },
        ]}
      />
    </section>
  );
}
