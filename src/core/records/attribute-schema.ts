import { isReckoned } from '../fact/index.js';
import type { AttributeRule } from '../model/index.js';

/** JSON Schema of what the options of a category say about themselves, made from the category's rules. What they must tell and
 *  do not is no fault of the record: the option is a draft (`reference/drafts.ts`). */
export function attributeSchema(rules: readonly AttributeRule[]): object {
  return {
    type: 'object',
    properties: Object.fromEntries(rules.map((rule) => [rule.name, valueSchema(rule)])),
    additionalProperties: false,
  };
}

function valueSchema({ kind, choices, label, name }: AttributeRule): object {
  switch (kind) {
    case 'text':
      return { description: label, type: 'string', minLength: 1, ...(choices && { enum: choices }) };
    case 'number':
      return { description: label, type: 'number', ...(isReckoned(name) && { minimum: 0 }) };
    case 'length':
      return { description: label, type: 'string', format: 'dimension' };
    case 'lengths':
      return { description: label, type: 'array', minItems: 1, items: { type: 'string', format: 'dimension' } };
    case 'yes-no':
      return { description: label, type: 'boolean' };
  }
}
