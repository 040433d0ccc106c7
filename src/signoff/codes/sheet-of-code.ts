import { readCodeAddress, type CodeSays } from '../../core/book/index.js';
import { printable } from '../../base/problem/index.js';
import { read, unread, type Reading } from '../../base/units/index.js';
import { tradeAt } from '../../handout/index.js';
import { decodeSlip } from '../../slip/index.js';

/** The sheet of paper that a code is of, by what the code says. */
export interface SheetOfCode {
  /** Slug of the trade whose handout it is of, as the code has it: the house may have no such trade. */
  readonly trade: string;
  /** Absent of what was not issued. */
  readonly stamp?: CodeSays['stamp'];
}

/** Which sheet of the house has a code with this text, whatever somebody wrote into it. Why there is none is half a sentence that follows 'its code'. */
export function sheetOfCode(text: string, { site }: { readonly site?: string }): Reading<SheetOfCode> {
  const says = readCodeAddress(text);
  if (!says) return decodeSlip(text).ok ? isSlip : unread(`is that of no printed sheet, and says ${quoted(text)}`);
  if (site === undefined || !says.page.startsWith(`${site}/`)) return elsewhere(says, site);
  const trade = tradeAt(says.page.slice(site.length + 1));
  if (trade === undefined || says.of !== 'issue') return unread(`leads to a page that has no sheets: ${quoted(text)}`);
  return read({ trade, ...(says.stamp && { stamp: says.stamp }) });
}

const isSlip = unread('is a choice slip', 'hand its text to bookmatch choose');

function elsewhere({ page }: CodeSays, site: string | undefined): Reading<never> {
  const here = site === undefined ? 'and this house names no site' : `and this house's site is ${site}`;
  return unread(
    `leads to ${quoted(page)}, ${here}`,
    'the sheet is of another house, or of before the site moved: its digest can be typed',
  );
}

const mostLetters = 90;

/** What a stranger wrote, in one line. */
function quoted(text: string): string {
  const letters = [...printable(text)];
  return `'${letters.slice(0, mostLetters).join('')}${letters.length > mostLetters ? '…' : ''}'`;
}
