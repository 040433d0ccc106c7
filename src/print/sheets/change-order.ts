import { lookUp } from '../../book/index.js';
import type { Book, BookChangeOrder } from '../../book/index.js';
import type { ChangeOrderState } from '../../model/index.js';
import { printDay, printDays } from '../../units/index.js';
import { readProse } from '../../write/index.js';
import type { ProseBlock as Block } from '../../write/index.js';
import { shorten } from '../shorten.js';
import { changeFigure, moneyFigure } from './figure.js';
import type { Figure } from './figure.js';
import { documentFacts } from './sheets.js';
import type { DocumentFacts } from './sheets.js';
import { signingParties } from './sign-off.js';
import type { SignOff } from './sign-off.js';

/** All that a printed change order says. */
export interface ChangeOrderSheet {
  readonly document: DocumentFacts;
  readonly foot: Readonly<Record<'house' | 'job' | 'standing' | 'digest' | 'day', string>>;
  readonly heading: string;
  readonly house: string;
  readonly reason: string;
  readonly body: readonly Block[];
  readonly facts: readonly { readonly label: string; readonly text: string }[];
  readonly lines: readonly {
    readonly room: string;
    readonly what: string;
    readonly quantity: string;
    readonly amount: Figure;
  }[];
  readonly amount: Figure;
  /** The contract sum before, this order, and after. */
  readonly sums: readonly { readonly label: string; readonly figure: Figure }[];
  readonly statement: string;
  readonly parties: SignOff['parties'];
}

export function makeChangeOrderSheet(book: Book, order: BookChangeOrder): ChangeOrderSheet {
  const look = lookUp(book);
  const { house } = book;
  const { number, title, state, reason, amount, lines, body, proposedOn } = order;
  const heading = `Change order ${number}: ${title}`;
  const day = order.decidedOn ?? proposedOn;
  return {
    document: documentFacts(book, { title: `${house.name}: change order ${number}`, standing: state, on: day }),
    foot: {
      house: shorten(house.name, 26),
      job: shorten(house.number, 12),
      standing: `Change order ${number}`,
      digest: '–',
      day: printDay(day),
    },
    heading,
    house: `${house.name}, job ${house.number}, ${house.place}`,
    reason,
    body: readProse(body),
    facts: facts(order),
    lines: lines.map((line) => ({
      room: line.room === undefined ? '' : look.roomTitle(line.room),
      what: lineWords(line),
      quantity: line.quantity ?? '',
      amount: changeFigure(line.amount),
    })),
    amount: changeFigure(amount),
    sums: [
      { label: 'Contract sum before', figure: moneyFigure(order.contractBefore) },
      { label: `Change order ${number}`, figure: changeFigure(amount) },
      { label: 'Contract sum with it', figure: moneyFigure(order.contractAfter) },
    ],
    statement: statements[state],
    parties: signingParties(look),
  };
}

const statements: Readonly<Record<ChangeOrderState, string>> = {
  proposed: 'Proposed: it changes nothing until owner and builder have both signed it.',
  approved: 'Approved by the owner and the builder. It changes the contract as written here and nothing else.',
  declined: 'Declined. It changes nothing; it keeps its number.',
  void: 'Void. It changes nothing; it keeps its number.',
};

function facts(order: BookChangeOrder): ChangeOrderSheet['facts'] {
  const { state, proposedOn, decidedOn, decidedBy, days, from, to } = order;
  return [
    { label: 'Standing', text: state },
    { label: 'Proposed', text: printDay(proposedOn) },
    ...(decidedOn === undefined ? [] : [{ label: 'Decided', text: `${printDay(decidedOn)}, ${decidedBy ?? ''}` }]),
    { label: 'Moves the end of the job by', text: printDays(days) },
    { label: 'Between', text: `${from.slice(0, 10)} and ${to.slice(0, 10)}` },
  ];
}

function lineWords({ what, from, to }: BookChangeOrder['lines'][number]): string {
  return from === undefined && to === undefined ? what : `${what}: ${from ?? 'nothing'} → ${to ?? 'nothing'}`;
}
