import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readVersion, workingTree } from '../../src/disk/history/index.js';

const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-history-'));
const repo = join(scratch, 'repo');
const house = join(repo, 'houses', 'one');
const git = (dir: string, ...args: string[]) =>
  execFileSync('git', ['-C', dir, '-c', 'user.name=Builder', '-c', 'user.email=builder@example.invalid', ...args], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  });

beforeAll(() => {
  cpSync(join(import.meta.dirname, '..', 'cases', 'small-house'), house, { recursive: true });
  git(scratch, 'init', '-q', repo);
  writeFileSync(join(house, 'content', 'rooms', 'größe.md'), 'not a slug, but a name git can hold\n');
  symlinkSync('/etc/hostname', join(house, 'content', 'link.md'));
  git(repo, 'add', '.');
  git(repo, 'commit', '-qm', 'first');
  git(repo, 'tag', 'one');
  writeFileSync(join(house, 'content', 'house.md'), 'second\n');
  git(repo, 'commit', '-qam', 'second');
});
afterAll(() => rmSync(scratch, { recursive: true }));

describe('readVersion', () => {
  test('reads a house below the top of its repository, at a tag and at a branch', async () => {
    const one = await readVersion(house, 'one');
    const now = await readVersion(house, 'HEAD');
    if (!one.ok || !now.ok) throw new Error('both versions are there');
    const houseFile = (files: typeof one.files) => files.find((file) => file.path === 'content/house.md')?.text;
    expect(houseFile(one.files)).toMatch(/^---\nname: Small House/);
    expect(houseFile(now.files)).toBe('second\n');
    expect(one.commit).toBe(git(repo, 'rev-parse', 'one').trim());
    expect(one.files.map((file) => file.path)).toContain('content/rooms/größe.md');
  });

  test('leaves links out', async () => {
    const one = await readVersion(house, 'one');
    expect(one.ok && one.files.map((file) => file.path)).not.toContain('content/link.md');
  });

  test.each([['nowhere'], ['--help'], ['one:content'], ['']])('says that there is no version %j', async (version) => {
    expect(await readVersion(house, version)).toMatchObject({ ok: false });
  });

  test('a shallow clone says what it lacks', async () => {
    const shallow = join(scratch, 'shallow');
    git(scratch, 'clone', '-q', '--depth', '1', `file://${repo}`, shallow);
    const dir = join(shallow, 'houses', 'one');
    expect(await readVersion(dir, 'HEAD')).toMatchObject({ ok: true });
    expect(await readVersion(dir, 'HEAD~1')).toEqual({ ok: false, why: expect.stringContaining('shallow') as string });
  });

  test('a folder that is not under git', async () => {
    const plain = mkdtempSync(join(scratch, 'plain-'));
    expect(await readVersion(plain, 'HEAD')).toEqual({ ok: false, why: 'the house folder is not under git' });
  });
});

test('workingTree names what is not committed under content/', async () => {
  expect(await workingTree(house)).toMatchObject({ ok: true, changed: [] });
  writeFileSync(join(house, 'content', 'rooms', 'new.md'), 'new\n');
  writeFileSync(join(house, 'elsewhere.txt'), 'not a record\n');
  expect(await workingTree(house)).toMatchObject({
    ok: true,
    changed: [expect.stringContaining('content/rooms/new.md')],
  });
});
