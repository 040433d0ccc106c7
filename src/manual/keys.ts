import { formOf } from './form.js';
import { resolved, waysOf, type Schema } from './schema.js';

/** One key of a record, as a person may write it. */
export interface Key {
  /** The group that it is of: `room`, `opening`, `stair`. */
  readonly group: string;
  /** Names from the group down, such as `at` or `measure`, `supplies`, `amount`; `<name>` where names are one's own. */
  readonly path: readonly string[];
  readonly meaning: string;
  /** How its value is written. */
  readonly form: string;
  readonly isNeeded: boolean;
  /** Where only some forms of the group have it: those, as `form: shed`. */
  readonly only: readonly string[];
  /** Who reads it: steps of the computing and outputs. */
  readonly readBy: readonly string[];
  /** The group that its value is described by. */
  readonly leadsTo?: string;
  /** Values that the schema itself gives as examples. */
  readonly examples: readonly unknown[];
}

interface Under {
  readonly group: string;
  readonly path: readonly string[];
  readonly only: readonly string[];
  readonly readBy: readonly string[];
}

/** Every key of a group, in the schema's order. */
export function keysOf(group: string, schema: Schema): readonly Key[] {
  const readBy = schema['read-by'] ?? [];
  return merged(keysBelow(schema, { group, path: [], only: [], readBy }));
}

function keysBelow(schema: Schema, under: Under): readonly Key[] {
  const ways = waysOf(schema);
  const isOneOfMany = ways.filter(({ properties }) => properties).length > 1;
  return ways.flatMap((way) => {
    const mark = isOneOfMany ? markOf(way) : undefined;
    const here = mark === undefined ? under : { ...under, only: [...under.only, mark] };
    const named = Object.entries(way.properties ?? {}).flatMap(([name, value]) =>
      keyAndBelow(name, value, way.required?.includes(name) ?? false, here),
    );
    const { additionalProperties: free, items } = way;
    const others = typeof free === 'object' ? keyAndBelow('<name>', free, false, here) : [];
    const each = items && groupOf(items) === undefined ? keysBelow(items, here) : [];
    return [...named, ...others, ...each];
  });
}

function keyAndBelow(name: string, written: Schema, isNeeded: boolean, under: Under): readonly Key[] {
  const schema = resolved(written);
  const readBy = schema['read-by'] ?? under.readBy;
  const path = [...under.path, name];
  const leadsTo = groupOf(written) ?? (schema.items && groupOf(schema.items));
  const key: Key = {
    group: under.group,
    path,
    meaning: schema.description ?? '',
    form:
      leadsTo === undefined
        ? formOf(schema)
        : schema.type === 'array'
          ? `a list; each is as in ${leadsTo}`
          : `as in ${leadsTo}`,
    isNeeded,
    only: under.only,
    readBy,
    ...(leadsTo !== undefined && { leadsTo }),
    examples: schema.examples ?? [],
  };
  return leadsTo === undefined ? [key, ...keysBelow(schema, { ...under, path, readBy })] : [key];
}

/** The group that a reference leads to: another schema's whole file. */
function groupOf({ $ref }: Schema): string | undefined {
  return /^([a-z-]+)\.schema\.json$/u.exec($ref ?? '')?.[1];
}

/** What tells a form from the others: a key with one value, such as `form: shed`. */
function markOf({ properties = {} }: Schema): string | undefined {
  const own = Object.entries(properties).find(([, value]) => resolved(value).const !== undefined);
  return own && `${own[0]}: ${String(resolved(own[1]).const)}`;
}

/** One key for what several forms say in the same words. */
function merged(keys: readonly Key[]): readonly Key[] {
  const byWords = new Map<string, Key>();
  for (const key of keys) {
    const id = JSON.stringify([key.path, key.meaning, key.form]);
    const known = byWords.get(id);
    const only = known
      ? known.only.length && key.only.length
        ? [...new Set([...known.only, ...key.only])]
        : []
      : key.only;
    byWords.set(id, { ...(known ?? key), only, isNeeded: key.isNeeded && (known?.isNeeded ?? true) });
  }
  return [...byWords.values()];
}
