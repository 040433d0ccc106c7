import type { FeatureKind } from '../kind.js';
import { plan } from './draw.js';
import { measure } from './measure.js';
import { read, type Timber } from './read.js';
import { solids } from './solids.js';
import schema from './schema.json' with { type: 'json' };

export const timber: FeatureKind<Timber> = {
  kind: 'timber',
  group: 'timber',
  schema,
  read,
  measure,
  plan,
  solids,
};
