import type { LookUp } from '../book/index.js';
import type { Sheet } from '../sheet/index.js';
import { openingSheet } from './opening-sheet.js';

/** Every sheet of the house that is made of blocks alone. */
export const houseSheets = (look: LookUp): readonly Sheet[] => [openingSheet(look)];
