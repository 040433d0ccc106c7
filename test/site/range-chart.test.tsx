import { render } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { RangeChart } from '../../src/site/parts/range-chart.js';

const chart = (contractSum: number, today: number, low: number, expected: number, high: number): readonly string[] => {
  const money = { contractSum, today, low, expected, high } as unknown as Book['money'];
  return [...render(<RangeChart money={money} />).matchAll(/<text[^>]*>([^<]+)/gu)].map(([, words = '']) => words);
};

test('marks that lie on each other have one word, and each that lies apart its own', () => {
  expect(chart(100_000, 100_000, 100_200, 100_200, 100_300)).toEqual([
    'lowest and expected',
    'highest',
    'contract and today',
  ]);
  expect(chart(100_000, 100_150, 100_200, 100_250, 100_300)).toEqual([
    'lowest',
    'expected',
    'highest',
    'contract',
    'today',
  ]);
});
