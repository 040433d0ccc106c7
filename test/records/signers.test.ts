import { expect, test } from 'vitest';
import { readRecords, readSigners } from '../../src/core/records/index.js';
import { smallFiles } from '../book/small-house.js';

const pairs = Array.from({ length: 32 }, (_, index) => (index + 160).toString(16).toUpperCase());

function house(signers: string): { path: string; text: string }[] {
  return smallFiles({ 'content/house.md': [['levels:\n', `signers:\n${signers}levels:\n`]] });
}

function read(signers: string): ReturnType<typeof readSigners> {
  const file = house(signers).find(({ path }) => path === 'content/house.md');
  if (!file) throw new Error('no house');
  return readSigners(file);
}

test('a fingerprint is read with colons and without', () => {
  const signers = `  - { role: owner, fingerprint: "${pairs.join(':')}" }\n  - { role: builder, fingerprint: ${pairs.toReversed().join('')} }\n`;
  const fingerprint = (of: readonly string[]): string => of.join('').toLowerCase();
  expect(read(signers)).toEqual({
    signers: [
      { role: 'owner', fingerprint: fingerprint(pairs) },
      { role: 'builder', fingerprint: fingerprint(pairs.toReversed()) },
    ],
    broken: false,
  });
  expect(readRecords(house(signers)).problems).toEqual([]);
});

test('what cannot be read is left out, and said by the records', () => {
  const signers = `  - { role: owner, fingerprint: "${pairs.join(':')}" }\n  - { role: builder, fingerprint: "AB:CD" }\n`;
  expect(read(signers)).toMatchObject({ signers: [{ role: 'owner' }], broken: true });
  expect(readRecords(house(signers)).problems).toMatchObject([
    { code: 'text-form', message: "'AB:CD' is not a fingerprint", fix: expect.stringContaining('64 digits') },
  ]);
});

test('a house that names nobody, and a record that is none', () => {
  expect(readSigners(smallFiles().find(({ path }) => path === 'content/house.md') ?? { path: '', text: '' })).toEqual({
    signers: [],
    broken: false,
  });
  expect(readSigners({ path: 'content/house.md', text: 'hello' })).toEqual({ signers: [], broken: true });
});
