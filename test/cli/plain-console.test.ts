import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/main.js';
import { makeConsole } from './make-console.js';

/** Recolours, clears the screen, turns text round, ends a line of a terminal, rings the bell. */
const nasty = '\u001b[31m\u001b[2J\u202e\u009b2K\u0085\u0007';
/** The same as a record writes it in double quotes, with no such character in the file. */
const escaped = String.raw`\e[31m\e[2J\u202e\x9b2K\N\a`;
/** What records may hold: what turns text round within itself, and ends lines of a terminal. */
const odd = '\u2066\u202a\u2028\u2029\u202c\u2069';
const oddEscaped = String.raw`\u2066\u202a\L\P\u202c\u2069`;
/** All that may not reach a terminal, but for the ends of lines. */
const controls = /(?!\n|\r\n)[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/u;
/** Colours of the program itself. */
const colors = /\u001b\[(?:1|2|22|31|33|36|39)m/gu;

let house = '';

beforeAll(() => {
  house = mkdtempSync(join(tmpdir(), 'bookmatch-plain-'));
  cpSync(join(import.meta.dirname, '../cases/small-house'), house, { recursive: true });
  const edit = (path: string, from: RegExp, to: string): void => {
    const text = readFileSync(join(house, path), 'utf8');
    if (!from.test(text)) throw new Error(`${path} has no ${String(from)}`);
    writeFileSync(
      join(house, path),
      text.replace(from, () => to),
    );
  };
  edit('content/rooms/study.md', /^name: .*/mu, `name: "Stu${oddEscaped}dy"`);
  edit('content/options/floor/pine.md', /^name: .*/mu, `name: "Pi${oddEscaped}ne"`);
  edit('content/trades/carpentry.md', /^name: .*/mu, `name: "Car${oddEscaped}pentry"`);
  edit('content/house.md', /^name: .*/mu, `name: "Lar${oddEscaped}ch"`);
});

afterAll(() => rmSync(house, { recursive: true }));

async function said(argv: readonly string[], color = false): Promise<string> {
  let text = '';
  const take = (more: string): void => void (text += more);
  await run(argv, makeConsole({ out: take, error: take, color }));
  return text;
}

describe('no control character of a record, a file name or a flag reaches the terminal', () => {
  it.each([
    ['check'],
    ['check', '--cautions'],
    ['check', '--json'],
    ['takeoff'],
    ['takeoff', '--csv'],
    ['takeoff', '--json'],
    ['schedule', 'rooms'],
    ['schedule', 'orders', '--json'],
    ['calendar'],
    ['calendar', '--ics'],
    ['lay'],
    ['build', '--json'],
    ['explain', 'floor'],
    ['schedule', `rooms${nasty}`],
    ['handout', `trade${nasty}`],
    ['explain', `key${nasty}`],
    ['approve', `1${nasty}`, '--by', `who${nasty}`],
    [`nothing${nasty}`],
    ['check', `--flag${nasty}`],
    ['check', '--on', `2026${nasty}`],
    ['compare', `issue-${nasty}`],
  ])('%j', async (...argv) => {
    const text = await said([...argv, '--house', house]);
    expect(text).not.toBe('');
    expect(text).not.toMatch(controls);
  });

  it('of a folder that is not there, and of a file that is out of place', async () => {
    expect(await said(['check', '--house', `no${nasty}where`])).not.toMatch(controls);
    const stray = join(house, `content/rooms/a${nasty}b.md`);
    writeFileSync(stray, `---\nname: x\n${nasty}: y\n---\n`);
    const text = await said(['check', '--house', house]);
    rmSync(stray);
    expect(text).toContain('slug-form');
    expect(text).not.toMatch(controls);
  });

  it('beside the colours of problems', async () => {
    const file = join(house, 'content/rooms/study.md');
    const before = readFileSync(file, 'utf8');
    writeFileSync(
      file,
      before.replace(/^use: .*/mu, () => `use: "x${escaped}"\nk${nasty}: 1`),
    );
    const text = await said(['check', '--house', house], true);
    writeFileSync(file, before);
    expect(text).toMatch(colors);
    expect(text.replace(colors, '')).not.toMatch(controls);
    expect(text).toContain('�[2J');
  });

  it('keeps data as they are, written as JSON does', async () => {
    const book = JSON.parse(await said(['build', '--json', '--house', house])) as { house: { name: string } };
    expect(book.house.name).toBe(`Lar${odd}ch`);
  });
});

it('nothing else of the program writes to a terminal', () => {
  const src = join(import.meta.dirname, '../../src');
  const files = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((path) => /\.tsx?$/u.test(path));
  const writes = files.filter((path) =>
    /process\.(?:stdout|stderr)|console\.log|stdio: .inherit/u.test(readFileSync(join(src, path), 'utf8')),
  );
  // What goes to an editor are messages to a program.
  expect(writes.sort()).toEqual([
    'cli/ask-secret.ts',
    'cli/bookmatch.ts',
    'cli/editor.ts',
    'cli/terminal-asker.ts',
    'cli/this-terminal.ts',
  ]);
});
