import { schemaOf } from '../core/records/index.js';
import { read, unread, type Reading } from '../base/units/index.js';
import { formOf } from './form.js';
import { resolved, type Schema } from './schema.js';

/** A key of a group whose value a person can say in one line or choose: all that a form or a flag has to know of it, as its schema has it. */
export interface PlainKey {
  readonly name: string;
  readonly meaning: string;
  /** How its value is written, in words; empty for any text. */
  readonly form: string;
  /** Which notation its text has, by its name among the formats of schemas. */
  readonly format?: string;
  readonly isNeeded: boolean;
  readonly kind: 'text' | 'day' | 'number' | 'yes-no' | 'list';
  /** What it may be, or what may be in its list, where that is one of a few. */
  readonly choices?: readonly string[];
}

/** Plain keys of a group, such as `milestone`, or of one of its own groups of keys, such as `price` of `option`, in its schema's order; other groups of keys
 *  and lists of them are left out. */
export function plainKeys(group: string, under?: string): readonly PlainKey[] {
  const whole = resolved({ $ref: `${group}.schema.json` });
  const { properties = {}, required = [] } = under === undefined ? whole : resolved(whole.properties?.[under] ?? {});
  return Object.entries(properties).flatMap(([name, written]) => {
    const schema = resolved(written);
    const kind = kindOf(schema);
    if (kind === undefined) return [];
    const choices = (kind === 'list' && schema.items ? resolved(schema.items) : schema).enum?.map(String);
    const form = schema.format === undefined && schema.type === 'string' && !schema.pattern ? '' : formOf(schema);
    const isNeeded = required.includes(name);
    const { description: meaning = '', format } = schema;
    return [
      { name, meaning, form, isNeeded, kind, ...(format !== undefined && { format }), ...(choices && { choices }) },
    ];
  });
}

/** One plain key; throws where the schema has none of that name: a fault of the program. */
export function plainKey(group: string, name: string, under?: string): PlainKey {
  const key = plainKeys(group, under).find((one) => one.name === name);
  if (!key) throw new Error(`${group} has no plain key ${name}`);
  return key;
}

/** What a group is, in a sentence of its schema. */
export function meaningOf(group: string): string {
  return (schemaOf(`${group}.schema.json`) as Schema).description ?? '';
}

/** A value of a plain key as it stands in a record, from what a person typed. Whether a record may have it, its reader says. */
export function readPlain({ kind }: Pick<PlainKey, 'kind'>, text: string): Reading<unknown> {
  const typed = text.trim();
  switch (kind) {
    case 'text':
    case 'day':
      return typed === '' ? unread('it is empty', 'write what it is') : read(typed);
    case 'number':
      return /^-?\d+(?:\.\d+)?$/u.test(typed) ? read(Number(typed)) : unread(`'${text}' is no number`, 'write digits');
    case 'yes-no':
      if (/^(?:yes|true)$/iu.test(typed)) return read(true);
      return /^(?:no|false)$/iu.test(typed) ? read(false) : unread(`'${text}' is neither`, 'write yes or no');
    case 'list':
      return listOf(typed);
  }
}

function listOf(typed: string): Reading<unknown> {
  const items = [...new Set(typed.split(',').map((one) => one.trim()))].filter((one) => one !== '');
  return items.length === 0 ? unread('it is empty', 'write one or more, with commas') : read(items);
}

function kindOf({ type, format, items }: Schema): PlainKey['kind'] | undefined {
  if (type === 'string') return format === 'day' ? 'day' : 'text';
  if (type === 'integer' || type === 'number') return 'number';
  if (type === 'boolean') return 'yes-no';
  return type === 'array' && items && resolved(items).type === 'string' ? 'list' : undefined;
}
