import { digestOfBytes } from '../../signoff/index.js';
import { once, type Shelf } from '../../base/units/index.js';
import { programDigest } from '../program/index.js';
import { keptResults, type KeptResults } from '../store/index.js';
import type { Shelves } from './composer.js';

/** What earlier runs of the same program made of parts of a house, kept in its folder: records taken apart and found sound, and layouts, whose search for the
 *  fewest boards is the slow part of a Book. Most of a house is as it was. Until they are fetched the shelves are empty. */
export interface DiskShelves extends Required<Shelves> {
  readonly fetch: () => Promise<void>;
  /** Keeps what was asked for, if any of it is new. */
  readonly store: () => Promise<void>;
}

/** A house has some hundreds of each; those of its earlier states may be asked for again. */
const mostKept = 3000;

export function diskShelves(dir: string): DiskShelves {
  const [apart, sound, layouts] = [
    diskShelf<Got<'apart'>>(keptResults(dir, 'records')),
    diskShelf<Got<'sound'>>(keptResults(dir, 'sound')),
    diskShelf<Got<'layouts'>>(keptResults(dir, 'layouts')),
  ];
  const each = (ask: (shelf: Kept) => Promise<void>) => async (): Promise<void> => {
    await Promise.all([apart, sound, layouts].map(ask));
  };
  return { apart, sound, layouts, fetch: once(each(({ fetch }) => fetch())), store: each(({ store }) => store()) };
}

type Got<Name extends keyof Shelves> = NonNullable<ReturnType<NonNullable<Shelves[Name]>['get']>>;
type Kept = Pick<DiskShelves, 'fetch' | 'store'>;

function diskShelf<Answer>(kept: KeptResults): Shelf<Answer> & Kept {
  const [earlier, used] = [new Map<string, Answer>(), new Map<string, Answer>()];
  return {
    get: (from) => {
      const digest = digestOf(from);
      const answer = earlier.get(digest);
      if (answer !== undefined) used.set(digest, answer);
      return answer;
    },
    set: (from, answer) => void used.set(digestOf(from), answer),
    fetch: async () => {
      const program = await programDigest();
      const found = program === undefined ? undefined : await kept.get(program);
      for (const [digest, answer] of isKept<Answer>(found) ? found : []) earlier.set(digest, answer);
    },
    store: async () => {
      const program = await programDigest();
      if (program === undefined || [...used.keys()].every((digest) => earlier.has(digest))) return;
      const all = [...used, ...[...earlier].filter(([digest]) => !used.has(digest))];
      await kept.put(program, all.slice(0, mostKept));
    },
  };
}

function digestOf(key: string): string {
  return digestOfBytes(new TextEncoder().encode(key));
}

/** What is kept is proven whole, and made by this program. */
function isKept<Answer>(value: unknown): value is readonly (readonly [digest: string, answer: Answer])[] {
  return Array.isArray(value) && value.every((one) => Array.isArray(one) && typeof one[0] === 'string');
}
