/** Drafts. In: what a person answers, or what others wrote; the demo's conventions. Out: records as text, and a report. Absent: the disk,
 *  questions. */
export * from './ifc/index.js';
export * from './list/index.js';
export * from './house/answers.js';
export { draftHouse } from './house/draft-house.js';
export { roomOfLine, roomsOfLines, selectionsFor, type DraftedRoom } from './house/drafted-room.js';
export { roomsOfModel } from './house/rooms-of-model.js';
export { usualSlots } from './house/house-record.js';
export { makeLibrary, type Library } from './house/library.js';
export { mostRooms, readRooms } from './house/read-rooms.js';
export { readRoomLine, readRoomName, type RoomLine } from './house/room-line.js';
export { openWords, readWalk, type Walk } from './house/walk.js';
export { usualUse } from './record/use.js';
export { readName } from './record/name.js';
export { freshSlug } from './record/slug.js';
export { recordText } from './record/text.js';
export { draftOption, pricedParts, readAttribute, readPrice } from './record/option.js';
export { draftAllowance, draftCategory, draftMilestone, draftTrade, measuredBy } from './record/others.js';
