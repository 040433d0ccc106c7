import { execFile } from 'node:child_process';
import { createHash, createHmac } from 'node:crypto';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { promisify } from 'node:util';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keptResults } from '../../src/disk/store/index.js';

let dir = '';
/** Each test has a home that no other had: what was read of a key is known for as long as the program runs. */
const own = (user = 'owner'): string => join(dir, user, 'bookmatch');
const house = (name = 'house'): string => join(dir, name);
const live = (user: string): void => void vi.stubEnv('XDG_STATE_HOME', join(dir, user));

beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'bookmatch-own-key-'));
  for (const name of ['house', 'other-house']) mkdirSync(house(name));
  live('owner');
});
afterEach(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
  rmSync(dir, { recursive: true, force: true });
});

const [key, value] = ['records of a house', { money: 12 }];
const file = (of = house(), name = 'sound'): string => join(of, '.bookmatch', `${name}.json`);
const put = (of = house(), name = 'sound') => keptResults(of, name).put(key, value);
const get = (of = house(), name = 'sound') => keptResults(of, name).get(key);

test('a key is made when it is first needed, for its user alone, and is the same ever after', async () => {
  expect(await get()).toBeUndefined();
  expect(existsSync(own())).toBe(false);
  await put();
  expect(await get()).toEqual(value);
  expect(readdirSync(own())).toEqual(['key']);
  expect(statSync(join(own(), 'key')).mode & 0o777).toBe(0o600);
  expect(statSync(own()).mode & 0o777).toBe(0o700);
  const made = readFileSync(join(own(), 'key'), 'utf8');
  expect(made).toMatch(/^[0-9a-f]{64}\n$/u);
  await put(house('other-house'));
  expect(readFileSync(join(own(), 'key'), 'utf8')).toBe(made);
});

test('the code is the HMAC of name, key and bytes, each with its length, by an outside program', async () => {
  await put();
  const [code, text] = readFileSync(file(), 'utf8').split('\n');
  const secret = readFileSync(join(own(), 'key'), 'utf8').trim();
  writeFileSync(join(dir, 'bytes'), `5 sound18 ${key}12 ${text ?? ''}`);
  const args = ['dgst', '-sha256', '-mac', 'HMAC', '-macopt', `hexkey:${secret}`, '-r', join(dir, 'bytes')];
  const { stdout } = await promisify(execFile)('openssl', args);
  expect(stdout.slice(0, 64)).toBe(code);
});

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');
const json = JSON.stringify({ money: 13 });

test.each([
  ['without a code', json],
  ['with an empty one', `\n${json}`],
  ['by the digest that earlier programs wrote', `${sha256(key + json)}\n${json}`],
  [
    'by a key that is guessed',
    `${createHmac('sha256', '').update(`5 sound18 ${key}12 ${json}`).digest('hex')}\n${json}`,
  ],
  ['with a code of other letters', `${'é'.repeat(64)}\n${json}`],
])('what came with a house, %s, is nothing kept', async (_, text) => {
  await put();
  writeFileSync(file(), text);
  expect(await get()).toBeUndefined();
});

test('what was kept is of that name, that key and those bytes alone', async () => {
  await put();
  const text = readFileSync(file(), 'utf8');
  writeFileSync(file(house(), 'layouts'), text);
  expect(await get(house(), 'layouts')).toBeUndefined();
  expect(await keptResults(house(), 'sound').get('records of another house')).toBeUndefined();
  writeFileSync(file(), text.replace('12', '13'));
  expect(await get()).toBeUndefined();
});

test('moved from another house it is answered only where that would be the same', async () => {
  await put();
  cpSync(join(house(), '.bookmatch'), join(house('other-house'), '.bookmatch'), { recursive: true });
  expect(await keptResults(house('other-house'), 'sound').get('records of another house')).toBeUndefined();
  expect(await get(house('other-house'))).toEqual(value);
});

