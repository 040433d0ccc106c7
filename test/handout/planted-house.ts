import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument, type Document } from 'yaml';
import type { Source } from '../../src/core/model/index.js';
import { featureKinds } from '../../src/core/feature/index.js';
import { waysOf, type Schema } from '../../src/manual/schema.js';

/** Records by their schemas alone: every text in them is found without a list of fields, and nothing is known of what handouts carry. */

type Path = readonly (string | number)[];

/** A text in a record that somebody may write anything into. */
export interface TextField {
  /** By the schema that describes it: `option.needs.what`, `category.attributes.<name>.label`. */
  readonly key: string;
  readonly path: Path;
  readonly text: string;
}

/** Records that people write. What the program writes itself, issues and change orders, is in no handout but for number, purpose and day. */
const groups: readonly (readonly [RegExp, string])[] = [
  [/^content\/house\.md$/u, 'house'],
  [/^content\/rooms\//u, 'room'],
  [/^content\/categories\//u, 'category'],
  [/^content\/options\//u, 'option'],
  [/^content\/trades\//u, 'trade'],
  [/^content\/alternatives\//u, 'alternative'],
  [/^content\/price-lists\//u, 'price-list'],
];

/** Every key of a record that takes any text, by the schemas. The prose beneath a record is `<record>.(prose)`. */
export function textKeys(): readonly string[] {
  const found = new Set<string>();
  const visit = (schema: Schema, key: string): void => {
    const named = groupOf(schema) ?? key;
    if (named === 'feature') return featureKinds.forEach((kind) => visit(kind.schema as Schema, kind.kind));
    for (const way of waysOf(schema)) {
      if (isAnyText(way)) found.add(named);
      if (way.items) visit(way.items, named);
      for (const [name, value] of Object.entries(way.properties ?? {})) visit(value, `${named}.${name}`);
      if (typeof way.additionalProperties === 'object') visit(way.additionalProperties, `${named}.<name>`);
    }
  };
  for (const [, group] of groups) {
    visit({ $ref: `${group}.schema.json` }, group);
    found.add(`${group}.(prose)`);
  }
  return [...found];
}

/** Every such text of a record, without the prose beneath. */
export function textFields(source: Source): readonly TextField[] {
  const found = new Map<string, TextField>();
  const visit = (value: unknown, schema: Schema, key: string, path: Path): void => {
    const named = groupOf(schema) ?? key;
    const kind = named === 'feature' ? kindOf(value) : undefined;
    if (kind) return visit(value, kind.schema as Schema, kind.kind, path);
    for (const way of waysOf(schema)) {
      if (typeof value === 'string') {
        if (isAnyText(way)) found.set(path.join('/'), { key: named, path, text: value });
      } else if (Array.isArray(value)) {
        const { items } = way;
        if (items) value.forEach((item, index) => visit(item, items, named, [...path, index]));
      } else if (typeof value === 'object' && value !== null) {
        for (const [name, part] of Object.entries(value)) {
          const own = way.properties?.[name];
          if (own) visit(part, own, `${named}.${name}`, [...path, name]);
          else if (typeof way.additionalProperties === 'object')
            visit(part, way.additionalProperties, `${named}.<name>`, [...path, name]);
        }
      }
    }
  };
  const group = recordOf(source);
  visit(documentOf(source).toJS(), { $ref: `${group}.schema.json` }, group, []);
  return [...found.values()];
}

/** Which kind of record it is: `room`, `price-list`. */
export function recordOf({ path }: Source): string {
  const group = groups.find(([form]) => form.test(path))?.[1];
  if (group === undefined) throw new Error(`${path} is no record`);
  return group;
}

const groupOf = ({ $ref }: Schema): string | undefined => /^([a-z-]+)\.schema\.json$/u.exec($ref ?? '')?.[1];

const kindOf = (value: unknown) => featureKinds.find(({ kind }) => (value as { kind?: unknown }).kind === kind);

/** Does it take a sum of money? What has a form of its own does not. */
function isAnyText({ type, format, pattern, enum: closed, const: only }: Schema): boolean {
  if (type !== 'string' || format !== undefined || closed !== undefined || only !== undefined) return false;
  return pattern === undefined || new RegExp(pattern, 'u').test('for $91,000.47');
}

const front = /^---\n([^]*?\n)---\n/u;

function documentOf({ text }: Source): Document {
  return parseDocument(front.exec(text)?.[1] ?? '', { version: '1.2' });
}

/** The record with values put where they are said to stand, and with more prose beneath. */
export function withValues(source: Source, values: readonly (readonly [Path, unknown])[], prose = ''): Source {
  const document = documentOf(source);
  for (const [path, value] of values) document.setIn(path, document.createNode(value));
  return {
    path: source.path,
    text: `---\n${document.toString({ lineWidth: 0 })}---\n${source.text.replace(front, '')}${prose}`,
  };
}

export function recordsIn(folder: string): readonly Source[] {
  return readdirSync(join(folder, 'content'), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.md'))
    .map((path) => ({ path: `content/${path}`, text: readFileSync(join(folder, 'content', path), 'utf8') }));
}
