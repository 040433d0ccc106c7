import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeChangeOrderPdf } from '../../src/print/index.js';
import { smallBook } from '../book/small-house.js';

const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-change-'));
afterAll(() => rmSync(scratch, { recursive: true }));

const commit = 'c'.repeat(40);
const order = (state: string, amount: string): string => `---
title: Oak in the study
state: ${state}
from: ${commit}
to: ${commit}
proposed-on: 2026-04-21
${state === 'proposed' ? '' : 'decided-on: 2026-04-23\ndecided-by: The owners\n'}reason: The sample looked better.
days: 2 days
amount: ${amount}
lines:
  - { room: study, what: Floor, from: Pine, to: Oak, amount: ${amount} }
---
`;
const book = smallBook({
  'content/changes/001.md': order('approved', '$120.25'),
  'content/changes/002.md': order('declined', '$900'),
  'content/changes/003.md': order('proposed', '-$20.50'),
});
const texts: string[] = [];

beforeAll(async () => {
  for (const one of book.changeOrders) {
    const path = join(scratch, `${one.number}.pdf`);
    writeFileSync(path, (await makeChangeOrderPdf(book, one)).pdf);
    execFileSync('qpdf', ['--check', path], { stdio: 'pipe' });
    texts.push(execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' }));
  }
});

describe('a printed change order', () => {
  test('says what, why, how much, and the contract sum with it', () => {
    expect(texts[0]).toMatch(/Change order 1: Oak in the study/);
    expect(texts[0]).toMatch(/The sample looked better\./);
    expect(texts[0]).toMatch(/101 Study +Floor: Pine → Oak +\+\$120\.25/);
    expect(texts[0]).toMatch(/Contract sum before +\$100,000\.00/);
    expect(texts[0]).toMatch(/Contract sum with it +\$100,120\.25/);
    expect(texts[0]).toMatch(/2 days/);
  });

  test('a declined one moves nothing for those after it', () => {
    expect(texts[1]).toMatch(/Declined\. It changes nothing/);
    expect(texts[2]).toMatch(/Contract sum before +\$100,120\.25/);
    expect(texts[2]).toMatch(/Contract sum with it +\$100,099\.75/);
  });

  test('both parties can sign it', () => {
    const fields = execFileSync('qpdf', ['--json', '--json-key=acroform', join(scratch, '1.pdf')], {
      encoding: 'utf8',
    });
    for (const name of ['owner-signature', 'builder-signature', 'owner-name', 'builder-date'])
      expect(fields).toContain(`"fullname": "${name}"`);
  });

  test('the contract follows the approved ones alone', () => {
    const { agreed, today } = book.money;
    expect(agreed).toMatchObject({ changeOrders: 12025, current: 10_012_025, notCovered: today - 10_012_025 });
  });
});
