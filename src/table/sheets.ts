import type { LookUp } from '../book/index.js';
import type { Sheet } from '../sheet/index.js';
import { finishSheet } from './finish-sheet.js';
import { openingSheet } from './opening-sheet.js';
import { orderSheet } from './order-sheet.js';
import { otherSheet } from './other-sheet.js';
import { quantitySheet } from './quantity-sheet.js';

/** Every sheet of the house that is made of blocks alone. */
export const houseSheets = (look: LookUp): readonly Sheet[] => [
  finishSheet(look),
  openingSheet(look),
  otherSheet(look),
  quantitySheet(look),
  orderSheet(look, { withMoney: true }),
];
