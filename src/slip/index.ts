/** Choice slips: what an owner chose, handed over as text. In: choices with what stood before them, by selection ids. Out: a text that people read with
 *  a line at its end that the program reads, and back again; two slips laid over each other. Runs in a browser as it is. Absent: the records, and whether
 *  a choice can be taken. */
export type { Slip, SlipChoice } from './slip.js';
export { encodeSlip } from './encode-slip.js';
export { decodeSlip, type DecodedSlip } from './decode-slip.js';
export { slipText, slipWords, type SlipWords } from './slip-text.js';
export { layOver, type LaidOver, type Wish } from './lay-over.js';
