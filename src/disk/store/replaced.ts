import { lstat, readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { isThere } from './is-there.js';
import { isLeft, newTag, tagForm } from './run-tag.js';

/** Where the folder that is to take another's place is made, and where that one stands until it is done: beside it, on the same disk. */
export function besideFolder(dir: string): { readonly fresh: string; readonly former: string } {
  const target = resolve(dir);
  const path = join(dirname(target), `.${basename(target)}.${newTag()}`);
  return { fresh: `${path}.new`, former: `${path}.old` };
}

const form = new RegExp(String.raw`^\.(.+)\.(${tagForm})\.(?:new|old)$`, 'u');

/** What became of a folder that a killed run was about to replace. */
export interface Replaced {
  readonly dir: string;
  /** Else it is as it was before. */
  readonly isFinished: boolean;
}

/** Finishes in a folder what killed runs were about to replace there, by this name or by any, or takes away what they had only begun to make. A folder that was moved away had its
 *  successor made whole. Rejects when the disk refuses. */
export async function finishReplaced(folder: string, name?: string): Promise<readonly Replaced[]> {
  const done = new Map<string, Replaced>();
  for (const entry of (await readdir(folder).catch(() => [])).sort()) {
    const [, of = '', tag = ''] = form.exec(entry) ?? [];
    if (tag === '' || (name !== undefined && of !== name) || done.has(`${of}.${tag}`)) continue;
    if (!(await isLeft(join(folder, entry), tag))) continue;
    const path = join(folder, `.${of}.${tag}`);
    const isFinished = await finishOne(join(folder, of), `${path}.new`, `${path}.old`);
    done.set(`${of}.${tag}`, { dir: join(folder, of), isFinished });
  }
  return [...done.values()];
}

async function finishOne(target: string, fresh: string, former: string): Promise<boolean> {
  const wasMoved = await isFolder(former);
  if (wasMoved && !(await isThere(target))) await rename((await isFolder(fresh)) ? fresh : former, target);
  for (const path of [fresh, former]) await rm(path, { recursive: true, force: true });
  return wasMoved;
}

/** A link is none. */
function isFolder(path: string): Promise<boolean> {
  return lstat(path).then(
    (facts) => facts.isDirectory(),
    () => false,
  );
}
