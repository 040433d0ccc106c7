import type { FeatureKind } from '../kind.js';
import { measure } from './measure.js';
import { read, type Skylight } from './read.js';
import { solids } from './solids.js';
import schema from './schema.json' with { type: 'json' };

export const skylight: FeatureKind<Skylight> = {
  kind: 'skylight',
  group: 'openings',
  schema,
  read,
  measure,
  solids,
};