test('what another user kept is nothing, and each has a key', async () => {
  await put();
  live('builder');
  expect(await get()).toBeUndefined();
  await put();
  expect(await get()).toEqual(value);
  expect(readFileSync(join(own('builder'), 'key'), 'utf8')).not.toBe(readFileSync(join(own(), 'key'), 'utf8'));
  live('owner');
  expect(await get()).toBeUndefined();
});

test.each([
  ['a folder that takes no file', () => writeFileSync(join(dir, 'owner'), 'no folder')],
  [
    'a path that is not absolute, and no home',
    () => {
      vi.stubEnv('XDG_STATE_HOME', 'state');
      vi.stubEnv('HOME', '');
    },
  ],
  ['a home that lies in the house', () => vi.stubEnv('XDG_STATE_HOME', join(house(), 'home'))],
  ['the house itself as its home', () => vi.stubEnv('XDG_STATE_HOME', house())],
  ['a key that is no file', () => mkdirSync(join(own(), 'key'), { recursive: true })],
])('with %s nothing is kept, and nothing fails', async (_, live) => {
  live();
  await put();
  expect(await get()).toBeUndefined();
  expect(existsSync(file())).toBe(false);
  expect(readdirSync(house())).toEqual([]);
});

test.each(['', 'abc\n', `${'0'.repeat(63)}\n`, `${'0'.repeat(64)}\nmore\n`])(
  'a key that is damaged, %j, is made anew, and what was kept by it is nothing',
  async (damaged) => {
    mkdirSync(own(), { recursive: true });
    writeFileSync(join(own(), 'key'), damaged);
    await put();
    expect(await get()).toEqual(value);
    expect(readFileSync(join(own(), 'key'), 'utf8')).toMatch(/^[0-9a-f]{64}\n$/u);
    expect(statSync(join(own(), 'key')).mode & 0o777).toBe(0o600);
  },
);

/** A run of the program by itself, that keeps what it is told in a house. */
async function elsewhere(script: string, env: Readonly<Record<string, string>>): Promise<string> {
  const store = join(import.meta.dirname, '../../src/disk/store/kept-results.ts');
  const text = `import { keptResults } from ${JSON.stringify(store)}; ${script}`;
  const args = ['--import', 'tsx', '--input-type=module', '-e', text];
  const { stdout } = await promisify(execFile)(process.execPath, args, { env: { PATH: process.env['PATH'], ...env } });
  return stdout;
}

const putAndGet = (of: string): string =>
  `const kept = keptResults(${JSON.stringify(of)}, 'sound'); await kept.put('k', 'v'); console.log(await kept.get('k'));`;

test('first runs at once agree on one key', async () => {
  const env = { XDG_STATE_HOME: join(dir, 'owner') };
  const names = ['a', 'b', 'c', 'd'];
  for (const name of names) mkdirSync(house(name));
  const said = await Promise.all(names.map((name) => elsewhere(putAndGet(house(name)), env)));
  expect(said).toEqual(names.map(() => 'v\n'));
  for (const name of names) expect(await keptResults(house(name), 'sound').get('k')).toBe('v');
  expect(readdirSync(own())).toEqual(['key']);
});

test('without XDG_STATE_HOME it lies in the home, and a home that takes no file fails nothing', async () => {
  const home = join(dir, 'home');
  mkdirSync(home);
  expect(await elsewhere(putAndGet(house()), { HOME: home })).toBe('v\n');
  expect(readdirSync(join(home, '.local/state/bookmatch'))).toEqual(['key']);
  expect(await elsewhere(putAndGet(house()), { HOME: '/proc' })).toBe('undefined\n');
  if (process.getuid?.() === 0) return;
  const closed = join(dir, 'closed');
  mkdirSync(closed);
  chmodSync(closed, 0o500);
  expect(await elsewhere(putAndGet(house()), { HOME: closed })).toBe('undefined\n');
});
