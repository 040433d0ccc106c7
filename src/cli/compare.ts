import { Command } from 'commander';
import type { Book } from '../book/index.js';
import { printDay } from '../calendar/index.js';
import type { Comparison, SelectionChange } from '../compare/index.js';
import { loadComparison, onDisk } from '../load/index.js';
import { printProblems } from '../problem/index.js';
import { printMoney, printMoneyChange } from '../units/index.js';
import type { Console } from './console.js';
import { checkHouseDir, dayOf, withHouseOptions } from './house-options.js';
import type { HouseOptions } from './house-options.js';
import { signed } from './signed.js';
import { printTable } from './table.js';
import { UsageError } from './usage-error.js';

/** `bookmatch compare A [B]`: what changed between two versions and what it costs. */
export function compare(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('compare'))
    .description('show what changed between two versions of the house, and what it costs')
    .argument('<from>', 'a git version: a commit, a tag or a branch')
    .argument('[to]', 'a git version; without one, the records as they lie on disk')
    .option('--json', 'print as JSON')
    .action(async (from: string, to: string | undefined, options: HouseOptions & { json?: boolean }) => {
      const dir = checkHouseDir(options.house);
      const loaded = await loadComparison(dir, from, to ?? onDisk, dayOf(options.on, console));
      if (!loaded.ok && loaded.problems.length === 0) throw new UsageError(loaded.why);
      if (!loaded.ok) {
        console.error(printProblems(loaded.problems, { color: console.color, outcome: `${loaded.why}.` }));
        return done(1);
      }
      const { comparison } = loaded;
      if (options.json) console.out(`${JSON.stringify(comparison, null, 2)}\n`);
      else console.out(printComparison(comparison, loaded.to.book));
      done(0);
    });
}

function printComparison(comparison: Comparison, book: Book | undefined): string {
  const { from, to, rooms, priceBook, milestones, records } = comparison;
  const names = new Map(book?.categories.map((category) => [category.slug, category.name]));
  const parts = [
    `${from.label} → ${to.label}\n`,
    ...rooms.map((room) => {
      const kind = { added: ' (new room)', removed: ' (room taken out)', kept: '' }[room.kind];
      const renamed = room.renamedFrom === undefined ? '' : ` (was ${room.renamedFrom})`;
      return `${room.number} ${room.name}${kind}${renamed}\n\n${room.selections.length === 0 ? '' : printSelections(room.selections, names)}`;
    }),
    ...(priceBook.length === 0 ? [] : [`Price book\n\n${printPriceBook(comparison)}`]),
    ...(milestones.length === 0 ? [] : [`Milestones\n\n${printMilestones(comparison)}`]),
    printTotals(comparison),
    records.length === 0 ? 'No record differs.\n' : `${records.length} records differ.\n`,
  ];
  return parts.join('\n');
}

function printSelections(selections: readonly SelectionChange[], names: ReadonlyMap<string, string>): string {
  return printTable(selections, [
    { head: 'Place', align: 'left', text: (row) => row.placeText },
    { head: 'What', align: 'left', text: (row) => names.get(row.category) ?? row.category },
    { head: 'Was', align: 'left', text: (row) => row.from?.optionName ?? '—' },
    { head: 'Now', align: 'left', text: (row) => row.to?.optionName ?? '—' },
    { head: 'Quantity', align: 'left', text: quantityText },
    { head: 'Cost', align: 'right', text: (row) => printMoneyChange(row.cost) },
    {
      head: 'Pounds',
      align: 'right',
      text: (row) => (Math.round(row.pounds) === 0 ? '' : signed(Math.round(row.pounds))),
    },
    { head: 'Differs in', align: 'left', text: (row) => row.aspects.join(', ') },
  ]);
}

function quantityText({ quantities }: SelectionChange): string {
  return quantities
    .map(
      ({ part, unit, from, to }) => `${part === 'main' ? '' : `${part} `}${from.toFixed(1)} → ${to.toFixed(1)} ${unit}`,
    )
    .join('; ');
}

function printPriceBook({ priceBook }: Comparison): string {
  const rows = priceBook.flatMap(({ name, kind, renamedFrom, fields }) => {
    const first = kind === 'changed' ? [] : [{ name, field: kind, from: renamedFrom ?? '', to: '' }];
    return [...first, ...fields.map((field) => ({ name, ...field }))];
  });
  return printTable(rows, [
    { head: 'Option', align: 'left', text: (row) => row.name },
    { head: 'Field', align: 'left', text: (row) => row.field },
    { head: 'Was', align: 'right', text: (row) => row.from },
    { head: 'Now', align: 'right', text: (row) => row.to },
  ]);
}

function printMilestones({ milestones }: Comparison): string {
  return printTable(milestones, [
    { head: 'Milestone', align: 'left', text: (row) => row.name },
    { head: 'Was', align: 'right', text: (row) => (row.from === undefined ? '—' : printDay(row.from)) },
    { head: 'Now', align: 'right', text: (row) => (row.to === undefined ? '—' : printDay(row.to)) },
  ]);
}

function printTotals({ from, to, money }: Comparison): string {
  const rows = [
    { what: `Total, ${from.label}`, amount: printMoney(from.today) },
    ...(money.byChoice === undefined ? [] : [{ what: 'By choices', amount: printMoneyChange(money.byChoice) }]),
    ...(money.byPriceBook === undefined
      ? []
      : [{ what: 'By the price book', amount: printMoneyChange(money.byPriceBook) }]),
    { what: 'Difference', amount: printMoneyChange(money.difference) },
    { what: `Total, ${to.label}`, amount: printMoney(to.today) },
  ];
  return printTable(rows, [
    { head: 'Money', align: 'left', text: (row) => row.what },
    { head: '', align: 'right', text: (row) => row.amount },
  ]);
}
