import { describe, expect, test } from 'vitest';
import { checkWritten, type Choices } from '../../src/cli/record-choices.js';
import type { Records } from '../../src/core/model/index.js';
import { readRecords } from '../../src/core/records/index.js';
import { smallFiles, type Edits } from '../book/small-house.js';

const floor = 'study/floor/floor';
const study = 'content/rooms/study.md';
const choice = { option: 'oak', on: '2026-04-20', by: 'The owner', slip: '4F2A-91C0-77BE' };
const choices: Choices = new Map([[floor, choice]]);
const keys = 'chosen: oak\n    chosen-on: 2026-04-20\n    chosen-by: The owner\n    slip: 4F2A-91C0-77BE\n';

function house(edits: Edits = {}): Records {
  const { value } = readRecords(smallFiles(edits));
  if (!value) throw new Error('the house has errors');
  return value;
}

const before = house();
const chosen = ['chosen: pine\n', keys] as const;

describe('records that are written with choices are read again', () => {
  test('and pass where they say the choices and nothing else', () => {
    expect(() => checkWritten(before, house({ [study]: [chosen] }), choices)).not.toThrow();
    const away: Choices = new Map([[floor, { ...choice, option: null }]]);
    expect(() => checkWritten(before, house({ [study]: [['    chosen: pine\n', '']] }), away)).not.toThrow();
  });

  test.each<[string, Edits]>([
    ['another option', { [study]: [['chosen: pine\n', keys.replace('chosen: oak', 'chosen: none')]] }],
    ['no day', { [study]: [['chosen: pine\n', keys.replace('chosen-on: 2026-04-20\n    ', '')]] }],
    ['another person', { [study]: [['chosen: pine\n', keys.replace('The owner', 'The builder')]] }],
    ['no slip', { [study]: [['chosen: pine\n', keys.replace('    slip: 4F2A-91C0-77BE\n', '')]] }],
    ['nothing of it', {}],
    ['a word of prose', { [study]: [chosen, ['accounts', 'books']] }],
    ['another key of the selection', { [study]: [chosen, ['standard: oak', 'standard: pine']] }],
    ['a choice for another place', { [study]: [chosen, ['fir-tg-1x6]\n', 'fir-tg-1x6]\n    chosen: fir-tg-1x6\n']] }],
    ['a size', { [study]: [chosen, [`10'-0"`, `10'-1"`]] }],
    ['the house', { [study]: [chosen], 'content/house.md': [['$100,000', '$90,000']] }],
    ['an option', { [study]: [chosen], 'content/options/floor/oak.md': [['name: ', 'name: Red ']] }],
  ])('and are refused where they say %s', (_, edits) => {
    expect(() => checkWritten(before, house(edits), choices)).toThrow('a choice was not written as meant');
  });

  test('and are refused where the place is gone', () => {
    const selection = `  - at: floor\n    category: floor\n    standard: oak\n    considering: [oak, pine]\n    chosen: pine\n`;
    expect(() => checkWritten(before, house({ [study]: [[selection, '']] }), choices)).toThrow();
  });
});
