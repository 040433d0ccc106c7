import { readCodeAddress, type CodeSays } from '../../core/book/index.js';
import { printable } from '../../base/problem/index.js';
import { read, unread, type Reading } from '../../base/units/index.js';
import { tradeAt } from '../../handout/index.js';
import { decodeSlip } from '../../slip/index.js';
import { isAgreedAt } from '../../where/index.js';

/** The sheet of paper that a code is of, by what the code says. */
export interface SheetOfCode {
  readonly of: 'handout' | 'book' | 'change order';
  /** Of a handout: the slug of its trade, as the code has it. The house may have no such trade. */
  readonly trade?: string;
  /** Absent of what was not issued. */
  readonly stamp?: CodeSays['stamp'];
}

/** Which sheet of the house has a code with this text, whatever somebody wrote into it. Why there is none is half a sentence that follows 'its code'. */
export function sheetOfCode(text: string, { site }: { readonly site?: string }): Reading<SheetOfCode> {
  const says = readCodeAddress(text);
  if (!says) return decodeSlip(text).ok ? isSlip : unread(`is that of no printed sheet, and says ${quoted(text)}`);
  if (site === undefined || !says.page.startsWith(`${site}/`)) return elsewhere(says, site);
  const path = says.page.slice(site.length + 1);
  const trade = tradeAt(path);
  const stamp = says.stamp && { stamp: says.stamp };
  if (isAgreedAt(path)) return read({ of: says.of === 'issue' ? 'book' : 'change order', ...stamp });
  if (trade !== undefined && says.of === 'issue') return read({ of: 'handout', trade, ...stamp });
  return unread(`leads to a page that has no sheets: ${quoted(text)}`);
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
