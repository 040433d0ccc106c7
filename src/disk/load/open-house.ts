import { realpath } from 'node:fs/promises';
import { readVersion } from '../history/index.js';
import type { Issue, Source } from '../../core/model/index.js';
import { readHouseFolder, readShared, type HouseFolder, type ReadBefore } from '../store/index.js';
import { keepBy, once } from '../../base/units/index.js';
import { keptSteps, makeComposer, type Composer } from './composer.js';
import { diskShelves, type DiskShelves } from './disk-shelves.js';
import type { LoadedHouse } from './load-house.js';
import { signingOf } from './load-signing.js';
import { proveSnapshot, readSnapshot, type Snapshot } from './read-snapshot.js';

/** The name of the records as they lie on disk, beside git versions. */
export const onDisk = 'the records on disk';

/** A house at a version, or why it cannot be had. */
type Version =
  | { readonly ok: true; readonly house: LoadedHouse; readonly commit?: string }
  | { readonly ok: false; readonly why: string };

/** A house folder as one run of a command sees it: what is read from it is read once. */
export interface OpenHouse extends Composer {
  readonly dir: string;
  /** The records as they lie on disk. */
  readonly current: () => Promise<LoadedHouse>;
  /** The records of a commit, tag or branch, of an issue as `issue-2`, or `onDisk`. Of a commit, shared folders are read as
   *  they are now; an issue's snapshot has them as they were. */
  readonly version: (name: string) => Promise<Version>;
  /** The records that an issue was made from. */
  readonly snapshot: (issue: Issue) => Promise<Snapshot>;
  readonly shelves: DiskShelves;
  /** The digest of an issue named as `issue-2`, when its snapshot is there and has it; undefined for anything else. */
  readonly proof: (name: string) => Promise<string | undefined>;
}

/** What runs on one house have in common, one after the other. */
interface Shared {
  readonly shelves: DiskShelves;
  readonly steps: ReturnType<typeof keptSteps>;
  readonly composer: Composer;
  /** Its files, those read again that were written since. */
  readonly folder: () => Promise<HouseFolder>;
  readonly times: number;
}

/** A composer keeps every Book that it made: after so many runs another goes on with its steps, and after many more, all is made anew. */
const [mostRuns, mostWithSteps] = [60, 1200];

const kept = new Map<string, Shared | undefined>();

/** A house that stays open. */
export interface KeptOpen {
  /** Its files as they lie on disk. */
  readonly files: () => Promise<readonly Source[]>;
  readonly end: () => void;
}

/** From now on whoever opens the house shares what was made of it before: a desk, and the commands that it runs, make one Book of the same
 *  records, and of other records what is other in them. */
export function keepOpen(dir: string): KeptOpen {
  const folder = folderReader(dir);
  kept.set(dir, sharedLong(dir, folder));
  return { files: async () => (await folder()).files, end: () => void kept.delete(dir) };
}

function sharedBy(dir: string): Shared {
  const before = kept.get(dir);
  if (!before) return sharedAnew(dir);
  const times = before.times + 1;
  const next = { ...before, times };
  const shared =
    times % mostWithSteps === 0
      ? { ...sharedLong(dir, before.folder), times }
      : times % mostRuns === 0
        ? { ...next, composer: makeComposer(before.steps) }
        : next;
  kept.set(dir, shared);
  return shared;
}

function sharedAnew(dir: string): Shared {
  const shelves = diskShelves(dir);
  const steps = keptSteps(shelves);
  return { shelves, steps, composer: makeComposer(steps), folder: () => readHouseFolder(dir), times: 0 };
}

/** What is kept for later runs of the program is written with the first Book: most of it is the same with the next. */
function sharedLong(dir: string, folder: Shared['folder']): Shared {
  const anew = sharedAnew(dir);
  return { ...anew, folder, shelves: { ...anew.shelves, store: once(anew.shelves.store) } };
}

/** Reads a folder time and again; it is the same object while nothing in it changed. */
function folderReader(dir: string): Shared['folder'] {
  const before: ReadBefore = new Map();
  let last: HouseFolder | undefined;
  return async () => {
    const now = await readHouseFolder(dir, before);
    const isSame =
      last?.files.length === now.files.length && last.files.every((file, index) => file === now.files[index]);
    const isSound = last?.problems.length === 0 && now.problems.length === 0;
    return (last = last && isSame && isSound ? last : now);
  };
}

export function openHouse(dir: string): OpenHouse {
  const { shelves, composer, folder: read } = sharedBy(dir);
  const folder = once(read);
  const current = async (): Promise<LoadedHouse> => {
    const { files, problems } = await folder();
    const house = composer.read(files);
    return problems.length === 0 ? house : { ...house, problems: [...problems, ...house.problems] };
  };
  const snapshot = keepBy(
    ({ number, digest }: Issue) => `${number} ${digest}`,
    (issue) => readSnapshot(dir, issue),
  );
  const issueNamed = async (name: string): Promise<Issue | undefined> => {
    if (!name.startsWith('issue-')) return undefined;
    return signingOf((await folder()).files)?.issues.find(({ number }) => name === `issue-${number}`);
  };
  const proof = async (name: string): Promise<string | undefined> => {
    const issue = await issueNamed(name);
    return issue && (await proveSnapshot(dir, issue)).ok ? issue.digest : undefined;
  };
  const version = async (name: string): Promise<Version> => {
    if (name === onDisk) return { ok: true, house: await current() };
    const issue = await issueNamed(name);
    if (issue) {
      const issued = await snapshot(issue);
      return issued.ok ? { ok: true, house: composer.read(issued.sources), commit: issue.commit } : issued;
    }
    const read = await readVersion(dir, name);
    if (!read.ok) return read;
    // No commit holds what others keep: it is what it is now.
    const { files } = await readShared(await realpath(dir), read.files);
    return { ok: true, house: composer.read([...read.files, ...files]), commit: read.commit };
  };
  return {
    ...composer,
    dir,
    shelves,
    current,
    snapshot,
    proof: keepBy((name) => name, proof),
    version: keepBy((name) => name, version),
  };
}
