import type { VNode } from 'preact';
import type { Total } from '../../book/index.js';
import { useView } from '../sheet-context.js';
import { DataTable } from './data-table.js';
import { MoneyCell } from './figures.js';

interface TotalTableProps {
  readonly id: string;
  readonly caption: string;
  readonly totals: readonly Total[];
  readonly name: (slug: string) => VNode | string | undefined;
}

/** One way to cut the cost of all finishes; its foot is the same in every one. */
export function TotalTable({ id, caption, totals, name }: TotalTableProps): VNode {
  const { finishes, net } = useView().book.money;
  return (
    <DataTable
      id={id}
      caption={caption}
      rows={totals.filter((total) => total.cost.total !== 0 || total.change !== 0)}
      columns={[
        { head: caption, names: true, cell: (total) => name(total.of), foot: 'All finishes' },
        {
          head: 'Material',
          numeric: true,
          cell: ({ cost }) => <MoneyCell cents={cost.material} />,
          foot: <MoneyCell cents={finishes.material} />,
        },
        {
          head: 'Freight',
          numeric: true,
          cell: ({ cost }) => <MoneyCell cents={cost.freight} />,
          foot: <MoneyCell cents={finishes.freight} />,
        },
        {
          head: 'Tax',
          numeric: true,
          cell: ({ cost }) => <MoneyCell cents={cost.tax} />,
          foot: <MoneyCell cents={finishes.tax} />,
        },
        {
          head: 'Labor',
          numeric: true,
          cell: ({ cost }) => <MoneyCell cents={cost.labor} />,
          foot: <MoneyCell cents={finishes.labor} />,
        },
        {
          head: 'Total',
          numeric: true,
          cell: ({ cost }) => <MoneyCell cents={cost.total} />,
          foot: <MoneyCell cents={finishes.total} />,
        },
        {
          head: 'Change',
          numeric: true,
          cell: ({ change }) => <MoneyCell cents={change} change />,
          foot: <MoneyCell cents={net} change />,
        },
      ]}
    />
  );
}
