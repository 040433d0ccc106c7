import { encode } from 'uqr';
import { describe, expect, test } from 'vitest';
import { slipCodes } from '../../src/in-page/slip-codes.js';
import { decodeSlip, type Slip } from '../../src/slip/index.js';

const choices = Array.from({ length: 20 }, (_, index) => ({
  selection: `bedroom-${index}/interior-door/D${index}`,
  was: index % 2 === 0 ? null : 'three-panel-painted-68',
  now: 'two-panel-alder-80',
}));
const slip: Slip = { house: '2614', snapshot: '0123456789ab', by: 'The owners', on: '2026-11-28', choices };

describe('codes of a slip on paper', () => {
  const codes = slipCodes(slip);

  test('are one for each handful', () => {
    expect(codes.map(({ label }) => label)).toEqual(['Choices 1 to 8', 'Choices 9 to 16', 'Choices 17 to 20']);
    expect(slipCodes({ ...slip, choices: choices.slice(0, 9) }).at(-1)?.label).toBe('Choice 9');
  });

  test('are slips by themselves, and hold all choices together', () => {
    const read = codes.map(({ line }) => decodeSlip(line));
    expect(read.flatMap((one) => (one.ok ? one.slip.choices : []))).toEqual(choices);
    for (const one of read) expect(one.ok && one.slip.by).toBe('The owners');
  });

  test('have modules that a camera tells apart at 55 mm', () => {
    // A bound of ours, not a standard’s: finer ones are slow to read from plain paper.
    for (const { line } of codes) expect(55 / encode(line, { ecc: 'M', border: 4 }).size).toBeGreaterThan(0.4);
  });
});
