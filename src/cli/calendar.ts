import { Command, Option } from 'commander';
import { lookUp, type Book, type LookUp } from '../core/book/index.js';
import { slipEffects, workingDays, type SlipEffects, type Slips } from '../core/calendar/index.js';
import { bookCalendar, blocksText, tableText } from '../write/index.js';
import { openHouse } from '../disk/load/index.js';
import { calendarBlocks, movedDecisions, movedMilestones } from '../table/index.js';
import { parseDays, speakAs } from '../base/units/index.js';
import { printableJson } from '../base/problem/index.js';
import type { Console } from './console.js';
import {
  checkHouseDir,
  dayOf,
  reportBriefly,
  reportProblems,
  withHouseOptions,
  type HouseOptions,
} from './house-options.js';
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
    .addOption(new Option('--json', 'print as JSON').conflicts('ics'))
    .action(async (options: CalendarOptions) => {
      const slips = readSlips(options.slip);
      const sequence = readSequence(options);
      const open = openHouse(checkHouseDir(options.house));
      const house = await open.current();
      const on = dayOf(options.on, console);
      const recorded = open.compose(house, on);
      const slipped = slips.size === 0 ? recorded : open.compose(house, on, slips);
      // What a slip does is told by nothing else.
      const report = slips.size === 0 ? reportBriefly : reportProblems;
      report(recorded.book ? slipped : recorded, '', console);
      if (!recorded.book || !slipped.book) return done(1);
      speakAs(recorded.book.house);
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
    return `${printableJson({ milestones: slipped.calendar.milestones, decisions, moved: effects })}\n`;
  }
  const look = lookUp(slipped);
  return options.slip.length === 0 ? blocksText(calendarBlocks(look)) : printEffects(look, effects);
}

function datesOf(book: Book) {
  return { milestones: book.calendar.milestones, decisions: book.selections };
}

function printEffects(look: LookUp, { milestones, decisions }: SlipEffects): string {
  const moved = tableText(movedMilestones(milestones));
  const open = movedDecisions(decisions, look);
  return `${moved}\n${open.groups.length === 0 ? 'No open choice moves.\n' : tableText(open)}`;
}
