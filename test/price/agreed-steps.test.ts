import fc from 'fast-check';
import { expect, test } from 'vitest';
import { agreedSteps } from '../../src/core/price/index.js';
import type { Cents } from '../../src/base/units/index.js';

const cents = fc.integer({ min: -5_000_000, max: 5_000_000 }).map((amount) => amount as Cents);

test('each step runs on from the last, and the way ends at the total today', () => {
  fc.assert(
    fc.property(cents, fc.array(cents), cents, (sum, amounts, today) => {
      const orders = amounts.map((amount, index) => ({ number: index + 1, title: 'Change', amount }));
      const steps = agreedSteps(sum, orders, today);
      let running: number = sum;
      for (const step of steps.slice(1)) {
        if (step.kind !== 'total') running += step.amount;
        expect(step.running).toBe(running);
      }
      expect(running).toBe(today);
      expect(steps.filter(({ kind }) => kind === 'change-order')).toHaveLength(amounts.length);
    }),
  );
});

test('a change order that covers all leaves nothing uncovered', () => {
  const [, order, current, open, total] = agreedSteps(
    10_000_00 as Cents,
    [{ number: 1, title: 'Oak', amount: 90_50 as Cents }],
    10_090_50 as Cents,
  );
  expect(order).toMatchObject({ what: 'Change order 1: Oak', kind: 'change-order', of: '1', running: 1_009_050 });
  expect(current).toMatchObject({ what: 'Current contract sum', amount: 1_009_050 });
  expect(open).toMatchObject({ kind: 'not-covered', amount: 0 });
  expect(total?.running).toBe(1_009_050);
});
