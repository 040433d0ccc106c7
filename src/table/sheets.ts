import type { LookUp } from '../core/book/index.js';
import type { Sheet } from '../sheet/index.js';
import { alternativeSheet } from './alternatives/index.js';
import { decisionSheet } from './calendar/index.js';
import { cautionSheet } from './cautions/index.js';
import { finishSheet } from './finish-sheet.js';
import { houseSheet, outsideSheet } from './laying/index.js';
import { moneySheets } from './money/index.js';
import { openingSheet } from './opening-sheet.js';
import { orderSheet } from './order-sheet.js';
import { otherSheet } from './other-sheet.js';
import { quantitySheet } from './quantity-sheet.js';
import { roomSheet } from './rooms.js';
import { scopeSheet } from './scope/index.js';

/** Every sheet of the house that is made of blocks alone. */
export const houseSheets = (look: LookUp): readonly Sheet[] => [
  houseSheet(look),
  roomSheet(look),
  finishSheet(look),
  openingSheet(look),
  otherSheet(look),
  outsideSheet(look),
  scopeSheet(look),
  cautionSheet(look),
  quantitySheet(look),
  orderSheet(look, { withMoney: true }),
  ...moneySheets(look),
  alternativeSheet(look),
  decisionSheet(look),
];
