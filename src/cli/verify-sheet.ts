import { existsSync } from 'node:fs';
import { lookUp, type Book } from '../core/book/index.js';
import { printableJson } from '../base/problem/index.js';
import { shortDigest } from '../base/units/index.js';
import { changeOrderOf, issueOnPages, printedDigest, sheetStanding } from '../signoff/index.js';
import { printedText } from '../signoff/verify/index.js';
import type { Console } from './console.js';
import { loadFor, reportProblems } from './house-options.js';
import { changeOrderAnswer, notProven, sheetAnswer, type SheetAnswer } from './sheet-answer.js';
import { UsageError } from './usage-error.js';

/** The digits of a digest that was typed from a sheet of paper; undefined where a file was named. */
export function typedDigest(named: string): string | undefined {
  return existsSync(named) ? undefined : printedDigest(named);
}

/** Of which house it is asked, and how it is answered. */
export interface AskedOf {
  readonly house: string | undefined;
  readonly console: Console;
  readonly json?: boolean;
}

/** Tells by the digest on a sheet whether it is of the issue that counts, or of a change order as it is recorded. Answers the exit code: 0 where it is. */
export async function verifyDigest(digest: string, asked: AskedOf): Promise<number> {
  const book = await bookFor(asked);
  if (!book) return 1;
  const [name, standing, look] = [shortDigest(digest), sheetStanding(book, digest), lookUp(book)];
  const order = standing.issue ? undefined : changeOrderOf(book, { digest });
  return tell(order ? changeOrderAnswer(name, order) : sheetAnswer({ name }, standing, look), asked);
}

/** Tells the same of a handout's PDF, by what is printed on its pages, for its trade. `data`: the attached `handout.json`. */
export async function verifyHandout(
  file: string,
  { pdf, data }: { readonly pdf: Uint8Array; readonly data: Uint8Array },
  asked: AskedOf,
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
  const sheet = { name: file, ...(trade !== undefined && { trade }) };
  return tell(sheetAnswer(sheet, sheetStanding(book, issue.digest), lookUp(book)), asked);
}

function tradeIn(data: Uint8Array): string | undefined {
  try {
    const { cover } = JSON.parse(new TextDecoder().decode(data)) as { cover?: { trade?: { slug?: unknown } } };
    return typeof cover?.trade?.slug === 'string' ? cover.trade.slug : undefined;
  } catch {
    return undefined;
  }
}

/** The Book of the house that a sheet is held against; undefined where its records have errors, which are told. */
export async function bookFor({ house, console }: AskedOf): Promise<Book | undefined> {
  if (house === undefined)
    throw new UsageError('a sheet is held against the issues of its house: name the house folder with --house');
  const { book, problems } = await loadFor({ house }, console);
  if (!book) reportProblems({ problems }, 'Nothing can be said of the sheet.', console);
  return book;
}

function tell({ isCurrent, isKnown, words, facts }: SheetAnswer, { console, json }: AskedOf): number {
  if (json === true) console.out(`${printableJson(facts)}\n`);
  else console.out(isKnown ? `${words}${notProven}` : words);
  return isCurrent ? 0 : 1;
}
