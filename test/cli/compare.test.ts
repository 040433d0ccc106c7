import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../src/cli/main.js';
import { makeConsole } from './make-console.js';
import type { Comparison } from '../../src/core/compare/index.js';

const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-compare-'));
const house = join(scratch, 'house');
const small = join(import.meta.dirname, '..', 'cases', 'small-house');
afterAll(() => rmSync(scratch, { recursive: true }));

const git = (dir: string, ...args: string[]): string =>
  execFileSync('git', ['-C', dir, '-c', 'user.name=Builder', '-c', 'user.email=builder@example.invalid', ...args], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  });

function edit(path: string, ...pairs: readonly (readonly [string, string])[]): void {
  const file = join(house, path);
  let text = readFileSync(file, 'utf8');
  for (const [from, to] of pairs) {
    if (!text.includes(from)) throw new Error(`${path} has no ${from}`);
    text = text.replaceAll(from, to);
  }
  writeFileSync(file, text);
}

async function command(...words: string[]): Promise<{ code: number; out: string; error: string }> {
  let [out, error] = ['', ''];
  const console = makeConsole({
    out: (text: string) => void (out += text),
    error: (text: string) => void (error += text),
  });
  const code = await run(['compare', ...words], console);
  return { code, out, error };
}

/** Three versions: the small house; oak for pine, and pine dearer; then the study and the pine renamed, not committed. */
beforeAll(() => {
  cpSync(small, house, { recursive: true });
  git(scratch, 'init', '-q', '-b', 'main', house);
  git(house, 'add', '.');
  git(house, 'commit', '-qm', 'first');
  git(house, 'tag', 'issue-1');
  edit('content/rooms/study.md', ['chosen: pine', 'chosen: oak']);
  edit('content/options/floor/pine.md', ['$4.00', '$4.50']);
  edit('content/options/floor/oak.md', ['$10.00', '$10.25']);
  git(house, 'commit', '-qam', 'second');
  git(house, 'tag', 'issue-2');
  git(house, 'branch', 'for-pricing');
  renameSync(join(house, 'content/rooms/study.md'), join(house, 'content/rooms/library.md'));
  renameSync(join(house, 'content/options/floor/pine.md'), join(house, 'content/options/floor/white-pine.md'));
  edit(
    'content/rooms/library.md',
    ['name: Study', 'name: Library'],
    ['swing: study', 'swing: library'],
    ['[oak, pine]', '[oak, white-pine]'],
  );
});

describe('between two versions in git', () => {
  test('tells the choice, apart from the price book', async () => {
    const { code, out } = await command('issue-1', 'issue-2', '--house', house);
    expect(code).toBe(0);
    expect(out).toContain('Floor, floor: Pine strip → Oak strip');
    // 140 sq ft in cartons × $6.00, 5 % tax; the price of oak moves the standard as well as the choice.
    expect(out).toMatch(/^Choices +\+\$882\.00$/m);
    expect(out).toMatch(/Oak strip +Material +\$10 \/ sq ft +\$10\.25 \/ sq ft\n/);
    expect(out).toContain('Carpentry: 1 selection\n');
    expect(out).toMatch(/^content\/rooms\/study\.md +Edited$/m);
  });

  test('follows a room and an option that were renamed, up to the working tree', async () => {
    const { out } = await command('issue-2', '--house', house, '--json');
    const comparison = JSON.parse(out) as Comparison;
    expect(comparison.money).toMatchObject({ difference: 0, together: 'nothing' });
    expect(comparison.rooms).toMatchObject([
      { room: 'library', roomBefore: 'study', renamedFrom: '101 Study', selections: [], parts: [], drawings: [] },
    ]);
    expect(comparison.priceBook).toMatchObject([{ kind: 'renamed', renamedFrom: 'floor/pine', fields: [] }]);
    expect(comparison.records).toEqual([
      { path: 'content/options/floor/white-pine.md', kind: 'renamed', renamedFrom: 'content/options/floor/pine.md' },
      { path: 'content/rooms/library.md', kind: 'renamed', renamedFrom: 'content/rooms/study.md' },
    ]);
    expect(comparison.from.commit).toBe(git(house, 'rev-parse', 'issue-2').trim());
  });

  test('an option renamed and made dearer at once is the price book, not a choice', async () => {
    edit('content/rooms/library.md', ['chosen: oak', 'chosen: white-pine']);
    edit('content/options/floor/white-pine.md', ['$4.50', '$5.00']);
    git(house, 'stash', 'push', '-q', '--include-untracked');
    git(house, 'checkout', '-q', '-b', 'pine', 'issue-2');
    edit('content/rooms/study.md', ['chosen: oak', 'chosen: pine']);
    git(house, 'commit', '-qam', 'pine');
    git(house, 'checkout', '-q', 'main');
    git(house, 'stash', 'pop', '-q');
    const comparison = JSON.parse((await command('pine', '--house', house, '--json')).out) as Comparison;
    // 140 sq ft × $0.50, 5 % tax
    expect(comparison.money).toMatchObject({ choices: 0, sharedPacks: 0, priceBook: 7_350, difference: 7_350 });
  });
});

