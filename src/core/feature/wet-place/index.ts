import type { FeatureKind } from '../kind.js';
import { plan } from './draw.js';
import { measure } from './measure.js';
import { read, type WetPlace } from './read.js';
import schema from './schema.json' with { type: 'json' };

export const wetPlace: FeatureKind<WetPlace> = {
  kind: 'wet-place',
  group: 'walls',
  schema,
  read,
  measure,
  plan,
};
