import type { VNode } from 'preact';
import type { LedgerEntry } from '../../core/price/index.js';
import { numberText } from '../../base/svg/index.js';
import { printMoney, printMoneyChange, wholeMoney, type Cents } from '../../base/units/index.js';
import { wholeRange } from '../../table/index.js';
import { allowancePath } from '../paths.js';
import { useView } from '../sheet-context.js';
import { DataTable } from './data-table.js';
import { PageLink } from './link.js';

/** Every allowance on one scale: what is chosen, what is open, and what that makes of the contract. In whole units of money: to see, not to tick. */
export function AllowanceTable(): VNode | null {
  const { book } = useView();
  const { allowances } = book.money;
  if (allowances.length === 0) return null;
  const most = mostOf(allowances);
  const whole = (cents: Cents): string => printMoney(wholeMoney(cents));
  return (
    <section class="allowances" aria-labelledby="allowances-title">
      <h2 id="allowances-title">Allowances</h2>
      <DataTable
        id="allowances-table"
        caption="Allowances, what is chosen of each and what is open"
        quietCaption
        rows={allowances}
        columns={[
          {
            head: 'Allowance',
            names: true,
            cell: ({ id, name }) => <PageLink to={allowancePath({ id })}>{name}</PageLink>,
          },
          { head: 'Amount', numeric: true, cell: ({ amount }) => whole(amount) },
          { head: 'Chosen', numeric: true, cell: ({ committed }) => (committed === 0 ? '–' : whole(committed)) },
          {
            head: 'Open, low to high',
            numeric: true,
            cell: ({ openLow, openHigh }) =>
              openHigh === 0
                ? 'none'
                : openLow === openHigh
                  ? whole(openLow)
                  : `${whole(openLow)} to ${whole(openHigh)}`,
          },
          { head: 'Contract', numeric: true, cell: (entry) => moves(entry, book.decisions) },
          { head: <Scale most={most} />, class: 'scale', cell: (entry) => <AllowanceLine entry={entry} most={most} /> },
        ]}
      />
      <ul class="bar-key">
        <li>
          <span class="key-mark key-chosen" /> chosen
        </li>
        <li>
          <span class="key-mark key-open" /> open, at the lowest
        </li>
        <li>
          <span class="key-mark key-high" /> up to the highest
        </li>
        <li>
          <span class="key-mark key-amount" /> the allowance
        </li>
        <li>Contract: what it moves the contract by, with mark-up; against today while something is open.</li>
      </ul>
    </section>
  );
}

/** What an allowance moves the contract by: once all on it is chosen, its own last figure; else the decision that settles it. */
function moves(entry: LedgerEntry, decisions: ReturnType<typeof useView>['book']['decisions']): string {
  const open = decisions.find(({ allowance }) => allowance === entry.id);
  if (open) return wholeRange({ low: open.low.change, high: open.high.change });
  const change = entry.figures.at(-1)?.amount ?? (0 as Cents);
  return entry.settled && change !== 0 ? printMoneyChange(wholeMoney(change)) : '–';
}

function Scale({ most }: { most: number }): VNode {
  return (
    <span class="scale-ends">
      <span>{printMoney(0 as Cents)}</span> <span>{printMoney(wholeMoney(most as Cents))}</span>
    </span>
  );
}

/** The end of the scale that all allowances share. */
export function mostOf(allowances: readonly LedgerEntry[]): number {
  return Math.max(...allowances.map(({ amount, committed, openHigh }) => Math.max(amount, committed + openHigh)), 1);
}

/** An allowance as a bar: what is chosen, what is open, and a line where it ends. The figures stand beside it. */
export function AllowanceLine({
  entry: { amount, committed, openLow, openHigh },
  most,
}: {
  entry: LedgerEntry;
  most: number;
}): VNode {
  const share = (cents: number): string => `${numberText((99 * cents) / most, 2)}%`;
  return (
    <svg class="allowance-line" width="100%" height="16" aria-hidden="true" focusable="false">
      <path class="move-axis" d="M0 8H2000" />
      {openHigh > 0 && <rect class="line-high" x={share(committed)} y="4" width={share(openHigh)} height="8" />}
      {openLow > 0 && <rect class="line-open" x={share(committed)} y="4" width={share(openLow)} height="8" />}
      {committed > 0 && <rect class="line-chosen" x="0" y="4" width={share(committed)} height="8" />}
      <line class="line-amount" x1={share(amount)} x2={share(amount)} y1="0" y2="16" />
    </svg>
  );
}
