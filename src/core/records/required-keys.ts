import { validatorOf } from './validators.js';

/** Keys that a record must have by its schema, in the schema's order. */
export function requiredKeys(record: 'option' | 'room' | 'category' | 'trade' | 'allowance'): readonly string[] {
  const schema = validatorOf(record).schema as { readonly required?: readonly string[] };
  return schema.required ?? [];
}
