import type { FeatureKind } from '../kind.js';
import { measure } from './measure.js';
import { read, type BuiltIn } from './read.js';
import { solids } from './solids.js';
import schema from './schema.json' with { type: 'json' };

export const builtIn: FeatureKind<BuiltIn> = {
  kind: 'built-in',
  group: 'built-ins',
  schema,
  read,
  measure,
  solids,
  worthSeeing: 30,
};
