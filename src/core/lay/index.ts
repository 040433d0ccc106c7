/** Rooms as measured in, each by its own tape; where they stand in the house out, with what lies around each, and which tapes do not agree.
 *  Absent: selections, money. */
export { houseLayer, layHouse, type HouseLaying, type LayHouse } from './lay-house.js';
export type { Joint, Misfit } from './joint.js';
export { jointsOf } from './joints.js';
export { layRoomsOf, withSideMoved, type LayRoom } from './laid-room.js';
export { layRooms, type Laying } from './lay-rooms.js';
export { fitOf, type Fit } from './fit.js';
export { findSuspects, type Suspect, type Tape } from './suspect.js';
export { facingPairs } from './pair.js';
export { elevationsOf } from './elevation.js';
export { thicknessOf } from './wall-thickness.js';
export { missOf } from './place-rooms.js';
export { LeastSquares, type Equation } from './least-squares.js';
