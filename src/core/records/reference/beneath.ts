import { featureKinds } from '../../feature/index.js';
import { layers, slotPlaces } from '../../model/index.js';
import { problemAt, type Origin, type Path, type Problem } from '../../../base/problem/index.js';
import { looseItems, looseNames, soundItems } from '../checked-record.js';
import type { Draft } from '../draft.js';
import type { RawSlot } from '../raw/house.js';
import { some, unknown } from './unknown.js';

/** What lies beneath, and what a slot needs, is a layer, a category, or something that a trade carries; a slot is at a
 *  place that rooms have; a trade carries each thing once. */
export function beneathReferences(draft: Draft): readonly Problem[] {
  const names = new Set([...layers, ...draft.slugs.categories, ...carriedIds(draft)]);
  // What a trade carries whose record cannot be read is not known.
  const whole =
    draft.trades.length === draft.slugs.trades.size && draft.trades.every(({ record }) => record.sound(['carries']));
  return [
    ...(whole ? [...categoryProblems(draft, names), ...slotProblems(draft, names)] : []),
    ...twiceProblems(draft),
  ];
}

function carriedIds({ trades }: Draft): readonly string[] {
  return trades.flatMap(({ record }) => [...looseNames(record, 'carries', 'id')]);
}

function categoryProblems({ categories }: Draft, names: ReadonlySet<string>): readonly Problem[] {
  return categories.flatMap(({ record: { origin, raw, sound } }) => {
    if (!sound(['needs-beneath'])) return [];
    return (raw['needs-beneath'] ?? []).flatMap((written, index) =>
      nameProblems(written, { origin, path: ['needs-beneath', index], names }),
    );
  });
}

function slotProblems({ house }: Draft, names: ReadonlySet<string>): readonly Problem[] {
  if (!house) return [];
  const { origin } = house.record;
  const places = [...slotPlaces, ...featureKinds.map(({ kind }) => kind)];
  return soundItems<RawSlot>(house.record, 'slots').flatMap(({ raw, path }) => {
    const problems = [...nameProblems(raw.needs, { origin, path: [...path, 'needs'], names })];
    if (places.some((place) => place === raw.at)) return problems;
    const message = `a slot is at '${raw.at}', which no room has`;
    const lives = `Slots are at ${places.join(', ')}`;
    return [
      unknown(origin, [...path, 'at'], { code: 'slot-unknown', message, name: raw.at, among: places, lives }),
      ...problems,
    ];
  });
}

function nameProblems(
  written: string | readonly string[],
  { origin, path, names }: { readonly origin: Origin; readonly path: Path; readonly names: ReadonlySet<string> },
): readonly Problem[] {
  const all =
    typeof written === 'string'
      ? [{ name: written, at: path }]
      : written.map((name, index) => ({ name, at: [...path, index] }));
  return all.flatMap(({ name, at }) => {
    if (names.has(name)) return [];
    const message = `'${name}' is no layer, no category, and no trade carries it`;
    const lives = `Layers are ${some(layers)}; categories live in content/categories/; a trade says what it carries in content/trades/`;
    return [unknown(origin, at, { code: 'layer-unknown', message, name, among: names, lives })];
  });
}

function twiceProblems({ trades }: Draft): readonly Problem[] {
  return trades.flatMap(({ record }) => {
    const seen = new Set<unknown>();
    return looseItems(record, 'carries').flatMap((item, index) => {
      const id = (item as { id?: unknown } | null)?.id;
      if (typeof id !== 'string') return [];
      if (!seen.has(id)) return seen.add(id) && [];
      const message = `carries has '${id}' twice`;
      return [
        problemAt(record.origin, ['carries', index, 'id'], 'id-duplicate', message, { fix: 'give each its own id' }),
      ];
    });
  });
}
