import type { VNode } from 'preact';
import { roomNumbers, roomWords } from '../../export/index.js';
import type { SupplyOrder } from '../../takeoff/index.js';
import { printAmount } from '../../units/index.js';
import { useView } from '../sheet-context.js';
import { DataTable } from './data-table.js';
import { AmountCell } from './figures.js';

/** What is used up with the finishes. Packs are opened for the house; in a room they are left out. */
export function SupplyTable({
  id,
  title,
  supplies,
}: {
  id: string;
  title: string;
  supplies: readonly SupplyOrder[];
}): VNode | null {
  const view = useView();
  if (supplies.length === 0) return null;
  const packed = supplies.some(({ packs }) => packs !== undefined);
  return (
    <>
      <DataTable<SupplyOrder>
        id={id}
        caption={title}
        rows={supplies}
        columns={[
          { head: 'Supply', names: true, cell: ({ what }) => what },
          { head: 'Net', numeric: true, cell: ({ net }) => <AmountCell amount={net} /> },
          { head: 'With waste', numeric: true, cell: ({ required }) => <AmountCell amount={required} /> },
          { head: 'Unit', class: 'unit', cell: ({ unit }) => unit },
          ...(packed
            ? [
                { head: 'Bought as', cell: (supply: SupplyOrder) => <Packs supply={supply} /> },
                {
                  head: 'Rooms',
                  cell: ({ shares }: SupplyOrder) => (
                    <span class="why">{roomWords(roomNumbers(view.book, shares))}</span>
                  ),
                },
              ]
            : []),
          { head: 'Source', cell: ({ sources }) => <span class="why">{sources.join('; ')}</span> },
        ]}
      />
      <p class="why">
        Supplies carry no price of their own: the rate in place of the finish covers them. The installer confirms before
        ordering.
      </p>
    </>
  );
}

function Packs({ supply: { packs, pack, unit } }: { supply: SupplyOrder }): VNode {
  return pack && packs !== undefined ? (
    <>
      {packs} × {pack.name} of {printAmount(pack.holds, 2)} {unit}
    </>
  ) : (
    <span class="quiet">–</span>
  );
}
