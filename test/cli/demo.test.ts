import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { run } from '../../src/cli/main.js';
import { loadBook } from '../../src/disk/load/index.js';
import { makeConsole } from './make-console.js';

vi.setConfig({ hookTimeout: 240_000, testTimeout: 120_000 });

const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-demo-'));
const demo = join(scratch, 'larch-hollow');
const signed = join(demo, 'issued', '002-signed-owner-builder.pdf');
const git = (...args: string[]): string => execFileSync('git', ['-C', demo, ...args], { encoding: 'utf8' });

async function bookmatch(...words: string[]): Promise<{ readonly code: number; readonly said: string }> {
  let said = '';
  const tell = (text: string): void => void (said += text);
  const code = await run(words, makeConsole({ out: tell, error: tell }));
  return { code, said };
}

beforeAll(async () => {
  expect((await bookmatch('new', '--demo', demo)).code).toBe(0);
});
afterAll(() => rmSync(scratch, { recursive: true }));

describe('the demo house with its history', () => {
  test('is what the records of this repository are, and more', () => {
    for (const name of readdirSync('content/rooms')) {
      const path = join('content', 'rooms', name);
      expect(readFileSync(join(demo, path), 'utf8'), path).toBe(readFileSync(path, 'utf8'));
    }
    expect(git('status', '--porcelain')).toBe('');
    expect(git('log', '--format=%ad', '--date=short').trim().split('\n').at(-1)).toBe('2026-02-16');
  });

  test('began at the contract sum, and its change orders lead to what was signed', async () => {
    const { book, since, problems } = await loadBook(demo, '2026-04-20');
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(book?.issues.map(({ purpose, signatures }) => [purpose, signatures.map(({ role }) => role)])).toEqual([
      ['pricing', []],
      ['sign-off', ['owner', 'builder']],
    ]);
    expect(book?.changeOrders.map(({ state }) => state)).toEqual(['approved', 'approved', 'declined']);
    // What was signed is the contract with its approved change orders, to the cent.
    const issued = since?.read().value?.money.today;
    expect(issued).toBe(book?.money.agreed.current);
    expect(book?.money.agreed.notCovered).toBe((book?.money.today ?? 0) - (issued ?? 0));
    const states = new Set(book?.rooms.map(({ signed: one }) => one?.state));
    expect([...states].sort()).toEqual(['changed', 'signed']);
  });

  test('check computes each change order again and finds nothing', async () => {
    expect((await bookmatch('check', '--house', demo, '--on', '2026-04-20')).code).toBe(0);
  });

  test('the signed book holds, for this program and for another', async () => {
    const { code, said } = await bookmatch('verify', signed, '--house', demo);
    expect([code, said.includes('All of this holds.')]).toEqual([0, true]);
    const other = execFileSync('pdfsig', ['-nocert', signed], { encoding: 'utf8' });
    expect(other.match(/Signature is Valid/g)).toHaveLength(2);
  });

  test('a shallow clone without history still tells what was issued', async () => {
    const clone = join(scratch, 'shallow');
    execFileSync('git', ['clone', '-q', '--depth', '1', `file://${demo}`, clone]);
    const { code, said } = await bookmatch('compare', 'issue-1', 'issue-2', '--house', clone, '--on', '2026-04-20');
    expect([code, said.includes('issue-1 → issue-2')]).toEqual([0, true]);
    const checked = await bookmatch('check', '--house', clone, '--on', '2026-04-20');
    expect([checked.code, checked.said.includes('cannot be computed again')]).toEqual([0, true]);
  });

  test('a folder that is not empty is left alone', async () => {
    const { code, said } = await bookmatch('new', '--demo', demo);
    expect([code, said.includes('is not empty')]).toEqual([2, true]);
  });
});

describe('accept', () => {
  test('refuses a signed book that was altered, and records nothing', async () => {
    const bytes = readFileSync(signed);
    bytes[40_000] = (bytes[40_000] ?? 0) ^ 1;
    const altered = join(scratch, 'altered.pdf');
    writeFileSync(altered, bytes);
    const before = git('rev-parse', 'HEAD');
    const { code, said } = await bookmatch('accept', altered, '--house', demo);
    expect([code, said.includes('Nothing was recorded.')]).toEqual([1, true]);
    expect(git('rev-parse', 'HEAD')).toBe(before);
  });

  test('records a scan as signed by hand, and keeps what was recorded', async () => {
    const scan = join(scratch, 'scan.png');
    writeFileSync(scan, 'a scan');
    const words = ['--by-hand', '--issue', '1', '--as', 'owner', '--name', 'The owners', '--on', '2026-02-20'];
    const { code } = await bookmatch('accept', scan, '--house', demo, ...words);
    expect(code).toBe(0);
    const { book } = await loadBook(demo, '2026-04-20');
    expect(book?.issues[0]?.signatures).toMatchObject([{ role: 'owner', how: 'hand', on: '2026-02-20' }]);
    expect(book?.issues[1]?.signatures).toHaveLength(2);
    expect(git('status', '--porcelain')).toBe('');
    expect(readFileSync(join(demo, 'issued', '001-by-hand-owner.png'), 'utf8')).toBe('a scan');
  });

  test('wrong usage: a scan of nobody, of no issue, of no picture', async () => {
    const scan = join(scratch, 'scan.txt');
    writeFileSync(scan, 'text');
    const of = (...words: string[]) => bookmatch('accept', scan, '--house', demo, '--by-hand', ...words);
    expect((await of()).said).toContain('wants --issue, --as and --name');
    expect((await of('--issue', '9', '--as', 'owner', '--name', 'x')).said).toContain('there is no issue 9');
    expect((await of('--issue', '1', '--as', 'owner', '--name', 'x')).said).toContain('a scan is a PDF or a picture');
  });
});
