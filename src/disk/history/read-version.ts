import { isUtf8 } from 'node:buffer';
import type { Source } from '../../core/model/index.js';
import { explainMissing } from './explain-missing.js';
import { git } from './git.js';

/** The records of a house at a version, or why they cannot be had. */
type VersionFiles =
  | { readonly ok: true; readonly commit: string; readonly files: readonly Source[] }
  | { readonly ok: false; readonly why: string };

/** Reads `content/` of a house folder as it was at a git version (a commit, tag or branch). All files come from one
 *  `cat-file --batch`, so that a house of hundreds of records costs three git processes, and from a shallow clone all that
 *  is there can be read. */
export async function readVersion(houseDir: string, version: string): Promise<VersionFiles> {
  if (version.startsWith('-')) return { ok: false, why: `'${version}' is not a version` };
  const commit = await git(houseDir, ['rev-parse', '--verify', '--quiet', '--end-of-options', `${version}^{commit}`]);
  if (!commit.ok) return { ok: false, why: await explainMissing(houseDir, version, commit.why) };
  const id = commit.out.toString('ascii').trim();
  const tree = await git(houseDir, ['ls-tree', '-r', '-z', id, '--', 'content/']);
  if (!tree.ok) return { ok: false, why: tree.why };
  const entries = parseTree(tree.out);
  if (entries.length === 0) return { ok: false, why: `version '${version}' has no content/ in this folder` };
  const batch = await git(houseDir, ['cat-file', '--batch'], {
    input: entries.map((entry) => `${entry.object}\n`).join(''),
  });
  if (!batch.ok) return { ok: false, why: batch.why };
  return parseBatch(batch.out, entries, id, version);
}

interface TreeEntry {
  readonly object: string;
  readonly path: string;
}

/** `mode type object TAB path NUL`, paths relative to the house folder. Links and submodules are no records. */
function parseTree(out: Buffer): TreeEntry[] {
  return out
    .toString('utf8')
    .split('\0')
    .flatMap((line) => {
      const [, mode, object, path] = /^(\d+) blob ([0-9a-f]+)\t([\s\S]+)$/.exec(line) ?? [];
      return object !== undefined && path !== undefined && mode !== '120000' ? [{ object, path }] : [];
    });
}

/** `object SP blob SP size LF content LF` for each entry, in order. */
function parseBatch(out: Buffer, entries: readonly TreeEntry[], commit: string, version: string): VersionFiles {
  const files: Source[] = [];
  let at = 0;
  for (const { path } of entries) {
    const end = out.indexOf(10, at);
    const [, kind, size] = out.toString('ascii', at, end).split(' ');
    if (kind === 'missing' || size === undefined) {
      return { ok: false, why: `${path} of version '${version}' is not in this clone` };
    }
    const start = end + 1;
    const bytes = out.subarray(start, start + Number(size));
    at = start + Number(size) + 1;
    if (path.endsWith('.md') && isUtf8(bytes)) files.push({ path, text: bytes.toString('utf8') });
  }
  return { ok: true, commit, files };
}
