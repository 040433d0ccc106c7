export * from './takeoff.js';
export { conventions } from './convention/index.js';
export { conventionOf, resolvePlaces, takeOff } from './take-off.js';
export type { Place } from './places.js';
