import { printable } from '../../base/problem/index.js';
import { counted, printDay } from '../../base/units/index.js';
import { decodeSlip, whyNotOf, type Slip } from '../../slip/index.js';

/** A slip that lies on the page. */
export interface LaidSlip {
  readonly slip: Slip;
  readonly line: string;
  /** Who made it, without signs that would turn text about, and no longer than a name is. */
  readonly by: string;
  /** Was it made from the records of these pages? */
  readonly isOfThese: boolean;
}

export type SlipRead = { readonly ok: true; readonly laid: LaidSlip } | { readonly ok: false; readonly words: string };

/** Far more than a mail with a slip in it. */
export const mostLetters = 1_000_000;

/** Letters of a name that are shown. */
const longestName = 80;

const wholeAgain = 'Ask for the slip again, whole: its code line goes from slip1: to the point.';

/** The slip in a text, or sentences that say why there is none and what to do. */
export function readSlip(
  text: string,
  { number, snapshot }: { readonly number: string; readonly snapshot: string },
): SlipRead {
  if (text.trim() === '') return unread('there is nothing in it', 'Paste the slip first, or open its file.');
  if (text.length > mostLetters) return unread('it is longer than any slip', 'Paste the message with the slip alone.');
  const read = decodeSlip(text);
  if (!read.ok) return unread(read.why, read.why.includes('several') ? 'Paste and read one at a time.' : wholeAgain);
  const { slip, line } = read;
  const why = whyNotOf(slip, number);
  if (why !== undefined) return unread(printable(why), 'Open it in the book of that house.');
  const isOfThese = slip.snapshot !== '' && snapshot.startsWith(slip.snapshot);
  return { ok: true, laid: { slip, line, by: printable(slip.by).slice(0, longestName), isOfThese } };
}

/** `Anna, 20 April 2026: 3 choices` */
export function slipTitle({ by, slip: { on, choices } }: LaidSlip): string {
  return `${by}, ${printDay(on)}: ${counted(choices.length, 'choice')}`;
}

function unread(why: string, fix: string): SlipRead {
  return { ok: false, words: `This slip cannot be read: ${why}. ${fix}` };
}
