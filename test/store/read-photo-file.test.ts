import { execFileSync } from 'node:child_process';
import { chmod, mkdir, mkdtemp, rm, symlink, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { photoPath } from '../../src/core/records/index.js';
import { liesInside, readPhotoFile } from '../../src/disk/store/index.js';
import { jpeg, joined } from '../photo/samples.js';

let scratch = '';
let dir = '';
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'bookmatch-photos-'));
  dir = join(scratch, 'house');
  await mkdir(join(dir, 'photos/floor'), { recursive: true });
  await mkdir(join(scratch, 'our-book/photos/floor'), { recursive: true });
  await writeFile(join(dir, 'photos/floor/oak.jpg'), joined(jpeg, 'behind its end'));
  await writeFile(join(scratch, 'our-book/photos/floor/ash.jpg'), jpeg);
  await writeFile(join(scratch, 'private.jpg'), jpeg);
});
afterAll(() => rm(scratch, { recursive: true, force: true }));

async function whyNot(path: string): Promise<string> {
  const photo = await readPhotoFile(dir, path);
  return photo.ok ? 'read' : photo.why;
}

it('lies beside the record’s folder, of the house or of a folder that houses share', async () => {
  const own = photoPath('content/options/floor/oak.md', 'oak.jpg');
  const shared = photoPath('../our-book/options/floor/ash.md', 'ash.jpg');
  expect([own, shared]).toEqual(['photos/floor/oak.jpg', '../our-book/photos/floor/ash.jpg']);
  for (const path of [own, shared])
    expect(await readPhotoFile(dir, path)).toMatchObject({ ok: true, value: { bytes: jpeg, kind: 'jpg' } });
});

it('is no folder, no pipe, nothing too large, and nothing that a link leads to outside', async () => {
  const at = (name: string): string => join(dir, 'photos/floor', name);
  await symlink(join(scratch, 'private.jpg'), at('outside.jpg'));
  await symlink('oak.jpg', at('inside.jpg'));
  await symlink('nowhere.jpg', at('broken.jpg'));
  await mkdir(at('folder.jpg'));
  execFileSync('mkfifo', [at('pipe.jpg')]);
  await writeFile(at('huge.jpg'), '');
  await truncate(at('huge.jpg'), 5_000_000_000);
  const whys: Record<string, string> = {
    'outside.jpg': 'is a link that leads out of its folder',
    'inside.jpg': 'read',
    'broken.jpg': 'there is no file',
    'gone.jpg': 'there is no file',
    'folder.jpg': 'is no file',
    'pipe.jpg': 'is no file',
    'huge.jpg': 'has 5000.0 MB',
  };
  for (const [name, why] of Object.entries(whys)) expect(await whyNot(`photos/floor/${name}`), name).toContain(why);
  if (process.getuid?.() === 0) return;
  await writeFile(at('closed.jpg'), jpeg);
  await chmod(at('closed.jpg'), 0);
  expect(await whyNot('photos/floor/closed.jpg')).toContain('may not be read');
});

it('is written inside the folder alone, whatever links are on the way', async () => {
  await symlink(scratch, join(dir, 'out'));
  await symlink('photos', join(dir, 'in'));
  const inside = { 'photos/floor/new.jpg': true, 'new/deep/x.jpg': true, 'in/x.jpg': true, 'out/x.jpg': false };
  for (const [path, is] of Object.entries({ ...inside, 'out/deep/x.jpg': false, '../x.jpg': false }))
    expect(await liesInside(dir, path), path).toBe(is);
});