describe('a version that is not there', () => {
  test.each([
    ['isue-1', `there is no version 'isue-1'; did you mean 'issue-1'?`],
    ['for-pricng', `there is no version 'for-pricng'; did you mean 'for-pricing'?`],
    ['nowhere-near', `there is no version 'nowhere-near'`],
  ])('%s', async (version, words) => {
    expect(await command(version, '--house', house)).toEqual({ code: 2, out: '', error: `${words}\n` });
    expect(await command('issue-1', version, '--house', house)).toMatchObject({ code: 2, error: `${words}\n` });
  });

  test('a shallow clone compares what it has and says how far back it goes', async () => {
    const shallow = join(scratch, 'shallow');
    git(scratch, 'clone', '-q', '--depth', '1', `file://${house}`, shallow);
    expect(await command('HEAD', '--house', shallow)).toMatchObject({ code: 0 });
    const { code, error } = await command('issue-1', '--house', shallow);
    expect(code).toBe(2);
    expect(error).toMatch(
      /^there is no version 'issue-1' here.*\. This clone is shallow: it holds 1 commit, back to \d{4}-\d\d-\d\d \([0-9a-f]+\)\. What is older comes with: git fetch --unshallow\n$/,
    );
  });

  test('records with errors are named, and nothing else is said', async () => {
    git(house, 'stash', 'push', '-q', '--include-untracked');
    edit('content/rooms/study.md', ['chosen: oak', 'chosen: elm']);
    const broken = await command('issue-1', '--house', house);
    git(house, 'checkout', '-q', '--', '.');
    git(house, 'stash', 'pop', '-q');
    expect(broken).toMatchObject({ code: 1, out: '' });
    expect(broken.error).toContain(`the records of 'the records on disk' have errors.`);
  });
});

test('many records cost no more git processes than few: one cat-file for a version', async () => {
  const large = join(scratch, 'large');
  cpSync(small, large, { recursive: true });
  const oak = readFileSync(join(large, 'content/options/floor/oak.md'), 'utf8');
  for (let number = 0; number < 300; number++) {
    writeFileSync(join(large, `content/options/floor/oak-${number}.md`), oak.replace('Oak-1', `Oak-${number + 2}`));
  }
  git(scratch, 'init', '-q', large);
  git(large, 'add', '.');
  git(large, 'commit', '-qm', 'first');
  const log = join(scratch, 'calls');
  writeFileSync(log, '');
  const path = process.env['PATH'] ?? '';
  const real = execFileSync('sh', ['-c', 'command -v git'], { encoding: 'utf8' }).trim();
  const bin = join(scratch, 'bin');
  mkdirSync(bin);
  writeFileSync(join(bin, 'git'), `#!/bin/sh\necho "$*" >> '${log}'\nexec '${real}' "$@"\n`);
  chmodSync(join(bin, 'git'), 0o755);
  process.env['PATH'] = `${bin}:${path}`;
  try {
    expect(await command('HEAD', '--house', large)).toMatchObject({ code: 0 });
  } finally {
    process.env['PATH'] = path;
  }
  const calls = readFileSync(log, 'utf8').trim().split('\n');
  const what = calls.map(
    (call) => /(rev-parse|ls-tree|cat-file|[a-z-]+$)/.exec(call.replace(/^.*quotePath=false /, ''))?.[1],
  );
  expect(what).toEqual(['rev-parse', 'ls-tree', 'cat-file']);
});

describe('--out', () => {
  test('writes pages that hold both sides and the text of the records', async () => {
    const out = join(scratch, 'pages');
    const { code, out: said } = await command('issue-1', 'issue-2', '--house', house, '--out', out);
    expect(code).toBe(0);
    expect(said).toContain(join(out, 'comparison', 'index.html'));
    const room = readFileSync(join(out, 'comparison/rooms/study.html'), 'utf8');
    expect(room).toContain('Pine strip');
    expect(room).toContain('Oak strip');
    const lines = [...room.matchAll(/<span class="(line[^"]*)">(.*?)\n<\/span>/gs)].map(
      ([, kind, html = '']) => `${kind ?? ''}: ${html.replace(/<[^>]+>/g, '')}`,
    );
    expect(lines).toContain('line line-gone: Taken out: -    chosen: pine');
    expect(lines).toContain('line line-new: New: +    chosen: oak');
    const records = readFileSync(join(out, 'comparison/records.html'), 'utf8');
    expect(records).toContain('content/options/floor/pine.md');
    expect(room.match(/class="swatch swatch-card"/g)).toHaveLength(2);
    const index = readFileSync(join(out, 'comparison/index.html'), 'utf8');
    expect(index).toContain('what changed from issue-1 to issue-2');
    expect(index).not.toContain('data-search-link');
    expect(readdirSync(out)).toEqual(['comparison']);
  });
});
