/** Kinds of features: things in a room that finishes attach to and that have measures of their own. */
import { builtIn } from './built-in/index.js';
import { chimneyBreast } from './chimney-breast/index.js';
import { dropEdge } from './drop-edge/index.js';
import { halfWall } from './half-wall/index.js';
import type { FeatureKind } from './kind.js';
import { niche } from './niche/index.js';
import { stair } from './stair/index.js';
import { timber } from './timber/index.js';

export * from './kind.js';
export * from './surface.js';
export type { ChimneyBreast } from './chimney-breast/read.js';
export { flightOf } from './stair/measure.js';
export type { Stair } from './stair/read.js';

/** Every kind, in the order in which people meet them in the book. A new kind is one folder and one line here. */
export const featureKinds: readonly FeatureKind<unknown>[] = [
  chimneyBreast,
  dropEdge,
  stair,
  timber,
  niche,
  halfWall,
  builtIn,
];
