import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import type { FeatureKind } from '../feature/index.js';
import type { Category } from '../model/index.js';
import allowance from '../../../schemas/allowance.schema.json' with { type: 'json' };
import alternative from '../../../schemas/alternative.schema.json' with { type: 'json' };
import category from '../../../schemas/category.schema.json' with { type: 'json' };
import ceiling from '../../../schemas/ceiling.schema.json' with { type: 'json' };
import floor from '../../../schemas/floor.schema.json' with { type: 'json' };
import changeLine from '../../../schemas/change-line.schema.json' with { type: 'json' };
import changeOrder from '../../../schemas/change-order.schema.json' with { type: 'json' };
import feature from '../../../schemas/feature.schema.json' with { type: 'json' };
import house from '../../../schemas/house.schema.json' with { type: 'json' };
import issue from '../../../schemas/issue.schema.json' with { type: 'json' };
import level from '../../../schemas/level.schema.json' with { type: 'json' };
import milestone from '../../../schemas/milestone.schema.json' with { type: 'json' };
import opening from '../../../schemas/opening.schema.json' with { type: 'json' };
import option from '../../../schemas/option.schema.json' with { type: 'json' };
import priceList from '../../../schemas/price-list.schema.json' with { type: 'json' };
import room from '../../../schemas/room.schema.json' with { type: 'json' };
import selection from '../../../schemas/selection.schema.json' with { type: 'json' };
import signature from '../../../schemas/signature.schema.json' with { type: 'json' };
import trade from '../../../schemas/trade.schema.json' with { type: 'json' };
import { attributeSchema } from './attribute-schema.js';
import { notations } from './formats.js';

const base = 'https://bookmatch.example/schemas/';
const schemas = [
  allowance,
  alternative,
  category,
  ceiling,
  floor,
  changeLine,
  changeOrder,
  feature,
  house,
  issue,
  level,
  milestone,
  opening,
  option,
  priceList,
  room,
  selection,
  signature,
  trade,
];

// Tightening the compiled code takes longer than it saves on a house's few hundred records, and that the schemas are schemas is a test's to find.
const ajv = new Ajv2020({
  allErrors: true,
  verbose: true,
  strict: true,
  strictRequired: false,
  schemas,
  validateSchema: false,
  code: { optimize: false },
});
// Said for people alone: who reads a key.
ajv.addKeyword({ keyword: 'read-by', schemaType: 'array' });
for (const [name, { read }] of Object.entries(notations)) ajv.addFormat(name, (text: string) => read(text).ok);

/** The validator of a schema, or of a part of one: `room`, or `ceiling.schema.json#/$defs/shed`. Compiled once. */
export function validatorOf(ref: string): ValidateFunction {
  const full = `${base}${ref.includes('.schema.json') ? ref : `${ref}.schema.json`}`;
  const validate = ajv.getSchema(full);
  if (!validate) throw new Error(`there is no schema ${full}`);
  return validate;
}

/** A schema, or a part of one, as written. Errors: one that there is not. */
export function schemaOf(ref: string): object {
  const { schema } = validatorOf(ref);
  if (typeof schema !== 'object') throw new Error(`${ref} is no schema of keys`);
  return schema;
}

const byKind = new WeakMap<FeatureKind<unknown>, ValidateFunction>();

/** The validator of a kind of feature, compiled once. */
export function featureValidator(kind: FeatureKind<unknown>): ValidateFunction {
  const known = byKind.get(kind);
  if (known) return known;
  const validate = ajv.compile(kind.schema);
  byKind.set(kind, validate);
  return validate;
}

const byRules = new Map<string, ValidateFunction>();

/** The validator of the attributes that a category's rules ask for, compiled once for equal rules. */
export function attributeValidator(rules: Category['attributes']): ValidateFunction {
  const name = JSON.stringify(rules);
  const known = byRules.get(name);
  if (known) return known;
  const validate = ajv.compile(attributeSchema(rules));
  // A desk that is open for days sees many states of the rules.
  if (byRules.size > 500) byRules.clear();
  byRules.set(name, validate);
  return validate;
}
