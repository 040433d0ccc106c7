/** What the house covers as it is laid out: areas by level, outside faces, what of walls stands outside and of ceilings lies under the roof. */
export { areas } from './levels.js';
export { outsideFaces } from './faces.js';
export { outsideWalls } from './walls.js';
export { roofCeilings } from './roof.js';
export { roomsOver } from './over.js';
export { areaSheet } from './area-sheet.js';
