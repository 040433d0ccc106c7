import type { AttributeRule } from '../model/index.js';

/** JSON Schema of what the options of a category must say about themselves, made from the category's rules. */
export function attributeSchema(rules: readonly AttributeRule[]): object {
  return {
    type: 'object',
    properties: Object.fromEntries(rules.map((rule) => [rule.name, valueSchema(rule)])),
    required: rules.filter((rule) => rule.required).map((rule) => rule.name),
    additionalProperties: false,
  };
}

function valueSchema({ kind, choices, label }: AttributeRule): object {
  switch (kind) {
    case 'text':
      return { description: label, type: 'string', minLength: 1, ...(choices && { enum: choices }) };
    case 'number':
      return { description: label, type: 'number' };
    case 'length':
      return { description: label, type: 'string', format: 'dimension' };
    case 'lengths':
      return { description: label, type: 'array', minItems: 1, items: { type: 'string', format: 'dimension' } };
    case 'yes-no':
      return { description: label, type: 'boolean' };
  }
}
