/** The house as laid out: levels with areas, walls between rooms, outside faces. */
export { houseSheet } from './house-sheet.js';
export { levels } from './levels.js';
export { outsideFaces } from './outside-faces.js';
export { wallThicknesses } from './thicknesses.js';
export { betweenRooms } from './walls-between.js';
