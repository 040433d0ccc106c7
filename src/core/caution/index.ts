/** Cautions. In: rooms as measured and what is selected in them. Out: what to look at again, with its source. Absent: verdicts. */
export type { Caution } from './caution.js';
export type { Example, ExampleRoom, ExampleSelection, Written } from './rule/example.js';
export { viewHouse, viewRoom, type HouseView, type RoomView, type SelectionView } from './view.js';
export { cautionRules, findCautions } from './find-cautions.js';
export { acceptCautions } from './accept-cautions.js';
export { cautionWords, countWords, sourceText, stateWords } from './words.js';
