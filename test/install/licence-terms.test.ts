import { expect, test } from 'vitest';
import { isPermissive } from '../../scripts/licence-terms.js';

test.each([
  ['MIT', true],
  ['(BSD-3-Clause OR GPL-2.0)', true],
  ['GPL-2.0 OR BSD-3-Clause', true],
  ['(MIT AND Zlib)', true],
  ['MIT AND (GPL-3.0-only OR ISC)', true],
  ['MIT AND GPL-3.0-only', false],
  ['GPL-3.0-only AND MIT OR LGPL-3.0', false],
  ['ISC OR MIT AND GPL-3.0-only', true],
  ['GPL-3.0-only', false],
  ['MPL-2.0', false],
  ['SEE LICENSE IN LICENSE.txt', false],
  ['UNLICENSED', false],
  ['none', false],
  ['', false],
  ['(MIT', false],
  ['MIT)', false],
  ['MIT MIT', false],
])('%s', (expression, expected) => {
  expect(isPermissive(expression)).toBe(expected);
});
