import type { VNode } from 'preact';
import type { BookRoom, BookSelection } from '../../book/index.js';
import { roomSupplies } from '../../table/index.js';
import { TableHtml } from '../../write/index.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';
import { DataTable } from './data-table.js';
import { AmountCell, MoneyCell } from './figures.js';

interface QuantityLine {
  readonly selection: BookSelection;
  readonly takeoff: BookSelection['takeoff'][number];
}

/** What a room needs and what that costs, with the options that are counted today. */
export function RoomQuantities({ room, selections }: { room: BookRoom; selections: readonly BookSelection[] }): VNode {
  const { view, path } = useSheet();
  const links = placeLinks(view, path);
  const lines = selections.flatMap((selection) =>
    selection.takeoff.map((takeoff): QuantityLine => ({ selection, takeoff })),
  );
  return (
    <section aria-labelledby="quantities-title">
      <h2 id="quantities-title">Quantities</h2>
      <DataTable<QuantityLine>
        id="quantities-table"
        caption={`What ${room.name} needs, with what is counted today`}
        rows={lines}
        columns={[
          {
            head: 'Finish',
            names: true,
            cell: ({ selection, takeoff }) => {
              const option = view.option(selection.category, selection.counted);
              return `${option?.name ?? selection.category}${takeoff.part === 'main' ? '' : `, ${takeoff.part}`}`;
            },
          },
          { head: 'Place', cell: ({ selection }) => selection.placeText },
          { head: 'Net', numeric: true, cell: ({ takeoff }) => <AmountCell amount={takeoff.net} /> },
          { head: 'Waste, %', numeric: true, cell: ({ takeoff }) => <AmountCell amount={takeoff.waste.percent} /> },
          { head: 'Needed', numeric: true, cell: ({ takeoff }) => <AmountCell amount={takeoff.required} /> },
          { head: 'Unit', class: 'unit', cell: ({ takeoff }) => takeoff.unit },
          { head: 'Rule', class: 'rule-cell', cell: ({ takeoff }) => takeoff.rule },
        ]}
      />
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
