/** Codes for a camera, as somebody photographed them. In: a picture's bytes. Out: what the codes in it say, and of which sheet of the house each is. Apart
 *  from its room, so that only who reads a picture loads what decodes it. Absent: issues. */
export { readCodes, type FoundCode } from './read-codes.js';
export { sheetOfCode, type SheetOfCode } from './sheet-of-code.js';
