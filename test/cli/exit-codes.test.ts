import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { commands } from '../../src/cli/main.js';
import { bookmatch } from './command-line.js';
import { HouseUnderGit } from './house-under-git.js';

/** What is written to `out` with --quiet: what was asked for, or nothing. */
type Quiet = 'asked' | 'nothing';

/** Every command, on a house in order and on one whose records have an error. Lines run one after another: the house has a history. What is not
 *  said with --quiet is said without it. */
const inOrder: readonly (readonly [line: string, code: number, quiet: Quiet])[] = [
  ['check', 0, 'nothing'],
  ['check --json', 0, 'asked'],
  ['build --json', 0, 'asked'],
  ['handout carpentry', 0, 'nothing'],
  ['handout carpentry --json', 0, 'asked'],
  ['handout plumbing', 2, 'nothing'],
  ['publish HOUSE/for-carpentry --for carpentry', 0, 'nothing'],
  ['publish HOUSE --for carpentry', 2, 'nothing'],
  ['publish HOUSE/for-all --for everybody', 2, 'nothing'],
  ['portfolio HOUSE/houses', 0, 'asked'],
  ['portfolio HOUSE/houses --out HOUSE', 2, 'nothing'],
  ['portfolio HOUSE/content', 2, 'nothing'],
  ['lay', 0, 'asked'],
  ['takeoff', 0, 'asked'],
  ['schedule finish', 0, 'asked'],
  ['schedule nothing-such', 2, 'nothing'],
  ['calendar', 0, 'asked'],
  ['alternatives', 0, 'asked'],
  ['take-over nothing-such --by owner', 2, 'nothing'],
  ['consider study floor oak', 0, 'nothing'],
  ['consider study floor elm', 2, 'nothing'],
  ['note study floor --say North', 0, 'nothing'],
  ['note attic --say None', 2, 'nothing'],
  ['photo floor oak HOUSE/list.csv --shows Boards', 2, 'nothing'],
  ['choose study floor oak --by owner --dry-run', 0, 'asked'],
  ['choose study floor pine --by owner', 0, 'nothing'],
  ['choose HOUSE/list.csv', 1, 'nothing'],
  ['choose HOUSE/nothing-such.txt', 2, 'nothing'],
  ['choose study floor elm --by owner', 2, 'nothing'],
  ['explain option.waste', 0, 'asked'],
  ['explain option.wasted', 2, 'nothing'],
  ['take-in HOUSE/list.csv --category floor', 1, 'asked'],
  ['take-in HOUSE/list.csv --category floor --write', 0, 'asked'],
  ['take-in HOUSE/list.csv --category flor', 2, 'nothing'],
  ['rooms HOUSE/list.csv', 1, 'nothing'],
  ['rooms HOUSE/nothing-such.ifc', 2, 'nothing'],
  ['new allowance Floors --amount $900 --for floor --covers material,labor', 0, 'nothing'],
  ['new allowance Floors --amount $900 --for floor', 2, 'nothing'],
  ['new option flor', 2, 'nothing'],
  ['new HOUSE', 2, 'nothing'],
  ['issue --for pricing', 1, 'nothing'],
  ['issue --for fun', 2, 'nothing'],
  ['compare HEAD', 0, 'asked'],
  ['compare HEAD --draft --reason More', 2, 'nothing'],
  ['compare nothing-such', 2, 'nothing'],
  ['print-change 1', 2, 'nothing'],
  ['approve 1 --by owner', 2, 'nothing'],
  ['decline 1 --by owner', 2, 'nothing'],
  ['void 1 --by owner --why Wrong', 2, 'nothing'],
  ['verify HOUSE/list.csv', 1, 'asked'],
  ['verify HOUSE/nothing-such.pdf', 2, 'nothing'],
  ['sign HOUSE/list.csv --certificate HOUSE/list.csv --as owner', 1, 'nothing'],
  ['sign HOUSE/list.csv --certificate HOUSE/nothing-such.p12', 2, 'nothing'],
  ['accept HOUSE/list.csv', 1, 'nothing'],
  ['accept HOUSE/nothing-such.pdf', 2, 'nothing'],
  ['certificate Me --out HOUSE/list.csv', 2, 'nothing'],
  ['manual --out HOUSE/list.csv', 2, 'nothing'],
  ['editor --server no-such-server-of-yaml', 2, 'nothing'],
  ['desk --port 70000', 2, 'nothing'],
  ['completion bash', 0, 'asked'],
  ['completion ksh', 2, 'nothing'],
];

