import type { FeatureKind } from '../kind.js';
import { face, plan } from './draw.js';
import { measure } from './measure.js';
import { read, type Niche } from './read.js';
import { solids } from './solids.js';
import schema from './schema.json' with { type: 'json' };

export const niche: FeatureKind<Niche> = {
  kind: 'niche',
  group: 'walls',
  schema,
  read,
  measure,
  plan,
  face,
  solids,
  worthSeeing: 25,
};
