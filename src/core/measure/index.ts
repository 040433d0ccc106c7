/** Rooms as recorded in, their true areas, runs, heights and volumes out, each deduction listed. Absent: selections, money. */
export * from './room.js';
export * from './house.js';
export { wallShape, wallWithin } from './wall-part.js';
export type { RoomMeasure } from '../model/index.js';
