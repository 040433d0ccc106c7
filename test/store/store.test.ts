import { execFileSync } from 'node:child_process';
import { mkdir, mkdtemp, readFile, readdir, realpath, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { OutputRefused, readHouseFolder, writeAtomically, writeTree } from '../../src/disk/store/index.js';

let dir: string;

beforeEach(async () => {
  dir = await realpath(await mkdtemp(join(tmpdir(), 'store-')));
});

afterEach(() => rm(dir, { recursive: true, force: true }));

async function put(path: string, content: string | Uint8Array): Promise<void> {
  await mkdir(dirname(join(dir, path)), { recursive: true });
  await writeFile(join(dir, path), content);
}

describe('readHouseFolder', () => {
  const told = async (): Promise<{ files: string[]; problems: string[] }> => {
    const { files, problems } = await readHouseFolder(dir);
    return {
      files: files.map(({ path }) => path),
      problems: problems.map(({ file, code, message }) => `${file} ${code} ${message}`),
    };
  };

  it('reads what is in content/, in order, and skips names with a dot', async () => {
    await put('content/house.md', 'the house');
    await put('content/rooms/b.md', 'b');
    await put('content/rooms/a.md', 'a');
    await put('content/.git/config', 'x');
    await put('content/rooms/.a.md.swp', 'x');
    await put('README.md', 'x');
    const { files, problems } = await readHouseFolder(dir);
    expect(files).toEqual([
      { path: 'content/house.md', text: 'the house' },
      { path: 'content/rooms/a.md', text: 'a' },
      { path: 'content/rooms/b.md', text: 'b' },
    ]);
    expect(problems).toEqual([]);
  });

  it('says of another folder that it is no house', async () => {
    expect(await told()).toEqual({
      files: [],
      problems: [`content/house.md house-missing no content/house.md in ${dir}`],
    });
    const nowhere = await readHouseFolder(join(dir, 'nowhere'));
    expect(nowhere.problems[0]?.message).toBe(`no content/house.md in ${join(dir, 'nowhere')}`);
  });

  it('refuses what is not text, not small, or not a file', async () => {
    await put('content/house.md', 'x');
    await put('content/rooms/latin.md', new Uint8Array([0x63, 0x61, 0x66, 0xe9]));
    await put('content/rooms/nul.md', new Uint8Array([0x61, 0, 0x62]));
    await put('content/rooms/long.md', 'x'.repeat(1_000_001));
    await put('content/rooms/most.md', 'x'.repeat(1_000_000));
    execFileSync('mkfifo', [join(dir, 'content/rooms/pipe.md')]);
    expect(await told()).toEqual({
      files: ['content/house.md', 'content/rooms/most.md'],
      problems: [
        'content/rooms/latin.md file-binary the file is not text in UTF-8',
        'content/rooms/long.md file-too-large the file has 1.0 MB; a record has 1 MB at most',
        'content/rooms/nul.md file-binary the file is not text in UTF-8',
        'content/rooms/pipe.md file-binary this is no file of text',
      ],
    });
  });

  it('follows links inside the house folder only, and no ring of them for ever', async () => {
    await put('content/house.md', 'x');
    await put('shared/tile.md', 'tile');
    await mkdir(join(dir, 'content/rooms'));
    const outside = await mkdtemp(join(tmpdir(), 'outside-'));
    await writeFile(join(outside, 'secret.md'), 'secret');
    await symlink(join(outside, 'secret.md'), join(dir, 'content/rooms/secret.md'));
    await symlink(outside, join(dir, 'content/trades'));
    await symlink(join(dir, 'shared/tile.md'), join(dir, 'content/rooms/tile.md'));
    await symlink('..', join(dir, 'content/rooms/up'));
    await symlink('gone.md', join(dir, 'content/rooms/gone.md'));
    expect(await told()).toEqual({
      files: ['content/house.md', 'content/rooms/tile.md'],
      problems: [
        'content/rooms/gone.md link-broken the link leads nowhere',
        'content/rooms/secret.md link-outside the link leads out of the house folder',
        'content/trades link-outside the link leads out of the house folder',
      ],
    });
    await rm(outside, { recursive: true });
  });
});

describe('a house whose content/ is a link', () => {
  it('is read only when the link stays inside', async () => {
    await put('inner/house/other.md', 'x');
    await put('elsewhere/house.md', 'x');
    await symlink(join(dir, 'elsewhere'), join(dir, 'inner/content'));
    const { files, problems } = await readHouseFolder(join(dir, 'inner'));
    expect(files).toEqual([]);
    expect(problems.map(({ code }) => code)).toEqual(['link-outside']);
  });
});

describe('writeAtomically', () => {
  it('makes the folder and replaces the file', async () => {
    const path = join(dir, 'a/b/c.txt');
    await writeAtomically(path, 'one');
    await writeAtomically(path, new TextEncoder().encode('two'));
    expect(await readFile(path, 'utf8')).toBe('two');
    expect(await readdir(dirname(path))).toEqual(['c.txt']);
  });

  it('leaves nothing beside it when it fails', async () => {
    await put('taken/inside.txt', 'x');
    await expect(writeAtomically(join(dir, 'taken'), 'y')).rejects.toThrow();
    expect(await readdir(dir)).toEqual(['taken']);
    expect(await readFile(join(dir, 'taken/inside.txt'), 'utf8')).toBe('x');
  });
});

describe('writeTree', () => {
  const out = (): string => join(dir, '_site');
  const write = (files: Record<string, string>): Promise<void> => writeTree(out(), new Map(Object.entries(files)));

  it('replaces the whole folder', async () => {
    await write({ 'book/index.html': 'old', 'book/gone.html': 'x' });
    await write({ 'book/index.html': 'new' });
    expect(await readFile(join(out(), 'book/index.html'), 'utf8')).toBe('new');
    expect(await readdir(join(out(), 'book'))).toEqual(['index.html']);
    expect(await readdir(dir)).toEqual(['_site']);
  });

  it('leaves the old folder as it was when one file cannot be written', async () => {
    await write({ 'index.html': 'old' });
    // `a` cannot be a file and a folder.
    await expect(write({ 'index.html': 'new', a: 'x', 'a/b': 'y' })).rejects.toThrow();
    expect(await readFile(join(out(), 'index.html'), 'utf8')).toBe('old');
    expect(await readdir(dir)).toEqual(['_site']);
  });

  it('clears away nothing that it did not write', async () => {
    await put('_site/letters.txt', 'dear');
    await expect(write({ a: 'x' })).rejects.toThrow(OutputRefused);
    expect(await readFile(join(out(), 'letters.txt'), 'utf8')).toBe('dear');
    await put('file', 'x');
    await expect(writeTree(join(dir, 'file'), new Map([['a', 'x']]))).rejects.toThrow(OutputRefused);
  });

  it.each(['../x', '/x', 'a//b', 'a/../../x', './x', 'a\\b', ''])('does not write to %j', async (path) => {
    await expect(write({ [path]: 'x' })).rejects.toThrow(OutputRefused);
    expect(await readdir(dir)).toEqual([]);
  });
});
