import type { FeatureKind } from '../kind.js';
import { measure } from './measure.js';
import { read, type Soffit } from './read.js';
import { solids } from './solids.js';
import schema from './schema.json' with { type: 'json' };

export const soffit: FeatureKind<Soffit> = {
  kind: 'soffit',
  group: 'ceiling',
  schema,
  read,
  measure,
  solids,
};
