import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import process from 'node:process';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { commands } from '../../src/cli/main.js';
import { bookmatch } from './command-line.js';
import { HouseUnderGit } from './house-under-git.js';

let house: HouseUnderGit;
beforeAll(() => {
  house = new HouseUnderGit();
  mkdirSync(join(house.dir, 'content/issues'));
  writeFileSync(join(house.dir, 'content/issues/001.md'), '');
});
afterAll(() => house.remove());

/** What may stand for the last word of a line; HOUSE is the house's folder. */
async function offered(shell: string, line: string): Promise<readonly string[]> {
  const words = line.split(' ').map((word) => word.replace('HOUSE', house.dir));
  const { code, out } = await bookmatch(['completion', shell, '--', ...words]);
  expect(code).toBe(0);
  return out.split('\n').slice(0, -1);
}

describe('at a Tab', () => {
  test.each<[line: string, words: readonly string[]]>([
    ['che', ['check']],
    ['print-change --', ['--house', '--on', '--quiet', '--help']],
    ['check --caut', ['--cautions']],
    ['new s', ['slots']],
    ['new option --house HOUSE ', ['ceiling-board', 'floor']],
    ['new option --house HOUSE floor --for ', ['study']],
    ['take-in --house HOUSE prices.csv --category fl', ['floor']],
    ['choose --house HOUSE ', ['study']],
    ['handout --house HOUSE ', ['carpentry']],
    ['handout --house=HOUSE c', ['carpentry']],
    ['handout --house = HOUSE c', ['carpentry']],
    ['handout --house HOUSE --json c', ['carpentry']],
    ['compare --house HOUSE ', ['HEAD', 'issue-1']],
    ['compare --house HOUSE issue-1 i', ['issue-1']],
    ['new category --house HOUSE --milestone tr', ['trim']],
    ['takeoff --by ', ['room', 'trade', 'option']],
    ['takeoff --by = t', ['trade']],
    ['takeoff --by =', ['room', 'trade', 'option']],
    ['schedule door', ['doors']],
    ['completion z', ['zsh']],
    ['nothing-such ', []],
  ])('bookmatch %s', async (line, words) => {
    expect(await offered('bash', line)).toEqual(words);
  });

  test.each([
    ['a file', 'verify '],
    ['a folder', 'check --house '],
    ['a house that is not there', 'handout --house nowhere '],
    ['words of one’s own', 'approve 1 --by '],
  ])('%s is left to the shell', async (_, line) => {
    expect(await offered('bash', line)).toEqual([]);
  });

  test('every command is offered, and every flag of each', async () => {
    expect(await offered('bash', '')).toEqual(commands.map(({ name }) => name));
    for (const { name } of commands) {
      const { out: help } = await bookmatch([name, '--help']);
      const flags = [...help.matchAll(/^ {2}(?:-\w, )?(--[a-z-]+)/gmu)].map(([, flag]) => flag);
      expect((await offered('bash', `${name} --`)).toSorted(), name).toEqual(flags.toSorted());
    }
  });

  test('zsh and fish are told what a word is, and take a flag with its value as one', async () => {
    expect(await offered('fish', 'schedu')).toEqual(['schedule\tprint one of the schedules of the house']);
    expect(await offered('zsh', 'takeoff --by=t')).toEqual(['--by=trade\t']);
  });
});

describe('the script', () => {
  const bin = mkdtempSync(join(tmpdir(), 'bookmatch-bin-'));
  afterAll(() => rmSync(bin, { recursive: true }));
  const environment = { ...process.env, PATH: `${bin}${delimiter}${process.env['PATH'] ?? ''}` };

  beforeAll(async () => {
    for (const shell of ['bash', 'zsh', 'fish'])
      writeFileSync(join(bin, `script.${shell}`), (await bookmatch(['completion', shell])).out);
    const root = join(import.meta.dirname, '../..');
    const program = join(bin, 'bookmatch');
    writeFileSync(program, `#!/bin/sh\ncd ${root} && exec node --import tsx src/cli/bookmatch.ts "$@"\n`);
    chmodSync(program, 0o755);
  });

  test('makes bash complete by the program itself', () => {
    const line = `bookmatch new option --house ${house.dir} fl`;
    const ask = `
      source ${bin}/script.bash
      complete -p bookmatch
      COMP_WORDS=(${line}) COMP_CWORD=5
      _bookmatch bookmatch
      printf '%s\\n' "\${COMPREPLY[@]}"`;
    const said = execFileSync('bash', ['--norc', '-c', ask], { env: environment, encoding: 'utf8' });
    expect(said).toBe('complete -o default -F _bookmatch bookmatch\nfloor\n');
  });

  test.for(['bash', 'zsh', 'fish'])('is read by %s where there is one', (shell, { skip }) => {
    try {
      execFileSync(shell, ['-c', 'true'], { stdio: 'ignore' });
    } catch {
      skip(`there is no ${shell}`);
    }
    expect(execFileSync(shell, ['-n', join(bin, `script.${shell}`)], { encoding: 'utf8' })).toBe('');
  });

  test('is of these shells alone', async () => {
    expect(await bookmatch(['completion', 'ksh'])).toMatchObject({ code: 2, said: expect.stringContaining('bash') });
  });
});
