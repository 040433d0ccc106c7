import { expect, test } from 'vitest';
import { moneyWords, sieve, sieveName } from '../../src/handout/sieve.js';
import { harmless } from './phrases/harmless.js';
import { hostile } from './phrases/hostile.js';

const tries = Object.entries(hostile).flatMap(([way, phrases]) =>
  phrases.map((phrase): [string, string] => [way, phrase]),
);

test('the phrases are many, and each stands once', () => {
  const phrases = [...tries.map(([, phrase]) => phrase), ...harmless];
  expect(new Set(phrases).size).toBe(phrases.length);
  expect(tries.length).toBeGreaterThanOrEqual(240);
  expect(harmless.length).toBeGreaterThanOrEqual(80);
});

test.each(tries)('%s: nothing of %j is carried', (_way, phrase) => {
  expect(sieve(phrase)).toBe('');
  expect(sieve(`Set level.\n\n${phrase}\n\nSeal it.`)).toBe(
    phrase.startsWith('#') ? 'Set level.' : 'Set level.\n\nSeal it.',
  );
  expect(moneyWords(sieveName(phrase))).toBeUndefined();
});

test.each(harmless)('%j is left whole', (phrase) => {
  expect(sieve(phrase)).toBe(phrase);
  expect(sieveName(phrase)).toBe(phrase);
});
