/** Rooms from an architect's model. In: its text (ISO 16739 as ISO 10303-21), and what the house has already. Out: records of rooms, levels, what
 *  became of each space. Absent: the disk, other files, anything that a model might ask to be run. */
export { draftModel, modelTooLarge, nothingTaken, type ModelDraft, type SpaceReport } from './draft-model.js';
export type { Taken } from './room/read-spaces.js';
export { takenIn } from './taken.js';
export { modelReport } from './report.js';
