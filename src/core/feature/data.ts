import type { FeatureMeasure } from '../model/index.js';
import type { ChimneyBreast } from './chimney-breast/read.js';
import type { DropEdge } from './drop-edge/read.js';
import type { Skylight } from './skylight/read.js';
import type { Stair } from './stair/read.js';
import type { Timber } from './timber/read.js';

/** A chimney breast's record, when the feature is one. */
export function breastOf({ kind, data }: FeatureMeasure): ChimneyBreast | undefined {
  return kind === 'chimney-breast' ? (data as ChimneyBreast | undefined) : undefined;
}

export function stairOf({ kind, data }: FeatureMeasure): Stair | undefined {
  return kind === 'stair' ? (data as Stair | undefined) : undefined;
}

export function timberOf({ kind, data }: FeatureMeasure): Timber | undefined {
  return kind === 'timber' ? (data as Timber | undefined) : undefined;
}

export function skylightOf({ kind, data }: FeatureMeasure): Skylight | undefined {
  return kind === 'skylight' ? (data as Skylight | undefined) : undefined;
}

export function edgeOf({ kind, data }: FeatureMeasure): DropEdge | undefined {
  return kind === 'drop-edge' ? (data as DropEdge | undefined) : undefined;
}
