import { expect, it } from 'vitest';
import { wordsOf, type Field } from '../../src/desk/ask.js';

const fields: readonly Field[] = [
  { name: 'contact', label: '', as: '--contact', kind: 'line' },
  { name: 'name', label: '', as: 'word', kind: 'line' },
  { name: 'set', label: '', as: '--set', kind: 'lines' },
];
const wordsFor = (given: Readonly<Record<string, string>>): readonly string[] =>
  wordsOf({ command: ['new', 'trade'], fields }, new URLSearchParams(given));

it('takes nothing that is typed for a flag, a field of another form, or two words', () => {
  expect(wordsFor({ contact: '--house=/', name: '--out /tmp', house: '/elsewhere' })).toEqual([
    'new',
    'trade',
    '--contact=--house=/',
    '--',
    '--out /tmp',
  ]);
  expect(wordsFor({ set: 'a=1\r\n\r\n --b=2 ', name: 'two\r\nlines' })).toEqual([
    'new',
    'trade',
    '--set=a=1',
    '--set=--b=2',
    '--',
    'two lines',
  ]);
  expect(wordsFor({ name: '  ' })).toEqual(['new', 'trade']);
});
