import type { BookChangeOrder, BookIssue, LookUp } from '../core/book/index.js';
import { joinWords, printDay } from '../base/units/index.js';
import type { SheetStanding } from '../signoff/index.js';

/** A sheet of paper that was asked about. */
export interface AskedSheet {
  /** What it is called in the answer. */
  readonly name: string;
  /** Slug of the one whose sheet it is; without one, all are told of. */
  readonly trade?: string;
}

/** What is said of a sheet. */
export interface SheetAnswer {
  readonly isCurrent: boolean;
  /** Is it of an issue, or of a change order, of the house? */
  readonly isKnown: boolean;
  /** Lines, each with its end. */
  readonly words: string;
  /** The same for programs. */
  readonly facts: object;
}

/** What every answer that came by a digest ends with. */
export const notProven = 'This is told by the digest on it: that nothing else on it was changed is not proven.\n';

export function sheetAnswer(sheet: AskedSheet, standing: SheetStanding, look: LookUp): SheetAnswer {
  const { issue, current, changed, toCome } = standing;
  const isCurrent = issue !== undefined && issue.number === current?.number;
  const facts = { issue: issue?.number, current: current?.number, trade: sheet.trade, changed, toCome };
  return { isCurrent, isKnown: issue !== undefined, facts, words: wordsOf(sheet, standing, isCurrent, look) };
}

/** What is said of a sheet of a change order that stands in the records as the sheet has it. */
export function changeOrderAnswer(
  name: string,
  { number, state, proposedOn, decidedOn }: BookChangeOrder,
): SheetAnswer {
  const day = printDay(decidedOn ?? proposedOn);
  return {
    isCurrent: state === 'proposed' || state === 'approved',
    isKnown: true,
    words: `${name}: change order ${number} as it is recorded, ${state === 'void' ? 'voided' : state} on ${day}.\n`,
    facts: { changeOrder: number, state },
  };
}

function wordsOf(
  { name, trade }: AskedSheet,
  { issue, current, changed, toCome }: SheetStanding,
  isCurrent: boolean,
  look: LookUp,
): string {
  if (!issue) return `${name}: no issue and no change order of ${look.book.house.name} has this digest.\n`;
  const lines = [`${name}: ${issueWords(issue)}${isCurrent ? ', the current one' : ''}.`];
  if (issue.void) lines.push(`It was voided on ${printDay(issue.void.on)}: ${issue.void.why}`);
  if (!isCurrent) lines.push(`${current ? `Superseded by ${issueWords(current)}` : 'No issue counts today'}.`);
  if (!isCurrent && current) lines.push(changedWords(changed, look, trade));
  const theirs = toCome.filter((slug) => trade === undefined || slug === trade);
  if (isCurrent && theirs.length > 0)
    lines.push(`The records say otherwise since, for ${namesOf(theirs, look)}: ask the builder for the next issue.`);
  return lines.map((line) => `${line}\n`).join('');
}

export function issueWords({ number, purpose, date }: BookIssue): string {
  return `issue ${number} for ${purpose}, ${printDay(date)}`;
}

function changedWords(changed: readonly string[], look: LookUp, trade: string | undefined): string {
  if (trade !== undefined) {
    const is = changed.includes(trade) ? 'is another' : 'is the same';
    return `What ${look.tradeName(trade)} builds ${is} there.`;
  }
  return changed.length === 0
    ? 'What each trade builds is the same there.'
    : `What is built there is another for ${namesOf(changed, look)}.`;
}

function namesOf(slugs: readonly string[], look: LookUp): string {
  return joinWords(slugs.map((slug) => look.tradeName(slug)));
}
