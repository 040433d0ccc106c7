import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { afterAll, expect, test, vi } from 'vitest';
import { manualTexts } from '../../src/cli/manual.js';
import { bookmatch } from './command-line.js';

/** What the how-to pages tell people to type, typed in their order: each page goes on where the one before ended. Blocks without a language show
 *  what needs somebody else: a scan, a second signer, a change that the owners want. */

const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-manual-'));
afterAll(() => rmSync(scratch, { recursive: true }));

const home = process.cwd();
afterAll(() => process.chdir(home));
for (const who of ['AUTHOR', 'COMMITTER']) {
  vi.stubEnv(`GIT_${who}_NAME`, 'A reader');
  vi.stubEnv(`GIT_${who}_EMAIL`, 'reader@example.org');
}
vi.stubEnv('GIT_PAGER', 'cat');
afterAll(() => void vi.unstubAllEnvs());

const blocksOf = (text: string, language: string): readonly string[] =>
  [...text.matchAll(new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\`$`, 'gmu'))].map(([, block]) => block ?? '');

/** Words as a shell parts them, with quotes. */
function wordsOf(line: string): readonly string[] {
  const words = line.match(/(?:[^\s"']|'[^']*'|"(?:\\.|[^"\\])*")+/gu) ?? [];
  return words.map((word) =>
    word.replace(
      /'([^']*)'|"((?:\\.|[^"\\])*)"/gu,
      (_, single: string | undefined, double = '') => single ?? String(double).replace(/\\(.)/gu, '$1'),
    ),
  );
}

interface Ended {
  readonly code: number;
  readonly output: string;
}

async function type(line: string): Promise<Ended> {
  const [name = '', ...rest] = wordsOf(line);
  if (name === 'bookmatch') {
    const { code, said } = await bookmatch(rest);
    return { code, output: said };
  }
  return new Promise((done) => {
    execFile(name, rest, (error, out, err) => done({ code: error ? Number(error.code ?? 1) : 0, output: out + err }));
  });
}

const pages = (await manualTexts()).filter(({ path }) => path.startsWith('how-to/'));

test('what the how-to pages tell to type does what they say', async () => {
  let dir = scratch;
  process.chdir(dir);
  let typed = 0;
  for (const { path, text } of pages) {
    writeFileSync(join(scratch, 'passphrase.txt'), 'eight letters or more\n');
    for (const line of blocksOf(text, 'sh').flatMap((block) => block.trim().split('\n'))) {
      if (line.startsWith('cd ')) {
        dir = join(dir, line.slice(3));
        process.chdir(dir);
        continue;
      }
      const { code, output } = await type(line);
      expect(code, `${path}: ${line}\n${output}`).toBe(0);
      typed += 1;
    }
  }
  expect(typed).toBeGreaterThan(15);
  for (const made of [
    '_site/book/index.html',
    '_site/book.pdf',
    '_site/handout/flooring/index.html',
    'issued/001.pdf',
    '../owner.p12',
  ])
    expect(existsSync(join(dir, made)), made).toBe(true);
  expect(readFileSync(join(dir, 'content/rooms/kitchen.md'), 'utf8')).toContain('oak-plank');
}, 300_000);

test('no page writes money where a shell takes a part of it away', () => {
  for (const { path, text } of pages) {
    const shell = [...text.matchAll(/^```(?:sh)?\n([\s\S]*?)^```$/gmu)].flatMap(([, block = '']) => block.split('\n'));
    for (const line of shell) expect(line.replace(/'[^']*'/gu, ''), path).not.toMatch(/\$\d/u);
  }
});

test('no page is longer than a screen or two', () => {
  for (const { path, text } of pages) expect(text.split('\n').length, path).toBeLessThan(60);
});
