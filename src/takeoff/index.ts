export * from './takeoff.js';
export { conventions } from './convention/index.js';
export { conventionOf, resolvePlaces, takeOff } from './take-off.js';
export { wholePieces } from './arithmetic/index.js';
export { layPlaces } from './lay-places.js';
export { layoutWords } from './layout/index.js';
export type { Place } from './places.js';
