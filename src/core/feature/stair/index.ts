import type { FeatureKind } from '../kind.js';
import { plan } from './draw.js';
import { measure } from './measure.js';
import { read, type Stair } from './read.js';
import { solids } from './solids.js';
import schema from './schema.json' with { type: 'json' };

export const stair: FeatureKind<Stair> = {
  kind: 'stair',
  group: 'stairs',
  schema,
  read,
  measure,
  plan,
  solids,
};
