import { Command } from 'commander';
import { lookUp } from '../book/index.js';
import type { Book, LookUp } from '../book/index.js';
import { describeState, printDay, slipEffects, workingDays } from '../calendar/index.js';
import type { SlipEffects, Slips } from '../calendar/index.js';
import { bookCalendar } from '../export/index.js';
import { openHouse } from '../load/index.js';
import { parseDays } from '../units/index.js';
import type { Console } from './console.js';
import { checkHouseDir, dayOf, reportProblems, withHouseOptions } from './house-options.js';
import type { HouseOptions } from './house-options.js';
import { printTable } from './table.js';
import { signed } from './signed.js';
import { UsageError } from './usage-error.js';

interface CalendarOptions extends HouseOptions {
  readonly slip: readonly string[];
  readonly ics?: boolean;
  readonly sequence?: string;
  readonly json?: boolean;
}

/** `bookmatch calendar`: when each choice must be made, and what moves when a milestone slips. */
export function calendar(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('calendar'))
    .description('list decide-by dates; show what moves when a milestone slips')
    .option(
      '--slip <milestone=days>',
      'a milestone that comes later, such as framing=10d; may be given again',
      (text: string, all: string[]) => [...all, text],
      [],
    )
    .option('--ics', 'print an iCalendar file')
    .option(
      '--sequence <n>',
      'with --ics: the number by which calendar programs know a newer file (default: it grows with the day)',
    )
    .option('--json', 'print as JSON')
    .action(async (options: CalendarOptions) => {
      const slips = readSlips(options.slip);
      const sequence = readSequence(options);
      const open = openHouse(checkHouseDir(options.house));
      const house = await open.current();
      const on = dayOf(options.on, console);
      const recorded = open.compose(house, on);
      const slipped = slips.size === 0 ? recorded : open.compose(house, on, slips);
      reportProblems(recorded.book ? slipped : recorded, '', console);
      if (!recorded.book || !slipped.book) return done(1);
      console.out(options.ics ? bookCalendar(slipped.book, sequence) : print(recorded.book, slipped.book, options));
      done(0);
    });
}

/** `framing=10d` or `framing=2 weeks`, each milestone once. */
function readSlips(texts: readonly string[]): Slips {
  return new Map(
    texts.map((text) => {
      const [, milestone, sign, days] = /^([a-z0-9-]+)=([-−]?)(.+)$/.exec(text) ?? [];
      if (milestone === undefined || days === undefined)
        throw new UsageError(`--slip ${text}: write it as milestone=days, such as framing=10d`);
      const read = parseDays(days.replace(/^(\d+)d$/, '$1 days'));
      if (!read.ok) throw new UsageError(`--slip ${text}: ${read.why}`);
      return [milestone, sign ? -read.value : read.value] as const;
    }),
  );
}

/** Whole, and small enough for an INTEGER of iCalendar (RFC 5545, 3.3.8). */
function readSequence({ ics, sequence }: CalendarOptions): number | undefined {
  if (sequence === undefined) return undefined;
  if (!ics) throw new UsageError('--sequence goes with --ics');
  const number = Number(sequence);
  if (/^\d+$/.test(sequence) && number <= 2_147_483_647) return number;
  throw new UsageError(`--sequence ${sequence}: write a whole number from 0, higher than every one handed out before`);
}

function print(recorded: Book, slipped: Book, options: CalendarOptions): string {
  const effects = slipEffects(datesOf(recorded), datesOf(slipped), workingDays(recorded.calendar.rules));
  if (options.json) {
    const decisions = slipped.selections.map(({ id, decision }) => ({ id, ...decision }));
    return `${JSON.stringify({ milestones: slipped.calendar.milestones, decisions, moved: effects }, null, 2)}\n`;
  }
  return options.slip.length === 0 ? printDecisions(slipped) : printEffects(slipped, effects);
}

function datesOf(book: Book) {
  return { milestones: book.calendar.milestones, decisions: book.selections };
}

function printDecisions(book: Book): string {
  const look = lookUp(book);
  const rows = book.selections
    .filter((selection) => selection.state === 'open')
    .sort((a, b) => (a.decision.by < b.decision.by ? -1 : 1));
  const milestones = printTable(book.calendar.milestones, [
    { head: 'Milestone', align: 'left', text: (row) => row.name },
    { head: 'Day', align: 'right', text: (row) => printDay(row.date) },
    { head: 'Because', align: 'left', text: (row) => row.basis },
  ]);
  const decisions = printTable(rows, [
    { head: 'Decide by', align: 'right', text: (row) => printDay(row.decision.by) },
    { head: 'Room', align: 'left', text: (row) => look.roomTitle(row.room) },
    { head: 'Place', align: 'left', text: (row) => row.placeText },
    { head: 'What', align: 'left', text: (row) => look.categoryName(row.category) },
    { head: 'State', align: 'left', text: (row) => describeState(row.decision) },
  ]);
  return `${milestones}\nStill open\n\n${rows.length === 0 ? 'Nothing.\n' : decisions}`;
}

function printEffects(book: Book, { milestones, decisions }: SlipEffects): string {
  const moved = printTable(milestones, [
    { head: 'Milestone', align: 'left', text: (row) => row.name },
    { head: 'Was', align: 'right', text: (row) => printDay(row.from) },
    { head: 'Now', align: 'right', text: (row) => printDay(row.to) },
    { head: 'Working days', align: 'right', text: (row) => signed(row.days) },
  ]);
  const look = lookUp(book);
  const open = decisions.filter(({ id }) => look.selection(id)?.state === 'open');
  const decided = printTable(open, [
    { head: 'Decide by', align: 'left', text: ({ id }) => describe(look, id) },
    { head: 'Was', align: 'right', text: (row) => printDay(row.from) },
    { head: 'Now', align: 'right', text: (row) => printDay(row.to) },
    { head: 'Working days', align: 'right', text: (row) => signed(row.days) },
    {
      head: 'State',
      align: 'left',
      text: (row) => (row.stateFrom === row.stateTo ? row.stateTo : `${row.stateFrom} → ${row.stateTo}`),
    },
  ]);
  return `${moved}\n${open.length === 0 ? 'No open choice moves.\n' : decided}`;
}

function describe(look: LookUp, id: string): string {
  const selection = look.selection(id);
  if (!selection) return '';
  return `${look.roomTitle(selection.room)}, ${selection.placeText}: ${look.categoryName(selection.category)}`;
}
