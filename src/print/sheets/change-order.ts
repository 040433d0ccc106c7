import { lookUp, type Book, type BookChangeOrder } from '../../core/book/index.js';
import { changeOrderDetails, changeOrderSheet } from '../../table/index.js';
import { changeOrderDigest } from '../../signoff/index.js';
import { printDay, shortDigest } from '../../base/units/index.js';
import { printSheet, printSigns, type PrintSheet } from '../../write/index.js';
import { shorten } from '../shorten.js';
import { documentFacts, type DocumentFacts } from './sheets.js';
import { signingParties, type SignOff } from './sign-off.js';

/** All that a printed change order says. */
interface ChangeOrderSheet {
  readonly document: DocumentFacts;
  readonly foot: Readonly<Record<'house' | 'job' | 'standing' | 'digest' | 'day', string>>;
  /** Page 1, with the signatures. */
  readonly sheet: PrintSheet;
  readonly details: PrintSheet;
  readonly signs: Readonly<Record<string, string>>;
  readonly parties: SignOff['parties'];
}

export function makeChangeOrderSheet(book: Book, order: BookChangeOrder): ChangeOrderSheet {
  const look = lookUp(book);
  const { house } = book;
  const { number, state, proposedOn, decidedOn } = order;
  const day = decidedOn ?? proposedOn;
  return {
    document: documentFacts(book, { title: `${house.name}: change order ${number}`, standing: state, on: day }),
    foot: {
      house: shorten(house.name, 26),
      job: shorten(house.number, 12),
      standing: `Change order ${number}`,
      digest: shortDigest(changeOrderDigest(house.number, order)),
      day: printDay(day),
    },
    sheet: printSheet(changeOrderSheet(order, look), () => undefined),
    details: printSheet(changeOrderDetails(order, look), () => undefined),
    signs: printSigns,
    parties: signingParties(look),
  };
}
