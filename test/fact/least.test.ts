import { expect, it } from 'vitest';
import { attributeSchema } from '../../src/core/records/attribute-schema.js';

it('takes no number below nothing that is computed with, and any that is not', () => {
  const rules = ['lath-weight', 'r-value', 'lowest-temperature'].map((name) => ({
    name,
    label: name,
    kind: 'number' as const,
    required: false,
  }));
  expect(attributeSchema(rules)).toMatchObject({
    properties: {
      'lath-weight': { type: 'number', minimum: 0 },
      'r-value': { type: 'number', minimum: 0 },
      'lowest-temperature': expect.not.objectContaining({ minimum: 0 }) as unknown,
    },
  });
});
