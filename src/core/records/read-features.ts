import type { FeatureKind } from '../feature/index.js';
import type { FeatureRecord } from '../model/index.js';
import { nearest } from '../../base/problem/index.js';
import { soundItems, type Checked } from './checked-record.js';
import type { RawFeature, RawRoom } from './raw/room.js';
import { finder, type Find } from './schema-problems.js';
import type { Finding } from './finding.js';
import { featureValidator } from './validators.js';

/** What the kinds' own schemas have against the features of a room as written. */
export function featureFindings(
  room: Readonly<Record<string, unknown>>,
  kinds: readonly FeatureKind<unknown>[],
  find: Find = finder(),
): readonly Finding[] {
  const features = Array.isArray(room['features']) ? (room['features'] as readonly unknown[]) : [];
  return features.flatMap((feature, index) => {
    const written = (feature as Partial<RawFeature> | null)?.kind;
    if (typeof written !== 'string') return [];
    const kind = kinds.find((candidate) => candidate.kind === written);
    if (!kind) return [unknownKind(written, index, kinds)];
    return find(`feature ${kind.kind}`, () => featureValidator(kind), feature, ['features', index]);
  });
}

function unknownKind(written: string, index: number, kinds: readonly FeatureKind<unknown>[]): Finding {
  const names = kinds.map(({ kind }) => kind);
  const meant = nearest(written, names);
  return {
    path: ['features', index, 'kind'],
    code: 'feature-kind-unknown',
    message: `there is no kind of feature '${written}'`,
    fix: meant === undefined ? `kinds are ${names.join(', ')}` : `did you mean '${meant}'?`,
    onKey: false,
  };
}

export function readFeatures(
  record: Checked<RawRoom>,
  kinds: readonly FeatureKind<unknown>[],
): readonly FeatureRecord[] {
  return soundItems<RawFeature>(record, 'features').flatMap(({ raw, path }) => {
    const kind = kinds.find((candidate) => candidate.kind === raw.kind);
    return kind ? [{ kind: raw.kind, id: raw.id, name: raw.name, data: kind.read({ ...raw }), path }] : [];
  });
}
