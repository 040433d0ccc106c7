import type { FeatureKind } from '../kind.js';
import { face, plan } from './draw.js';
import { measure } from './measure.js';
import { read, type ChimneyBreast } from './read.js';
import { solids } from './solids.js';
import schema from './schema.json' with { type: 'json' };

export const chimneyBreast: FeatureKind<ChimneyBreast> = {
  kind: 'chimney-breast',
  group: 'fireplace',
  schema,
  read,
  measure,
  plan,
  face,
  solids,
  worthSeeing: 160,
};
