import { existsSync } from 'node:fs';
import { lookUp, type Book, type BookIssue, type LookUp } from '../core/book/index.js';
import { printableJson } from '../base/problem/index.js';
import { joinWords, printDay, shortDigest } from '../base/units/index.js';
import { issueOnPages, printedDigest, sheetStanding, type SheetStanding } from '../signoff/index.js';
import { printedText } from '../signoff/verify/index.js';
import type { Console } from './console.js';
import { loadFor, reportProblems } from './house-options.js';
import { UsageError } from './usage-error.js';

/** The digits of a digest that was typed from a sheet of paper; undefined where a file was named. */
export function typedDigest(named: string): string | undefined {
  return existsSync(named) ? undefined : printedDigest(named);
}

interface Asked {
  readonly house: string | undefined;
  readonly console: Console;
  readonly json?: boolean;
}

/** Tells by the digest on a sheet whether it is of the issue that counts. Answers the exit code: 0 where it is. */
export async function verifyDigest(digest: string, asked: Asked): Promise<number> {
  const book = await bookFor(asked);
  if (!book) return 1;
  return tell({ name: shortDigest(digest) }, sheetStanding(book, digest), lookUp(book), asked);
}

/** Tells the same of a handout's PDF, by what is printed on its pages, for its trade. `data`: the attached `handout.json`. */
export async function verifyHandout(
  file: string,
  { pdf, data }: { readonly pdf: Uint8Array; readonly data: Uint8Array },
  asked: Asked,
): Promise<number> {
  const book = await bookFor(asked);
  if (!book) return 1;
  const pages = printedText(pdf) ?? [];
  const issue = pages.length === 0 ? undefined : issueOnPages(book, pages);
  const trade = tradeIn(data);
  if (!issue) {
    asked.console.out(`${file}: the digest of no issue of the house is printed on its pages.\n`);
    return 1;
  }
  return tell(
    { name: file, ...(trade !== undefined && { trade }) },
    sheetStanding(book, issue.digest),
    lookUp(book),
    asked,
  );
}

function tradeIn(data: Uint8Array): string | undefined {
  try {
    const { cover } = JSON.parse(new TextDecoder().decode(data)) as { cover?: { trade?: { slug?: unknown } } };
    return typeof cover?.trade?.slug === 'string' ? cover.trade.slug : undefined;
  } catch {
    return undefined;
  }
}

async function bookFor({ house, console }: Asked): Promise<Book | undefined> {
  if (house === undefined)
    throw new UsageError('a sheet is held against the issues of its house: name the house folder with --house');
  const { book, problems } = await loadFor({ house }, console);
  if (!book) reportProblems({ problems }, 'Nothing can be said of the sheet.', console);
  return book;
}

interface Sheet {
  readonly name: string;
  /** The one whose sheet it is; without one, all are told of. */
  readonly trade?: string;
}

function tell({ name, trade }: Sheet, standing: SheetStanding, look: LookUp, { console, json }: Asked): number {
  const { issue, current, changed } = standing;
  const isCurrent = issue !== undefined && issue.number === current?.number;
  if (json === true) {
    const told = { issue: issue?.number, current: current?.number, trade, changed, toCome: standing.toCome };
    console.out(`${printableJson(told)}\n`);
    return isCurrent ? 0 : 1;
  }
  if (!issue) {
    console.out(`${name}: no issue of ${look.book.house.name} has this digest.\n`);
    return 1;
  }
  console.out(`${name}: ${issueWords(issue)}${isCurrent ? ', the current one' : ''}.\n`);
  if (issue.void) console.out(`It was voided on ${printDay(issue.void.on)}: ${issue.void.why}\n`);
  if (!isCurrent) console.out(`${current ? `Superseded by ${issueWords(current)}` : 'No issue counts today'}.\n`);
  if (!isCurrent && current) console.out(changedWords(changed, look, trade));
  const toCome = standing.toCome.filter((slug) => trade === undefined || slug === trade);
  if (isCurrent && toCome.length > 0)
    console.out(`The records say otherwise since, for ${namesOf(toCome, look)}: ask the builder for the next issue.\n`);
  console.out('This is told by the digest on it: that nothing else on it was changed is not proven.\n');
  return isCurrent ? 0 : 1;
}

function issueWords({ number, purpose, date }: BookIssue): string {
  return `issue ${number} for ${purpose}, ${printDay(date)}`;
}

function changedWords(changed: readonly string[], look: LookUp, trade: string | undefined): string {
  if (trade !== undefined) {
    const is = changed.includes(trade) ? 'is another' : 'is the same';
    return `What ${look.tradeName(trade)} builds ${is} there.\n`;
  }
  return changed.length === 0
    ? 'What each trade builds is the same there.\n'
    : `What is built there is another for ${namesOf(changed, look)}.\n`;
}

function namesOf(slugs: readonly string[], look: LookUp): string {
  return joinWords(slugs.map((slug) => look.tradeName(slug)));
}
