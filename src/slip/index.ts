/** Choice slips: what an owner chose, handed over as text. In: choices with what stood before them, by selection ids. Out: a text that people read with
 *  a line at its end that the program reads, and back again; slips laid over each other; choices held against a Book. Runs in a browser as it is. Absent: the
 *  records, and writing into them. */
export type { Slip, SlipChoice } from './slip.js';
export { encodeSlip } from './encode-slip.js';
export { decodeSlip, whyNotOf, type DecodedSlip } from './decode-slip.js';
export { optionWords, slipText, slipWords, type SlipWords } from './slip-text.js';
export { holdAgainst, orderedWords, standing, type Held } from './hold-against.js';
export { layOver, type LaidOver, type Wish } from './lay-over.js';
export {
  layTogether,
  togetherChoices,
  unsettled,
  type Difference,
  type HeldWish,
  type LaidTogether,
  type Settled,
} from './laid-together.js';
