import { createHash } from 'node:crypto';
import { link, readdir, readFile, realpath, rename, rm, rmdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { liesInside } from './lies-inside.js';
import { isThere } from './is-there.js';
import { isFolder, makeFolder, ownFolder, ownFolderName } from './make-folder.js';
import { oneAtATime } from './one-at-a-time.js';
import { isOwnCode, ownCode } from './own-key.js';
import { isLeft, newTag, tagForm } from './run-tag.js';
import { syncFolder, writeAtomically } from './write-atomically.js';

/** What a run means to put in place all together, as it is noted before the first of it moves. */
export interface Begun {
  /** In words that follow 'finished': `issue 2 for construction`. */
  readonly what: string;
  /** Paths below the folder with /: where each file or folder was made, and its place. */
  readonly moves: readonly Move[];
  /** What is committed once all of it is in place. */
  readonly commit?: { readonly paths: readonly string[]; readonly message: string };
}

interface Move {
  readonly from: string;
  readonly to: string;
  /** SHA-256 of a file. */
  readonly digest?: string;
}

/** What was finished. It is `proven` where this user's program began it and what it meant to write stands there: else nothing was committed. */
export interface Finished extends Begun {
  readonly isProven: boolean;
}

const folderOf = (root: string): string => join(root, ownFolderName);
const noteOf = (root: string): string => join(folderOf(root), 'begun.json');
const made = new RegExp(`^new-(${tagForm})$`, 'u');

/** Makes a folder inside `root` in which files and folders are made before they are put in their places. Answers its path below `root`. */
export async function makeStage(root: string): Promise<string> {
  await ownFolder(root);
  const path = `${ownFolderName}/new-${newTag()}`;
  await makeFolder(join(root, path));
  return path;
}

/** Writes files (path below `root` with / → content) all together: whenever the program is killed, either none of them is written or all of them are as
 *  soon as `finishBegun` is called for that folder. `then` is done before the note of it is removed. Rejects when the disk refuses; then nothing is written. */
export async function writeTogether<T>(
  root: string,
  files: ReadonlyMap<string, Uint8Array | string>,
  note: Omit<Begun, 'moves'>,
  then: () => Promise<T>,
): Promise<T> {
  const stage = await makeStage(root);
  const moves: Move[] = [];
  try {
    for (const [to, content] of files) {
      const from = `${stage}/${moves.length}`;
      await writeAtomically(join(root, from), content);
      moves.push({ from, to, digest: sha256(content) });
    }
  } catch (error) {
    await clearAway(root, stage);
    throw error;
  }
  return putInPlace(root, stage, { ...note, moves }, then);
}

/** Puts what `make` makes in a folder of its own, below it by the names that it has there, into its places in `root`: all together, in the same way. Answers what `make` does;
 *  rejects when that does, or the disk refuses: then nothing is in its place. */
export async function makeInPlace<T>(root: string, what: string, make: (stage: string) => Promise<T>): Promise<T> {
  const stage = await makeStage(root);
  try {
    const answer = await make(join(root, stage));
    const names = await partsIn(join(root, stage));
    const moves = names.map((name) => ({ from: `${stage}/${name}`, to: name }));
    return await putInPlace(root, stage, { what, moves }, () => Promise.resolve(answer));
  } finally {
    await clearStage(root, stage);
  }
}

/** What was made in a stage, by its names there. Parts that were put in their places within it may have left a folder for notes, which is none of it. */
export async function partsIn(stage: string): Promise<readonly string[]> {
  return (await readdir(stage)).filter((name) => name !== ownFolderName);
}

/** Moves what was made in a stage to its places, all of it or none, in the same way. A folder takes the place of the one that is there. */
export async function putInPlace<T>(root: string, stage: string, begun: Begun, then: () => Promise<T>): Promise<T> {
  const done: Move[] = [];
  try {
    const code = await ownCode(root, await noteAs(root), JSON.stringify(begun));
    await writeAtomically(join(root, stage, 'begun.json'), `${JSON.stringify({ ...begun, code })}\n`);
    await rename(join(root, stage, 'begun.json'), noteOf(root));
    await syncFolder(folderOf(root));
    for (const move of begun.moves) {
      done.push(move);
      await moveIn(root, move);
    }
  } catch (error) {
    for (const move of done.toReversed()) await moveBack(root, move);
    await rm(noteOf(root), { force: true });
    await clearAway(root, stage);
    throw error;
  }
  const result = await then();
  await clearAway(root, stage);
  await rm(noteOf(root), { force: true });
  await rmdir(folderOf(root)).catch(() => undefined);
  return result;
}

/** Finishes in a folder what an interrupted run had begun to put in place, and `commit`s it where that is proven; clears away what it had only made. Answers what it
 *  was; `'nothing'` where none of it was in place yet; `'elsewhere'` where it
 *  wrote outside of the folder, so that it can't be finished here; undefined where no run was interrupted, as nearly always. Rejects when the disk refuses. */
export async function finishBegun(
  root: string,
  commit: (commit: NonNullable<Begun['commit']>) => Promise<void>,
): Promise<Finished | 'nothing' | 'elsewhere' | undefined> {
  if ((await leftIn(root)).length === 0) return undefined;
  // Who is at it has the place, and will be done with it.
  return oneAtATime(root, async () => {
    const note = await readNote(root);
    const finished = note?.isWithin === false ? 'elsewhere' : note && (await finish(root, note, commit));
    const left = [...(note?.stages ?? []), ...(await leftIn(root))];
    for (const name of left) await clearAway(root, `${ownFolderName}/${name}`);
    return finished ?? (left.length > 0 ? 'nothing' : undefined);
  }).finally(() => rmdir(folderOf(root)).catch(() => undefined));
}

async function finish(
  root: string,
  { begun, isOwn }: Note,
  commit: (commit: NonNullable<Begun['commit']>) => Promise<void>,
): Promise<Finished> {
  for (const move of begun.moves) await moveIn(root, move);
  const isProven = isOwn && (await stand(root, begun.moves));
  if (isProven && begun.commit) await commit(begun.commit);
  return { ...begun, isProven };
}

/** Are the files in place those that were meant? */
async function stand(root: string, moves: readonly Move[]): Promise<boolean> {
  for (const { to, digest } of moves)
    if (digest !== undefined && sha256(await readFile(join(root, to)).catch(() => '')) !== digest) return false;
  return true;
}

function sha256(content: Uint8Array | string): string {
  return createHash('sha256').update(content).digest('hex');
}

/** What interrupted runs left: the note, and stages of no run that is still alive. The note is the last. */
async function leftIn(root: string): Promise<readonly string[]> {
  const left: string[] = [];
  for (const name of await readdir(folderOf(root)).catch(() => [])) {
    const [, tag] = made.exec(name) ?? [];
    if (tag !== undefined && (await isLeft(join(folderOf(root), name), tag))) left.push(name);
  }
  return (await isThere(noteOf(root))) ? [...left, 'begun.json'] : left;
}

interface Note {
  readonly begun: Begun;
  /** Did this user's program write it, in this folder? */
  readonly isOwn: boolean;
  /** Does all of it come from stages, and stay in the folder? */
  readonly isWithin: boolean;
  /** Names of the stages that it empties. */
  readonly stages: readonly string[];
}

async function readNote(root: string): Promise<Note | undefined> {
  const text = await readFile(noteOf(root), 'utf8').catch(() => undefined);
  if (text === undefined) return undefined;
  const noted = begunIn(text);
  if (!noted) return undefined;
  const { code, ...begun } = noted;
  const stages = begun.moves.flatMap(({ from }) => staged.exec(from)?.[1] ?? []);
  let isAllWithin = stages.length === begun.moves.length;
  for (const { to } of begun.moves) isAllWithin &&= await isWithin(root, to);
  const isOwn = await isOwnCode(root, await noteAs(root), JSON.stringify(begun), String(code));
  return { begun, isOwn, isWithin: isAllWithin, stages: [...new Set(stages)] };
}

const noteAs = async (root: string): Promise<readonly string[]> => ['begun', await realpath(root)];

/** Undefined where it is no note of a run: it is written whole or not at all, so that nothing was begun by it. */
function begunIn(text: string): (Begun & { readonly code?: unknown }) | undefined {
  try {
    const begun = JSON.parse(text) as Partial<Begun & { readonly code: unknown }> | null;
    const isNote =
      typeof begun?.what === 'string' &&
      Array.isArray(begun.moves) &&
      begun.moves.every((move: Partial<Move> | null) => typeof move?.from === 'string' && typeof move.to === 'string');
    return isNote ? (begun as Begun) : undefined;
  } catch {
    return undefined;
  }
}

const staged = new RegExp(String.raw`^\.bookmatch/(new-${tagForm})/[\w-][\w.-]*$`, 'u');

/** A house may come from anywhere: its note moves nothing out of it, nor into what git keeps. */
async function isWithin(root: string, path: string): Promise<boolean> {
  const isPlain = path.split('/').every((part) => !['', '.', '..', '.git'].includes(part));
  return isPlain && !path.includes('\\') && (await liesInside(root, path));
}

/** What is there is kept beside what takes its place, until all is done. What has moved already is left. */
async function moveIn(root: string, { from, to }: Move): Promise<void> {
  const [fresh, place] = [join(root, from), join(root, to)];
  if (!(await isThere(fresh))) return;
  await makeFolder(dirname(place));
  const old = `${fresh}-old`;
  if (await isThere(place)) {
    await rm(old, { recursive: true, force: true });
    // A file is never missing; of a folder there is no other way.
    await ((await isFolder(place)) ? rename(place, old) : keepBeside(place, old));
  }
  await renameOrCopy(fresh, place);
  await syncFolder(dirname(place));
}

async function moveBack(root: string, { from, to }: Move): Promise<void> {
  const [fresh, place] = [join(root, from), join(root, to)];
  const old = `${fresh}-old`;
  if (!(await isThere(fresh))) await renameOrCopy(place, fresh);
  if (await isThere(old)) await renameOrCopy(old, place);
}

function keepBeside(path: string, beside: string): Promise<void> {
  return link(path, beside).catch(async () => writeFile(beside, await readFile(path)));
}

/** A shared folder may lie on another disk. */
async function renameOrCopy(from: string, to: string): Promise<void> {
  try {
    await rename(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EXDEV') throw error;
    await writeAtomically(to, await readFile(from));
    await rm(from);
  }
}

/** Clears away a stage that has come to nothing: not while a note says that what is in it is still to be moved. */
async function clearStage(root: string, stage: string): Promise<void> {
  const noted = await readFile(noteOf(root), 'utf8').catch(() => '');
  if (!noted.includes(stage)) await clearAway(root, stage);
  await rmdir(folderOf(root)).catch(() => undefined);
}

function clearAway(root: string, path: string): Promise<void> {
  return rm(join(root, path), { recursive: true, force: true });
}
