import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { onlyTrades, openMark, withoutBuilder, withoutMarks } from '../../src/core/records/index.js';
import { moneyWords, sieve, sieveName, sievedOut } from '../../src/handout/sieve.js';

describe('the sieve', () => {
  test.each([
    ['Set level.\n\nIt was $7.40 a foot. Cut it.\n\nSeal it.', 'Set level.\n\nSeal it.'],
    ['It was 7,40 $ a foot.\n\nSeal it.', 'Seal it.'],
    ['Carry USD 1,200 over.\n\nSeal it.', 'Seal it.'],
    ['About 1200 dollars more.\n\nSeal it.', 'Seal it.'],
    ['They owe us €\u200b900.\n\nSeal it.', 'Seal it.'],
    ['Part of the contract\nsum, they say.\n\nSeal it.', 'Seal it.'],
    ['Cheaper than oak.\n\nSeal it.', 'Seal it.'],
    ['Eleven hundred dollars in all.\n\nSeal it.', 'Seal it.'],
    ['That is $ five hundred.\n\nSeal it.', 'Seal it.'],
    ['Some 500 euros.\n\nSeal it.', 'Seal it.'],
    ['He quoted it.\n\nSeal it.', 'Seal it.'],
    ['It is an UPGRADE.\n\nSeal it.', 'Seal it.'],
    ['- one coat\n- it costs more\n- two coats\n\nSeal it.', 'Seal it.'],
    ['| Part | Sum |\n|---|---|\n| rail | $9 |\n| post | 2 |\n\nSeal it.', 'Seal it.'],
    ['First.\n\nThe price is high.\n\nLast.', 'First.\n\nLast.'],
    ['## Prices\n\n- oak 12\n\nAs told.\n\n## Work\n\nSeal it.', '## Work\n\nSeal it.'],
    ['Prices are these:\n\n- oak 12\n\nSeal it.', 'Seal it.'],
    ['Seal it. <!-- builders --> He is late.', 'Seal it.'],
    ['Only this costs something.', ''],
    ['Seen. <!-- builder -->not for them<!-- /builder --> Seen too.', 'Seen. Seen too.'],
  ])('%j leaves %j', (text, left) => expect(sieve(text)).toBe(left));

  test.each([
    ['White oak $771.01 plank', 'White oak … plank'],
    ['Wrenfield 1.234,02 EUR', 'Wrenfield …'],
    ['Mill USD 12,500.00 grade', 'Mill … grade'],
    ['5000 dollars floor', '… floor'],
    ['Eleven hundred dollars board', '… board'],
    ["Study CHF 1'250.- room", 'Study … room'],
    ['Cost 12 board', '… 12 board'],
  ])('of the name %j no figure of its money stays: %j', (name, left) => expect(sieveName(name)).toBe(left));

  test.each([
    'Lay 1,234.56 sq ft of it at 4 1/2" on 3/4".',
    'Headers at 6\'-10", 12 each, 5 % waste; issued for pricing; see 06 20 00.',
    'Two coats, allowed to dry; a disc of an ounce; the costume of a feeder.',
    'The fitter is at home.',
  ])('%j is left whole', (text) => expect(sieve(text)).toBe(text));

  test('what stays never speaks of money, and what speaks of none stays', () => {
    const words = fc.constantFrom(
      'set',
      'the',
      'boards',
      '$12',
      'price',
      'seal',
      'cost.',
      'dry.',
      '\n\n',
      '\n- ',
      'No 4',
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 30 }), (parts) => {
        const text = parts.join(' ');
        expect(moneyWords(sieve(text))).toBeUndefined();
        if (moneyWords(text) === undefined) expect(sieve(text)).toBe(text);
      }),
    );
  });

  test('says what it left out, with the word', () => {
    expect(sievedOut('Seal it.\n\nIt was $7.40 a foot.')).toEqual([{ part: 'It was $7.40 a foot.', word: '$7.40' }]);
  });
});

describe('marks', () => {
  const text =
    'For all.\n\n<!-- trades -->\nFloor outlets.\n<!-- builder -->ours<!-- /builder -->\n<!-- /trades -->\n\nEnd.';

  test('trades get what is marked for them, without the builder', () => {
    expect(onlyTrades(text)).toBe('Floor outlets.');
    expect(onlyTrades('Nothing is marked.')).toBe('');
  });

  test('the book shows all of it without the marks', () => {
    expect(withoutMarks(text)).not.toContain('<!--');
    expect(withoutMarks(text)).toContain('ours');
    expect(withoutMarks('<!-- other -->')).toBe('<!-- other -->');
  });

  test('a mark that is not closed gives a trade less, never more', () => {
    expect(withoutBuilder('a <!-- builder --> b')).toBe('a ');
    expect(onlyTrades('a <!-- trades --> b')).toBe('');
    expect(openMark('a <!-- trades --> b')).toEqual({ name: 'trades', index: 2 });
    expect(openMark(text)).toBeUndefined();
  });
});
