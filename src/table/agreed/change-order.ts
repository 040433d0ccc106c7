import type { BookChangeOrder, LookUp } from '../../core/book/index.js';
import type { ChangeOrderState } from '../../core/model/index.js';
import { col, layOut, money, words } from '../../sheet/index.js';
import type { Block, Cell, HouseBlock, HouseTable, Sheet } from '../../sheet/index.js';
import { capital, printDays, type Cents } from '../../base/units/index.js';
import { namesOf } from '../names-of.js';
import { linesTable } from './change-lines.js';

/** One change order to print and sign: why, when, its lines and the contract sum with it. */
export function changeOrderSheet(order: BookChangeOrder, look: LookUp): Sheet {
  const { number, title, state, reason, body } = order;
  const { name, number: job, place } = look.book.house;
  return {
    format: 'bookmatch/sheet/1',
    id: `change-order-${number}`,
    title: `Change order ${number}: ${title}`,
    paper: 'portrait',
    blocks: [
      { block: 'prose', tone: 'lead', of: [words(`${name}, job ${job}, ${place}`)] },
      { block: 'prose', tone: 'plain', of: [words(reason)] },
      { block: 'body', text: body },
      ...changeOrderBlocks(order, look),
      sumTable(order, look),
      { block: 'prose', tone: 'plain', of: [words(statements[state])] },
    ],
  };
}

/** What it adds, when, between which versions; then its lines. */
export function changeOrderBlocks(order: BookChangeOrder, look: LookUp): readonly Block[] {
  const { state, proposedOn, decidedOn, decidedBy, days, amount, from, to } = order;
  const decided: readonly Cell[] =
    decidedOn === undefined
      ? []
      : [{ is: 'day', day: decidedOn }, ...(decidedBy === undefined ? [] : [words(decidedBy)])];
  return [
    {
      block: 'facts',
      facts: [
        { label: 'Status', cell: words(capital(state)) },
        {
          label: state === 'approved' ? 'Added to the contract sum' : 'Would add to the contract sum',
          cell: money(amount, true),
        },
        { label: 'Contract time', cell: words(timeWords(days)) },
        { label: 'Proposed', cell: { is: 'day', day: proposedOn } },
        ...(decided.length === 0
          ? []
          : [{ label: capital(state), cell: { is: 'list', of: decided, parted: ', ' } as const }]),
        { label: 'Between', cell: words(`${versionWords(from)} and ${versionWords(to)}`) },
      ],
    },
    linesTable(order, look),
  ];
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

/** `issue-2` as people say it; a commit by its first digits. */
function versionWords(version: string): string {
  const [, number] = /^issue-(\d+)$/u.exec(version) ?? [];
  return number === undefined ? `version ${version.slice(0, 10)}` : `issue ${number}`;
}

interface Sum {
  readonly what: string;
  readonly amount: Cents;
  readonly is: 'sum' | 'change';
}

const sums: HouseTable<Sum> = {
  id: 'contract-sum',
  caption: 'The contract sum',
  named: 'what',
  rowId: ({ what }) => what,
  strong: ({ is }) => is === 'sum',
  columns: [
    col.words('what', 'Sum', ({ what }) => what, { width: 'long' }),
    col.money('amount', 'Amount', ({ amount }) => amount, { change: ({ is }) => is === 'change' }),
  ],
};

function sumTable({ number, amount, contractBefore, contractAfter }: BookChangeOrder, look: LookUp): HouseBlock {
  const rows: readonly Sum[] = [
    { what: 'Contract sum before', amount: contractBefore, is: 'sum' },
    { what: `Change order ${number}`, amount, is: 'change' },
    { what: 'Contract sum with it', amount: contractAfter, is: 'sum' },
  ];
  return layOut(sums, rows, namesOf(look));
}
