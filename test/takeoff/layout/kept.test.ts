import { expect, test } from 'vitest';
import { boardRules, keptLayouts, layOut } from '../../../src/core/takeoff/layout/index.js';
import { fromFeet, fromInches } from '../../../src/base/units/index.js';
import { box } from '../../measure/room-record.js';

const input = {
  regions: [{ outline: box(`0'`, `0'`, `12'`, `10'`), holes: [] }],
  direction: 0,
  face: fromInches(6),
  stock: [8, 10, 12].map(fromFeet),
  rules: boardRules,
};

test('the same surface in the same stock is laid once, anything else anew', () => {
  const kept = keptLayouts();
  const first = kept(input);
  expect(first).toEqual(layOut(input));
  expect(kept(structuredClone(input))).toBe(first);
  for (const other of [
    { ...input, direction: 90 },
    { ...input, stock: [fromFeet(14)] },
    { ...input, face: fromInches(5) },
  ])
    expect(kept(other)).toEqual(layOut(other));
});
