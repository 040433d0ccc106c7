import { expect, test } from 'vitest';
import { decodeSlip, slipText, slipWords, type Slip } from '../../src/slip/index.js';
import { smallBook } from '../book/small-house.js';

const slip: Slip = {
  house: '1',
  snapshot: '4f2a91c077be',
  by: 'The owner',
  on: '2026-04-20',
  choices: [
    { selection: 'study/floor/floor', was: 'pine', now: 'oak' },
    { selection: 'study/ceiling-board/ceiling', was: null, now: 'none' },
    { selection: 'study/paint/walls', was: null, now: 'tallow' },
  ],
};
const before = smallBook();
const after = smallBook({ 'content/rooms/study.md': [['chosen: pine', 'chosen: oak']] });

test('a slip says each choice in the names of the Book, the total of whole Books, who, when and why', () => {
  const noted = { ...slip, note: 'The oak matches the stair.' };
  const text = slipText(noted, slipWords(before, noted, after));
  const [words = '', code = ''] = text.split('slip1:');
  expect(words).toBe(`Choice slip
Small House, job 1

1. Study · floor: Pine strip → Oak strip
2. Study · ceiling board, ceiling: open → not wanted
3. study/paint/walls: open → tallow

Total of the house: $99,118.00 → $100,000.00, +$882.00
Still open on the allowance Wood ceilings: 1 choice. What is left of it moves this total with that one.

Chosen by The owner on 20 April 2026

The oak matches the stair.

For bookmatch choose; please leave these lines as they are:
`);
  expect(Math.max(...code.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(64);
  expect(decodeSlip(text)).toMatchObject({ ok: true, slip: noted });
});

test('without a Book of what it comes to, and without a sentence, it says neither', () => {
  const text = slipText(slip, slipWords(before, slip));
  expect(text).not.toContain('Total');
  expect(text.split('\n\n')).toHaveLength(4);
});
