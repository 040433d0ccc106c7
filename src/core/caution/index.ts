/** Cautions. In: rooms as measured and what is selected in them. Out: what to look at again, with its source. Absent: verdicts. */
export type { Caution, CautionSource } from './caution.js';
export type { Example, ExampleRoom, ExampleSelection, Written } from './rule/example.js';
export {
  viewHouse,
  viewRoom,
  type HouseView,
  type Matching,
  type RoomView,
  type SelectionView,
  type Stand,
} from './view.js';
export { cautionRules, findCautions } from './find-cautions.js';
export { acceptCautions } from './accept-cautions.js';
export { adoptedWords, cautionWords, countWords, locallyWords, sourceText, stateWords } from './words.js';
