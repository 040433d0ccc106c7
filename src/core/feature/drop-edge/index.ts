import type { FeatureKind } from '../kind.js';
import { face, plan } from './draw.js';
import { measure } from './measure.js';
import { read, type DropEdge } from './read.js';
import schema from './schema.json' with { type: 'json' };

export const dropEdge: FeatureKind<DropEdge> = {
  kind: 'drop-edge',
  group: 'stairs',
  schema,
  read,
  measure,
  plan,
  face,
};
