import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { featureKinds } from '../../src/core/feature/index.js';

/** What says nothing of a value, or hands it on to other schemas. */
const structure = [
  '$defs',
  '$id',
  '$ref',
  '$schema',
  'description',
  'examples',
  'items',
  'oneOf',
  'properties',
  'read-by',
  'title',
];

/** What a value can fail by: each has its words in src/records/schema-problems.ts. */
const worded = [
  'additionalProperties',
  'const',
  'dependentRequired',
  'enum',
  'exclusiveMinimum',
  'format',
  'maxItems',
  'minItems',
  'minLength',
  'minProperties',
  'minimum',
  'pattern',
  'propertyNames',
  'required',
  'type',
  'uniqueItems',
];

test('a schema of records uses no keyword that has no words for people', () => {
  const folder = join(import.meta.dirname, '..', '..', 'schemas');
  const schemas = readdirSync(folder)
    .filter((name) => name.endsWith('.json') && name !== 'book.schema.json')
    .map((name): unknown => JSON.parse(readFileSync(join(folder, name), 'utf8')));
  const used = new Set([...schemas, ...featureKinds.map(({ schema }) => schema)].flatMap(keywordsOf));
  expect([...used].filter((keyword) => !structure.includes(keyword) && !worded.includes(keyword))).toEqual([]);
});

function keywordsOf(schema: unknown): readonly string[] {
  if (Array.isArray(schema)) return schema.flatMap(keywordsOf);
  if (typeof schema !== 'object' || schema === null) return [];
  return Object.entries(schema).flatMap(([keyword, value]) => {
    if (keyword === 'enum' || keyword === 'required' || keyword === 'dependentRequired') return [keyword];
    const below: unknown = keyword === 'properties' || keyword === '$defs' ? Object.values(value as object) : value;
    return [keyword, ...keywordsOf(below)];
  });
}