/** Commands that read the house's records: these have an error. */
const withErrors: readonly string[] = [
  'check',
  'build',
  'handout carpentry',
  'publish HOUSE/for-owner --for owner',
  'lay',
  'takeoff',
  'schedule doors',
  'calendar',
  'alternatives',
  'take-over one --by owner',
  'consider study floor oak',
  'choose study floor oak --by owner',
  'take-in HOUSE/list.csv --category floor',
  'new option floor',
  'rooms HOUSE/list.csv',
  'print-change 1',
  'approve 1 --by owner',
  'decline 1 --by owner',
  'void 1 --by owner --why Wrong',
  'compare HEAD',
];

let house: HouseUnderGit;
let wrong: HouseUnderGit;
beforeAll(() => {
  house = new HouseUnderGit();
  writeFileSync(join(house.dir, 'list.csv'), 'Art. no.,Product,Price\nA-1,Oak strip,$9.00 / sq ft\n');
  cpSync(join(house.dir, 'content'), join(house.dir, 'houses/one/content'), { recursive: true });
  wrong = new HouseUnderGit();
  writeFileSync(join(wrong.dir, 'list.csv'), readFileSync(join(house.dir, 'list.csv')));
  wrong.edit('content/rooms/study.md', 'chosen: pine', 'chosen: pinee');
});
afterAll(() => {
  house.remove();
  wrong.remove();
});

/** A line's words on a house; a command that takes none is left as it is. */
function wordsOf(line: string, { dir }: HouseUnderGit): readonly string[] {
  const words = line.replaceAll('HOUSE', dir).split(' ');
  return /^(?:new HOUSE|portfolio|sign|certificate|manual|editor|completion)/u.test(line)
    ? words
    : [...words, '--house', dir];
}

test('names every command', () => {
  const named = new Set(inOrder.map(([line]) => line.split(' ')[0]));
  expect(commands.map(({ name }) => name).filter((name) => !named.has(name))).toEqual([]);
});

test.each(inOrder)('%s: %i, and --quiet leaves %s', async (line, code, quiet) => {
  const ran = await bookmatch([...wordsOf(line, house), '--quiet']);
  expect(ran).toMatchObject({ code });
  expect(ran.out === '' ? 'nothing' : 'asked').toBe(quiet);
  if (code !== 0) expect(ran.said).not.toBe('');
});

test.each(withErrors)('%s: 1, and what is wrong is said even with --quiet', async (line) => {
  const ran = await bookmatch([...wordsOf(line, wrong), '--quiet']);
  expect(ran).toMatchObject({ code: 1, out: '' });
});

test.each(commands)('$name with a flag that there is not: 2', async ({ name }) => {
  expect(await bookmatch([name, '--nothing-such'])).toMatchObject({ code: 2, out: '' });
});

test('without --quiet, what was done is told', async () => {
  expect((await bookmatch(['check', '--house', house.dir])).out).toMatch(/records? read: .*No errors\.\n/u);
});

test('--help ends with what the codes mean', async () => {
  for (const words of [['--help'], ['check', '--help'], ['new', 'room', '--help']])
    expect((await bookmatch(words)).out).toMatch(/\nExit code: 0 .*; 1 .*; 2 .*\n$/u);
});
