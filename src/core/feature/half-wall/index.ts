import type { FeatureKind } from '../kind.js';
import { plan } from './draw.js';
import { measure } from './measure.js';
import { read, type HalfWall } from './read.js';
import { solids } from './solids.js';
import schema from './schema.json' with { type: 'json' };

export const halfWall: FeatureKind<HalfWall> = {
  kind: 'half-wall',
  group: 'walls',
  schema,
  read,
  measure,
  plan,
  solids,
};
