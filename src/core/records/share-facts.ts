import { specificationParts, type SharedFact } from '../model/index.js';
import type { Origin, Path } from '../../base/problem/index.js';
import type { Checked } from './checked-record.js';
import type { RawCategory, RawShared } from './raw/category.js';
import type { RawOption } from './raw/option.js';

const keys = ['section', 'maker', 'quoted', 'lead', 'returns', 'care'] as const;

interface Layer {
  readonly path: Path;
  readonly said: RawShared;
  readonly family?: string;
}

/** An option with what it has from its family, and what neither says from all options of the category; the specification part by part.
 *  Nothing where the category's record is not sound there. */
export function withShared(
  raw: RawOption,
  category: Checked<RawCategory> | undefined,
): { readonly raw: RawOption; readonly shared: readonly SharedFact[] } {
  const layers = category ? layersOf(raw.family, category) : [];
  if (!category || layers.length === 0) return { raw, shared: [] };
  const shared: SharedFact[] = [];
  const has = <Value>(key: string, own: Value | undefined, of: (said: RawShared) => Value | undefined) => {
    if (own !== undefined) return own;
    const layer = layers.find(({ said }) => of(said) !== undefined);
    if (!layer) return undefined;
    const { path, family, said } = layer;
    shared.push({
      key,
      ...(family !== undefined && { family }),
      path: [...path, ...key.split('.')],
      origin: category.origin,
    });
    return of(said);
  };
  const top = Object.fromEntries(keys.map((key) => [key, has<unknown>(key, raw[key], (said) => said[key])]));
  const specification = Object.fromEntries(
    specificationParts.map((part) => [
      part,
      has(`specification.${part}`, raw.specification?.[part], (said) => said.specification?.[part]),
    ]),
  );
  return { raw: { ...raw, ...told(top), specification: told(specification) }, shared };
}

/** Where a value of an option's record stands that its category has. */
export function placeShared(shared: readonly SharedFact[]): NonNullable<Origin['elsewhere']> {
  return (path) => {
    const written = path.join('.');
    const from = shared.find(({ key }) => written === key || written.startsWith(`${key}.`));
    return from && { origin: from.origin, path: [...from.path, ...path.slice(from.key.split('.').length)] };
  };
}

function layersOf(family: string | undefined, { raw, sound }: Checked<RawCategory>): readonly Layer[] {
  if (!sound(['options']) || !sound(['families'])) return [];
  const own = family === undefined ? undefined : raw.families?.[family];
  return [
    ...(family !== undefined && own ? [{ path: ['families', family], said: own, family }] : []),
    ...(raw.options ? [{ path: ['options'], said: raw.options }] : []),
  ];
}

function told(values: Readonly<Record<string, unknown>>): Readonly<Record<string, never>> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Readonly<
    Record<string, never>
  >;
}
