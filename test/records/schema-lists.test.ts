import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import {
  changeOrderStates,
  issuePurposes,
  layers,
  measureParts,
  roomUses,
  scheduleColumns,
  swatchPatterns,
  swatchRoles,
} from '../../src/core/model/index.js';
import { featureKinds } from '../../src/core/feature/index.js';
import { conventions } from '../../src/core/takeoff/index.js';

/** Lists that the schemas give to editors and that the code works with: the code's are the ones meant. */
const lists: readonly (readonly [what: string, schema: string, at: string, meant: readonly string[]])[] = [
  ['ways of measuring', 'category', 'properties.measure.properties.by', conventions.map(({ by }) => by)],
  ['layers', 'category', 'properties.layer', layers],
  ['layers of what a trade carries', 'trade', 'properties.carries.items.properties.layer', layers],
  [
    'kinds of features that hide a surface',
    'category',
    '$defs.hidden-by-kinds.items',
    featureKinds.map(({ kind }) => kind),
  ],
  ['columns of the finish schedule', 'category', 'properties.schedule', [...scheduleColumns, 'place']],
  ['uses of a room', 'room', 'properties.use', roomUses],
  ['patterns of swatches', 'option', 'properties.swatch.properties.pattern', swatchPatterns],
  ['purposes of an issue', 'issue', 'properties.purpose', issuePurposes],
  ['states of a change order', 'change-order', 'properties.state', changeOrderStates],
];

it.each(lists)('%s: the schema lists what there is', (_, schema, at, meant) => {
  const file = join(import.meta.dirname, '../../schemas', `${schema}.schema.json`);
  const found = at.split('.').reduce<unknown>((node, key) => (node as Record<string, unknown>)[key], json(file));
  expect((found as { enum: unknown }).enum).toEqual(meant);
});

it('the colours of a swatch have the roles that there are', () => {
  const option = json(join(import.meta.dirname, '../../schemas/option.schema.json')) as {
    readonly $defs: Readonly<Record<'color-roles', { readonly properties: object }>>;
  };
  expect(Object.keys(option.$defs['color-roles'].properties)).toEqual(swatchRoles);
});

it('every way of measuring yields parts, and no parts lack a way', () => {
  expect(Object.keys(measureParts)).toEqual(conventions.map(({ by }) => by));
});

function json(file: string): unknown {
  return JSON.parse(readFileSync(file, 'utf8'));
}
