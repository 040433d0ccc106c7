import { lookUp, type Book, type BookChangeOrder } from '../../core/book/index.js';
import { changeOrderDetails, changeOrderSheet } from '../../table/index.js';
import { changeOrderDigest } from '../../signoff/index.js';
import { shortDigest } from '../../base/units/index.js';
import { printSheet, printSigns, type PrintSheet } from '../../write/index.js';
import { agreedCode } from '../../where/index.js';
import { documentFacts, footOf, type DocumentFacts, type Foot } from './sheets.js';
import { signingParties, type SignOff } from './sign-off.js';

/** All that a printed change order says. */
interface ChangeOrderSheet {
  readonly document: DocumentFacts;
  readonly foot: Foot;
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
  const digest = changeOrderDigest(house.number, order);
  return {
    document: documentFacts(book, { title: `${house.name}: change order ${number}`, standing: state, on: day }),
    foot: footOf(book, {
      standing: `Change order ${number}`,
      digest: shortDigest(digest),
      day,
      code: agreedCode(house, 'change', { number, digest }),
    }),
    sheet: printSheet(changeOrderSheet(order, look), () => undefined),
    details: printSheet(changeOrderDetails(order, look), () => undefined),
    signs: printSigns,
    parties: signingParties(look),
  };
}
