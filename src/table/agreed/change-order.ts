import type { BookChangeOrder, LookUp } from '../../core/book/index.js';
import type { ChangeOrderState, ReplacedPage } from '../../core/model/index.js';
import {
  col,
  layOut,
  money,
  words,
  type Block,
  type Cell,
  type HouseBlock,
  type HouseTable,
  type Sheet,
} from '../../sheet/index.js';
import { capital, printDays, shortDigest, type Cents } from '../../base/units/index.js';
import { namesOf } from '../names-of.js';
import { linesTable } from './change-lines.js';

/** Page 1 of a printed change order: why, what it does to the contract sum and time, and whether it stands. The fields to sign follow
 *  on the same page. */
export function changeOrderSheet(order: BookChangeOrder, look: LookUp): Sheet {
  const { number, title, state, reason } = order;
  const { name, number: job, place } = look.book.house;
  return {
    format: 'bookmatch/sheet/1',
    id: `change-order-${number}`,
    title: `Change order ${number}: ${title}`,
    paper: 'portrait',
    blocks: [
      { block: 'prose', tone: 'lead', of: [words(`${name}, job ${job}, ${place}`)] },
      { block: 'prose', tone: 'plain', of: [words(isLong(reason) ? 'The reason stands on the next page.' : reason)] },
      factsBlock(order),
      sumTable(order, look),
      { block: 'prose', tone: 'plain', of: [words(statements[state])] },
    ],
  };
}

/** What the signatures on page 1 are for, line by line: what changes, and the pages of the book that it replaces. */
export function changeOrderDetails(order: BookChangeOrder, look: LookUp): Sheet {
  const { number, reason, body } = order;
  return {
    format: 'bookmatch/sheet/1',
    id: `change-order-${number}-lines`,
    title: `Change order ${number}: what changes`,
    paper: 'portrait',
    blocks: [
      ...(isLong(reason) ? [{ block: 'prose', tone: 'plain', of: [words(reason)] } as const] : []),
      linesTable(order, look),
      ...replacedBlocks(order, look),
      { block: 'body', text: body },
    ],
  };
}

/** Page 1 has room for this much beside sums and signatures. */
const isLong = (reason: string): boolean => reason.length > 500;

/** What it adds, when, between which versions; then its lines. */
export function changeOrderBlocks(order: BookChangeOrder, look: LookUp): readonly Block[] {
  return [factsBlock(order), linesTable(order, look)];
}

function factsBlock(order: BookChangeOrder): Block {
  const { state, proposedOn, decidedOn, decidedBy, days, amount, from, to, requestedBy, validUntil } = order;
  const decided: readonly Cell[] =
    decidedOn === undefined
      ? []
      : [{ is: 'day', day: decidedOn }, ...(decidedBy === undefined ? [] : [words(decidedBy)])];
  return {
    block: 'facts',
    facts: [
      { label: 'Status', cell: words(capital(state)) },
      {
        label: state === 'approved' ? 'Added to the contract sum' : 'Would add to the contract sum',
        cell: money(amount, true, 'told'),
      },
      { label: 'Contract time', cell: words(timeWords(days)) },
      ...(requestedBy === undefined ? [] : [{ label: 'Requested by', cell: words(requestedBy) }]),
      { label: 'Proposed', cell: { is: 'day', day: proposedOn } },
      ...(validUntil === undefined ? [] : [{ label: 'Valid until', cell: { is: 'day', day: validUntil } as const }]),
      ...(decided.length === 0
        ? []
        : [{ label: capital(state), cell: { is: 'list', of: decided, parted: ', ' } as const }]),
      { label: 'Between', cell: words(`${versionWords(from, 'before')} and ${versionWords(to, 'with it')}`) },
    ],
  };
}

const statements: Readonly<Record<ChangeOrderState, string>> = {
  proposed: 'Proposed: it changes nothing until owner and builder have both signed it.',
  approved: 'Approved by the owner and the builder. It changes the contract as written here and nothing else.',
  declined: 'Declined. It changes nothing; it keeps its number.',
  void: 'Void. It changes nothing; it keeps its number.',
};

function timeWords(days: number): string {
  if (days === 0) return 'unchanged';
  return `${printDays(Math.abs(days))} ${days > 0 ? 'longer' : 'shorter'}`;
}

/** `issue-2` as people say it; a commit by what it is here, and its first digits. */
function versionWords(version: string, as: string): string {
  const [, number] = /^issue-(\d+)$/u.exec(version) ?? [];
  return number === undefined ? `the records ${as} (version ${version.slice(0, 10)})` : `issue ${number}`;
}

interface Sum {
  readonly what: string;
  /** Absent for a row of time. */
  readonly amount?: Cents;
  /** Working days against the contract's own; absent for a row that has none. */
  readonly days?: number;
  readonly is: 'sum' | 'change';
}

const sums: HouseTable<Sum> = {
  id: 'contract-sum',
  caption: 'The contract sum and the contract time',
  named: 'what',
  rowId: ({ what }) => what,
  strong: ({ is }) => is === 'sum',
  columns: [
    col.words('what', 'Contract', ({ what }) => what, { width: 'long' }),
    col.money('amount', 'Sum', ({ amount }) => amount, { change: ({ is }) => is === 'change', zero: 'told' }),
    col.words('days', 'Time, working days', ({ days }) => (days === undefined ? undefined : dayWords(days)), {
      width: 'short',
    }),
  ],
};

const dayWords = (days: number): string => (days === 0 ? 'as agreed' : `${days > 0 ? '+' : '−'}${Math.abs(days)}`);

function sumTable(order: BookChangeOrder, look: LookUp): HouseBlock {
  const { number, amount, days, daysBefore, contractFirst, contractBefore, contractAfter } = order;
  const earlier = (contractBefore - contractFirst) as Cents;
  const rows: readonly Sum[] = [
    { what: 'Contract sum and time first agreed', amount: contractFirst, days: 0, is: 'sum' },
    { what: 'Net of earlier change orders', amount: earlier, days: daysBefore, is: 'change' },
    { what: 'Before this change order', amount: contractBefore, days: daysBefore, is: 'sum' },
    { what: `This change order, number ${number}`, amount, days, is: 'change' },
    { what: 'With this change order', amount: contractAfter, days: daysBefore + days, is: 'sum' },
  ];
  return layOut(sums, rows, namesOf(look));
}

const replaced: HouseTable<ReplacedPage> = {
  id: 'replaced-pages',
  caption: 'Pages of the book that it replaces, by the digest at their foot',
  named: 'room',
  rowId: ({ room }) => room,
  columns: [
    col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'words' }),
    col.mark('before', 'Replaced page', ({ from }) => (from === undefined ? 'none: a new room' : shortDigest(from))),
    col.mark('after', 'Page that takes its place', ({ to }) =>
      to === undefined ? 'none: taken out' : shortDigest(to),
    ),
  ],
};

function replacedBlocks({ replaces }: BookChangeOrder, look: LookUp): readonly Block[] {
  return replaces.length === 0 ? [] : [layOut(replaced, replaces, namesOf(look))];
}
