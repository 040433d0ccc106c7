import type { VNode } from 'preact';
import type { LedgerEntry } from '../../price/index.js';
import { printMoney } from '../../units/index.js';
import { anchorOf } from '../paths.js';
import { useView } from '../sheet-context.js';
import { AllowanceBar } from './allowance-bar.js';
import { DataTable } from './data-table.js';
import { Facts } from './facts.js';
import { MoneyCell } from './figures.js';
import { SelectionLink } from './link.js';
import { Phrase } from './prose.js';
import { joinWords, lower } from './words.js';

/** One allowance: its bar, its figures, and every choice that draws on it. */
export function AllowanceLedger({ entry }: { entry: LedgerEntry }): VNode {
  const view = useView();
  const anchor = anchorOf('allowance', entry.id);
  return (
    <article class="ledger" id={anchor} aria-labelledby={`${anchor}-title`}>
      <h3 id={`${anchor}-title`}>{entry.name}</h3>
      <AllowanceBar entry={entry} />
      <Facts
        facts={[
          { label: 'Allowance', value: printMoney(entry.amount) },
          entry.basis !== 'lump sum' && { label: 'Which is', value: entry.basis },
          { label: 'Committed', value: printMoney(entry.committed) },
          entry.openHigh > 0 && {
            label: 'Still open',
            value: `${printMoney(entry.openLow)} to ${printMoney(entry.openHigh)}`,
          },
          entry.balance < 0
            ? { label: 'Over', value: printMoney(entry.overage) }
            : { label: 'Left', value: printMoney(entry.balance) },
          entry.markup !== 0 && { label: 'Mark-up on it', value: printMoney(entry.markup) },
          entry.credit !== 0 && { label: 'Returns to the owner', value: printMoney(entry.credit) },
          {
            label: 'State',
            value: entry.settled ? 'settled: every choice on it is made' : 'open: it moves the contract only when over',
          },
        ]}
      />
      <p class="why">
        Covers {joinWords(entry.covers)}. {entry.note !== undefined && <Phrase text={entry.note} />}
      </p>
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
            head: 'Finish',
            cell: (line) =>
              line.open
                ? 'open'
                : line.option === undefined
                  ? 'none'
                  : (view.optionById(line.option)?.name ?? line.option),
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
    </article>
  );
}
