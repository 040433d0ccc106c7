import { readdirSync, statSync, type Dirent } from 'node:fs';
import { readFile, realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';
import type { Source } from '../../core/model/index.js';
import { problemIn, type Problem, type ProblemCode } from '../../base/problem/index.js';
import { largestRecord } from '../../core/records/index.js';

/** Files of a folder as they are read. */
interface Reading {
  readonly root: string;
  /** What stands before their paths: nothing, or `../our-book/`. */
  readonly prefix: string;
  /** The folder that links may not lead out of, in words. */
  readonly within: string;
  readonly files: Source[];
  readonly problems: Problem[];
  /** Folders by their real path: a link may lead back up. */
  readonly visited: Set<string>;
  readonly before?: ReadBefore | undefined;
}

/** Files as they were read before, by their paths: what was not written since is not read again. */
export type ReadBefore = Map<string, { readonly mark: string; readonly source: Source }>;

export function startReading(root: string, prefix: string, within: string, before?: ReadBefore): Reading {
  return { root, prefix, within, before, files: [], problems: [], visited: new Set() };
}

/** `real` is where a folder lies, whatever links lead there: of what is no link in it that is known without asking the disk, which would go through every
 *  folder above it again. */
async function readFolder(path: string, real: string, reading: Reading): Promise<void> {
  if (reading.visited.has(real)) return;
  reading.visited.add(real);
  const entries = entriesOf(real);
  if (!entries) return report(reading, path, 'file-unreadable', 'the folder may not be read', 'check who owns it');
  const seen = entries.filter(({ name }) => !name.startsWith('.')).sort((a, b) => (a.name < b.name ? -1 : 1));
  for (const entry of seen) {
    const [at, below] = [`${path}/${entry.name}`, join(real, entry.name)];
    if (entry.isSymbolicLink()) await readEntry(at, reading);
    else if (entry.isDirectory()) await readFolder(at, below, reading);
    else await readReal(at, below, reading);
  }
}

/** Asked at once, as of a file's mark: in turn, a house of many folders waits for each. */
function entriesOf(folder: string): readonly Dirent[] | undefined {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch {
    return undefined;
  }
}

/** Reads a file, or a folder with all that is in it. */
export async function readEntry(path: string, reading: Reading): Promise<void> {
  const real = await realpath(join(reading.root, path)).catch(() => undefined);
  if (real === undefined) return report(reading, path, 'link-broken', 'the link leads nowhere', 'remove it');
  if (!real.startsWith(`${reading.root}${sep}`)) {
    return report(
      reading,
      path,
      'link-outside',
      `the link leads out of ${reading.within}`,
      'copy the file in its place',
    );
  }
  return readReal(path, real, reading);
}

async function readReal(path: string, real: string, reading: Reading): Promise<void> {
  const full = join(reading.root, path);
  const known = reading.before?.get(full);
  if (known && known.mark === markOf(full)) return void reading.files.push(known.source);
  const facts = await stat(real).catch(() => undefined);
  if (!facts) return report(reading, path, 'file-unreadable', 'the file may not be read', 'check who owns it');
  if (facts.isDirectory()) return readFolder(path, real, reading);
  // Reading a pipe or a device may never end.
  if (!facts.isFile()) return report(reading, path, 'file-binary', 'this is no file of text', 'remove it');
  if (facts.size > largestRecord) {
    const message = `the file has ${(facts.size / 1_000_000).toFixed(1)} MB; a record has 1 MB at most`;
    return report(reading, path, 'file-too-large', message, 'keep drawings and long papers outside content/');
  }
  const mark = reading.before && markOf(full);
  const bytes = await readFile(real).catch(() => undefined);
  if (!bytes) return report(reading, path, 'file-unreadable', 'the file may not be read', 'check who owns it');
  const text = textOf(bytes);
  if (text === undefined)
    return report(
      reading,
      path,
      'file-binary',
      'the file is not text in UTF-8',
      'save it as UTF-8, or keep it outside content/',
    );
  const source = { path: `${reading.prefix}${path}`, text };
  if (mark !== undefined) reading.before?.set(full, { mark, source });
  reading.files.push(source);
}

/** How fine a disk tells the time, at the coarsest, in milliseconds: what was written so lately may have been written again since, with the same mark. */
const settled = 100;

/** What the disk tells of a file that changes whenever it is written; undefined while that cannot be told apart, and where there is no file. Asked at
 *  once, which for so short an answer is many times faster than in turn. */
function markOf(path: string): string | undefined {
  const facts = statSync(path, { throwIfNoEntry: false, bigint: true });
  if (!facts?.isFile() || Number(facts.ctimeMs) > Date.now() - settled) return undefined;
  return `${facts.dev} ${facts.ino} ${facts.size} ${facts.mtimeNs} ${facts.ctimeNs}`;
}

/** UTF-8 text, or undefined for bytes that are none. */
function textOf(bytes: Uint8Array): string | undefined {
  if (bytes.includes(0)) return undefined;
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function report({ problems, prefix }: Reading, path: string, code: ProblemCode, message: string, fix: string): void {
  problems.push(fileProblem(`${prefix}${path}`, code, message, fix));
}

/** A problem with a file as such: no line of it is shown. */
export function fileProblem(file: string, code: ProblemCode, message: string, fix: string): Problem {
  return problemIn({ file, text: '' }, { line: 1, column: 1 }, code, message, { fix });
}
