import { expect, test } from 'vitest';
import { measure } from '../../src/core/feature/wet-place/measure.js';
import { len } from '../caution/house.js';

test('a wet place lies from the corner of its room, and takes nothing off floor or walls', () => {
  const data = { x: len(`6'`), y: len(`1'`), width: len(`5'`), depth: len(`3'-6"`) };
  const record = { kind: 'wet-place', id: 'shower', name: 'Shower', data, path: [] };
  const { value } = measure(data, record, { corner: { x: len(`2'`), y: len('0"') } });
  expect(value?.outline).toEqual([
    { x: len(`8'`), y: len(`1'`) },
    { x: len(`13'`), y: len(`1'`) },
    { x: len(`13'`), y: len(`4'-6"`) },
    { x: len(`8'`), y: len(`4'-6"`) },
  ]);
  expect(value?.footprint).toBeUndefined();
  expect(value?.covers).toEqual([]);
});
