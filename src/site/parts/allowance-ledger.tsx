import type { VNode } from 'preact';
import { lower } from '../../units/index.js';
import type { LedgerEntry } from '../../price/index.js';
import { anchorOf } from '../paths.js';
import { useView } from '../sheet-context.js';
import { AllowanceBar } from './allowance-bar.js';
import { DataTable } from './data-table.js';
import { MoneyCell } from './figures.js';
import { SelectionLink } from './link.js';
import { Phrase } from './prose.js';

/** One allowance: its bar, every choice that draws on it, and its figures one under the other, to tick. */
export function AllowanceLedger({ entry }: { entry: LedgerEntry }): VNode {
  const anchor = anchorOf('allowance', entry.id);
  return (
    <article class="ledger" id={anchor} aria-labelledby={`${anchor}-title`}>
      <h3 id={`${anchor}-title`}>{entry.name}</h3>
      <AllowanceBar entry={entry} />
      <p class="why">
        {entry.coversText} {entry.note !== undefined && <Phrase text={entry.note} />}
      </p>
      <DrawnTable entry={entry} anchor={anchor} />
      <DataTable<LedgerEntry['figures'][number]>
        id={`${anchor}-figures`}
        caption={`${entry.name}, figure by figure`}
        quietCaption
        rows={entry.figures}
        rowClass={({ what }) => (what === entry.figures.at(-1)?.what ? 'sum' : undefined)}
        columns={[
          {
            head: 'Figure',
            names: true,
            cell: ({ what, why }) => (
              <>
                {what} <span class="why under">{why}</span>
              </>
            ),
          },
          {
            head: 'Amount',
            numeric: true,
            cell: ({ what, amount }) => <MoneyCell cents={amount} change={what === entry.figures.at(-1)?.what} />,
          },
        ]}
      />
    </article>
  );
}

function DrawnTable({ entry, anchor }: { entry: LedgerEntry; anchor: string }): VNode {
  const view = useView();
  const finish = (line: LedgerEntry['lines'][number]): string => {
    if (line.open) return 'open';
    return line.option === undefined ? 'none' : (view.optionById(line.option)?.name ?? line.option);
  };
  return (
    <DataTable<LedgerEntry['lines'][number]>
      id={`${anchor}-lines`}
      caption={`What draws on ${entry.name}`}
      quietCaption
      rows={entry.lines}
      columns={[
        {
          head: 'Choice',
          names: true,
          foot: 'Together',
          cell: (line) => {
            const selection = view.selection(line.selection);
            return selection ? (
              <SelectionLink selection={selection}>
                {view.room(selection.room)?.name}: {lower(selection.placeText)}
              </SelectionLink>
            ) : (
              line.selection
            );
          },
        },
        {
          head: 'Finish, and what of it is drawn',
          class: 'wide-cell',
          cell: (line) => (
            <>
              {finish(line)} <span class="why under">{line.why}</span>
            </>
          ),
        },
        {
          head: 'Committed',
          numeric: true,
          cell: (line) => (line.open ? '' : <MoneyCell cents={line.covered} />),
          foot: <MoneyCell cents={entry.committed} />,
        },
        {
          head: 'Open, lowest',
          numeric: true,
          cell: (line) => (line.open ? <MoneyCell cents={line.low} /> : ''),
          foot: <MoneyCell cents={entry.openLow} />,
        },
        {
          head: 'Open, highest',
          numeric: true,
          cell: (line) => (line.open ? <MoneyCell cents={line.high} /> : ''),
          foot: <MoneyCell cents={entry.openHigh} />,
        },
      ]}
    />
  );
}
