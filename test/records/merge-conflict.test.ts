import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readFrontMatter } from '../../src/core/records/index.js';

const path = 'content/rooms/study.md';
const study = readFileSync(join(import.meta.dirname, '../cases/small-house', path), 'utf8');
const read = (text: string, file = path) => readFrontMatter({ path: file, text }).problems;

const met = (ours: string, theirs: string, base = ''): string =>
  `<<<<<<< HEAD\n${ours}${base === '' ? '' : `||||||| 1c1c1c\n${base}`}=======\n${theirs}>>>>>>> site-office\n`;

test('a choice that two people made is told with both, who and when, and nothing else', () => {
  const mine = '    chosen: oak\n    chosen-by: The owner\n    chosen-on: 2026-04-02\n';
  const other = '    chosen: pine\n    chosen-by: The builder\n    chosen-on: 2026-04-03\n';
  const text = study.replace('    chosen: pine\n', met(mine, other));
  expect(read(text)).toEqual([
    expect.objectContaining({
      code: 'merge-conflict',
      at: { line: 16, column: 1 },
      message:
        'two versions met here in a merge: floor at floor: HEAD has oak, chosen by The owner on 2 April 2026; ' +
        'site-office has pine, chosen by The builder on 3 April 2026',
    }),
  ]);
  // The way of showing conflicts that also has what both came from.
  expect(read(study.replace('    chosen: pine\n', met(mine, other, '    chosen: pine\n')))).toEqual([
    expect.objectContaining({ message: read(text)[0]?.message }),
  ]);
});

test('each place is told, an open choice as open, prose by its lines', () => {
  const text = study
    .replace('    chosen: pine\n', met('    chosen: oak\n', ''))
    .replace('Where the accounts are done.', met('Where one reads.\n', 'One.\nTwo.\n'));
  const messages = read(text).map(({ message }) => message);
  expect(messages).toHaveLength(2);
  expect(messages[0]).toContain('HEAD has oak; site-office has it open');
  expect(messages[1]).toContain("HEAD has 'Where one reads.'; site-office has 2 lines");
});

test('marks that are no conflict stay prose', () => {
  expect(read(`${study}\n<<<<<<< is how git marks it\n`)).toEqual([]);
  expect(read(`${study}\nA title\n=======\n`)).toEqual([]);
});
