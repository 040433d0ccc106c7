/** Drawings and swatches as plain SVG data. In: a room as the Book says it is drawn, a palette. Out: `Drawing` with its
 *  node, or a node. Absent: files, browsers, records, money. */
export type { DrawOptions, Drawing } from './drawing.js';
export { printPalette, screenPalette } from './palette.js';
export { drawPlan } from './plan/index.js';
export { drawElevation, type ElevationOptions, type FinishRegion } from './elevation/index.js';
export { drawStep } from './elevation/step.js';
export { drawCeilingPlan } from './ceiling/index.js';
export { breastDrawer } from './feature/chimney-breast.js';
export { edgeDrawer } from './feature/edge-section.js';
export { drawSection, sectionsOf, type LetteredSection, type SectionOptions } from './section/index.js';
export { roomViews, type RoomView, type RoomViews } from './room-views.js';
export {
  drawKeyPlan,
  drawShade,
  keyPlanNotes,
  type FloorLink,
  type KeyPlanOptions,
  type Shade,
  type ShadeLayer,
} from './key-plan/index.js';
export { drawScaleBar } from './issue.js';
export { drawnAlike } from './drawn-sheet.js';
export { atOneScale } from './one-scale.js';
export {
  drawCutaway,
  looksSame,
  pictureWords,
  roomView,
  type Cutaway,
  type CutawayOptions,
  type CutawayRoom,
  type Key,
  type View,
} from './cutaway/index.js';
export { drawSwatch, inchesAcross, sampleFacts, type MaterialFacts } from './swatch/index.js';
export { trimJointsDrawer } from './trim-joints.js';
export { drawWalk } from './walk.js';
