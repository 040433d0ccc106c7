import {
  codeAddress,
  lastIssue,
  type BookChangeOrder,
  type BookIssue,
  type CodeSays,
  type LookUp,
} from '../core/book/index.js';
import { joinWords, printDay } from '../base/units/index.js';
import { changeOrderDigest } from '../signoff/index.js';

/** What becomes of one printed sheet. */
export interface PrintedSheet {
  /** What the sheet's code asks its page, without the question mark; `other` where nothing of the house was asked for. */
  readonly asked: string;
  /** `unknown`: nobody can tell but the builder. */
  readonly state: 'current' | 'superseded' | 'unknown';
  readonly words: string;
  /** Id of the change order on the page, where the sheet is of one. */
  readonly order?: string;
}

/** What becomes of each sheet that may have been printed of a book: of its issues, of what was never issued, of its change orders, and of any other. */
export function printedSheets(look: LookUp): readonly PrintedSheet[] {
  const { house, issues, changeOrders, on } = look.book;
  return [
    ...issues.map((issue) => ofIssue(issue, look)),
    {
      asked: askedBy('issue'),
      state: 'superseded',
      words: `Your printed sheet was never issued. ${countsWords(look)}`,
    },
    ...changeOrders.map((order) => ofOrder(order, changeOrderDigest(house.number, order))),
    {
      asked: 'other',
      state: 'unknown',
      words: `No issue and no change order here has the number and the digest of your printed sheet. These pages are of ${printDay(on)}, and know nothing of what came later: ask the builder.`,
    },
  ];
}

function askedBy(of: CodeSays['of'], stamp?: CodeSays['stamp']): string {
  return codeAddress({ page: '', of, ...(stamp && { stamp }) }).slice(1);
}

function ofIssue(issue: BookIssue, look: LookUp): PrintedSheet {
  const { number } = issue;
  const asked = askedBy('issue', issue);
  const current = lastIssue(look.book);
  if (number === current?.number)
    return { asked, state: 'current', words: `Your printed sheet is current: ${named(issue)}.` };
  if (issue.void || !current) {
    const back = issue.void ? `, which was taken back on ${printDay(issue.void.on)}` : '';
    return {
      asked,
      state: 'superseded',
      words: `Your printed sheet is of issue ${number}${back}. ${countsWords(look)}`,
    };
  }
  const superseded = `Your printed sheet, of issue ${number}, is superseded by ${named(current)}.`;
  return { asked, state: 'superseded', words: `${superseded} ${roomsWords(issue, current, look)}` };
}

function named({ number, date }: BookIssue): string {
  return `issue ${number} of ${printDay(date)}`;
}

function countsWords({ book }: LookUp): string {
  const current = lastIssue(book);
  return current ? `What counts is ${named(current)}.` : 'No issue counts today.';
}

/** More rooms are counted, not named. */
const mostNamed = 6;

/** By the digests of rooms: while one stays the same, so do the initials on its page. */
function roomsWords(then: BookIssue, now: BookIssue, look: LookUp): string {
  const changed = look.book.rooms.filter(({ slug }) => then.rooms[slug] !== now.rooms[slug]);
  if (changed.length === 0) return 'The page of each room agrees to the same there.';
  const others = changed.length < look.book.rooms.length ? '; what those of the other rooms agree to is the same' : '';
  const [first] = changed;
  if (first && changed.length === 1) return `The page of ${first.name} agrees to something else there${others}.`;
  const which = changed.length > mostNamed ? `${changed.length} rooms` : joinWords(changed.map(({ name }) => name));
  return `The pages of ${which} agree to something else there${others}.`;
}

function ofOrder({ number, state, proposedOn, decidedOn }: BookChangeOrder, digest: string): PrintedSheet {
  const stands = `${state === 'void' ? 'taken back' : state} on ${printDay(decidedOn ?? proposedOn)}`;
  return {
    asked: askedBy('change', { number, digest }),
    state: state === 'proposed' || state === 'approved' ? 'current' : 'superseded',
    words: `Your printed sheet is change order ${number} as it is recorded: ${stands}.`,
    order: String(number),
  };
}
