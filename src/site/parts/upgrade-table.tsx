import type { VNode } from 'preact';
import type { BookSelection } from '../../book/index.js';
import type { Reckoning } from '../../price/index.js';
import { costParts } from '../../model/index.js';
import { joinWords } from '../../units/index.js';
import { useView } from '../sheet-context.js';
import { DataTable } from './data-table.js';
import type { Column } from './data-table.js';
import { MoneyCell } from './figures.js';
import { SelectionLink } from './link.js';

type Changing = BookSelection & { readonly reckoning: Reckoning };

/** Every choice that changes the contract beside the allowances, with the figures that lead to its change, by room. */
export function UpgradeTable(): VNode {
  const view = useView();
  const { money, rooms } = view.book;
  const changing = (selection: BookSelection): selection is Changing =>
    selection.change !== 0 && selection.reckoning !== undefined;
  const groups = rooms.flatMap((room) => {
    const rows = view.selectionsOf(room).filter(changing);
    return rows.length === 0 ? [] : [{ title: `${room.number} ${room.name}`, rows }];
  });
  if (groups.length === 0) return <p>No choice outside the allowances changes the contract.</p>;
  const anyRetained = groups.some(({ rows }) => rows.some(({ reckoning }) => reckoning.retained !== 0));
  return (
    <DataTable<Changing>
      id="upgrades"
      caption="Choices that change the contract outside the allowances"
      quietCaption
      rows={[]}
      groups={groups}
      columns={[
        {
          head: 'Choice, and what stands in the contract',
          names: true,
          foot: 'Upgrades less credits',
          cell: (selection) => (
            <>
              <SelectionLink selection={selection}>
                {selection.placeText}: {view.option(selection.category, selection.counted)?.name ?? 'none'}
              </SelectionLink>
              <span class="why under">
                {selection.standard === undefined
                  ? 'an extra: nothing stands for it'
                  : (view.option(selection.category, selection.standard)?.name ?? selection.standard)}
                {selection.reckoning.parts.length < costParts.length &&
                  `; ${joinWords(selection.reckoning.parts)} only, the allowance pays the rest`}
              </span>
            </>
          ),
        },
        { head: 'Chosen', numeric: true, cell: ({ reckoning }) => <MoneyCell cents={reckoning.counted} /> },
        { head: 'Standard', numeric: true, cell: ({ reckoning }) => <MoneyCell cents={reckoning.standard} /> },
        {
          head: 'Difference',
          numeric: true,
          cell: ({ reckoning }) => <MoneyCell cents={reckoning.difference} change />,
        },
        { head: 'Mark-up', numeric: true, cell: ({ reckoning }) => <MoneyCell cents={reckoning.markup} change /> },
        ...(anyRetained ? [retainedColumn] : []),
        {
          head: 'Change',
          numeric: true,
          cell: ({ change }) => <MoneyCell cents={change} change />,
          foot: <MoneyCell cents={money.net} change />,
        },
      ]}
    />
  );
}

/** Only where the contract keeps something of a credit. */
const retainedColumn: Column<Changing> = {
  head: 'Not returned',
  numeric: true,
  cell: ({ reckoning }) => <MoneyCell cents={reckoning.retained} change />,
};
