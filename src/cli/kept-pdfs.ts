import { keepBy } from '../base/units/index.js';
import { programDigest } from '../disk/program/index.js';
import { keptResults } from '../disk/store/index.js';
import type { BookPdf, SetPdf } from '../print/index.js';

/** Answers a PDF that an earlier run made of the same, and makes it else. `name` is what is printed, and `from` all that it is printed from: a JSON value
 *  that never changes. `make` is told where to have it made, if not here. */
export type KeepPdf = (name: string, from: object, make: (set?: SetPdf) => Promise<BookPdf>) => Promise<BookPdf>;

/** Keeps nothing. */
export const makeAnew: KeepPdf = (_, __, make) => make();

/** PDFs that were printed of a house, kept in its folder, the last of each name: one is made anew, in a process of its own, where the program or anything
 *  that it is printed from is another. */
export function keptPdfs(dir: string): KeepPdf {
  let press: Promise<SetPdf> | undefined;
  const set: SetPdf = async (job) => {
    press ??= import('../print/index.js').then(({ openPress }) => openPress());
    return (await press)(job);
  };
  // Several are printed from one Book.
  const textOf = keepBy(
    (from: object) => from,
    (from) => JSON.stringify(from),
  );
  return async (name, from, make) => {
    const program = await programDigest();
    if (program === undefined) return make(set);
    const kept = keptResults(dir, `printed-${name}`);
    const key = `${program} ${textOf(from)}`;
    const found = (await kept.get(key)) as Kept | undefined;
    if (found) return { pdf: new Uint8Array(Buffer.from(found.pdf, 'base64')), undrawn: found.undrawn };
    const made = await make(set);
    await kept.put(key, { pdf: Buffer.from(made.pdf).toString('base64'), undrawn: made.undrawn } satisfies Kept);
    return made;
  };
}

interface Kept extends Pick<BookPdf, 'undrawn'> {
  /** In base 64 (RFC 4648). */
  readonly pdf: string;
}
