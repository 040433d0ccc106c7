import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { featureKinds } from '../../src/core/feature/index.js';

const folder = join(import.meta.dirname, '../../schemas');
const files = readdirSync(folder).filter((name) => name.endsWith('.schema.json'));
const ajv = new Ajv2020();

test.each(files)('%s is a JSON Schema', (name) => {
  const schema = JSON.parse(readFileSync(join(folder, name), 'utf8')) as object;
  expect(ajv.validateSchema(schema), ajv.errorsText()).toBe(true);
});

test.each(featureKinds.map(({ kind, schema }) => [kind, schema] as const))('so is that of %s', (_, schema) => {
  expect(ajv.validateSchema(schema), ajv.errorsText()).toBe(true);
});

test('what is no schema is found', () => {
  expect(ajv.validateSchema({ type: 'strng' })).toBe(false);
});
