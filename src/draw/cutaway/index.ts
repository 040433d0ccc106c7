/** A room as it will look: its near walls taken away, with the finishes of the record. In: a measure, what is seen of its choices. Out: a
 *  drawing and its keys. */
export {
  drawCutaway,
  looksSame,
  pictureWords,
  roomView,
  type Cutaway,
  type CutawayOptions,
  type CutawayRoom,
} from './draw-cutaway.js';
export type { Key } from './keys.js';
export type { View } from './view.js';
