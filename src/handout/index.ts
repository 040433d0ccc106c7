/** Handouts. In: a Book and a trade. Out: all that the trade needs, as plain data without any money. Absent: prices, private
 *  notes, the owner's contacts, the disk. */
export type * from './handout.js';
export { localeOf, makeHandout, type HandoutOptions } from './make-handout.js';
export { specificationTitles } from './sections.js';
export { handoutDrawnRoom } from './drawn-room.js';
export { handoutProblems } from './handout-problems.js';
export {
  cardWords,
  copyWords,
  nextRoomWords,
  type CardWords,
  type CopyWords,
  type NextRoomWords,
} from './card-words.js';
export { sheetAddress, tradeAt } from './sheet-address.js';
export { standingOf, type Standing } from './standing.js';
