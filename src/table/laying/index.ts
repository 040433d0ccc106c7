/** The house as laid out: levels with areas, outside faces, walls between rooms, and what of each room stands outside or lies under the roof. */
export { houseSheet } from './house-sheet.js';
export { outsideSheet } from './outside-sheet.js';
export { areas } from './areas.js';
export { outsideFaces } from './outside-faces.js';
export { outsideWalls } from './walls.js';
export { roofCeilings } from './roof.js';
export { roomsOver } from './over.js';
export { wallThicknesses } from './thicknesses.js';
export { betweenRooms } from './walls-between.js';
