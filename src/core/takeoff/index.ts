export * from './takeoff.js';
export { conventions } from './convention/index.js';
export { resolvePlaces } from './resolve.js';
export type { SharedWalls } from './convention/convention.js';
export { conventionOf, takeOff } from './take-off.js';
export type * from './railing/rail.js';
export { buildRail } from './railing/build.js';
export { railJoints } from './railing/joints.js';
export { railOf } from './railing/run.js';
export { leafFaces, timberFaces, treadFaces, trimFaces, wholePieces } from './arithmetic/index.js';
export {
  assemblyAsPrinted,
  coatsWords,
  roundingStep,
  takeoffAsPrinted,
  timesOf,
  type PrintedTakeoff,
} from './as-printed.js';
export { hingesOf } from './beside.js';
export { resistanceWords } from './assembly.js';
export { layerMismatches, layerStep } from './insulation-layers.js';
export { countWords, countsWords, poolCounts } from './count.js';
export { poolSupplies, sumSupplies, supplyWords, type SupplyOrder } from './supply.js';
export {
  orderedAmount,
  orderStatement,
  statementOf,
  statementWords,
  sumLaid,
  type LaidCount,
  type OrderStatement,
} from './order-count.js';
export { sumStock } from './stock.js';
export { cuttingWords } from './timber/cut.js';
export { layPlaces } from './lay-places.js';
export { keptLayouts, type Layout, type LayOut } from './layout/index.js';
export { countedBefore, type SelectingRoom } from './shared-walls.js';
export { exceptProblems } from './except.js';
export { weightInPlace, type WeightInPlace } from './weight-in-place.js';
export { placeText, selectionText } from './place-text.js';
export { surfacesOf } from './convention/area.js';
export {
  besideWall,
  findPlaces,
  isLaidWord,
  isOn,
  laidWords,
  meet,
  partOf,
  stretchesOf,
  wallsAgainst,
  type Place,
  type PlacePart,
} from './places.js';
