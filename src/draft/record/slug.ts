import { slugFor } from '../../core/records/index.js';

/** Words that mean something else where a record is named. */
const reserved: readonly string[] = ['all', 'none', 'outside', 'owner'];

/** Names that no file may have on Windows, whatever its ending: a house is kept in git, and cloned anywhere. Source:
 *  https://learn.microsoft.com/windows/win32/fileio/naming-a-file */
const devices = /^(?:con|prn|aux|nul|com[0-9]|lpt[0-9])$/u;

/** File names are no longer than this, with room for a number and the ending. */
const longest = 60;

/** The file name of a new record by its name, without the ending: `great-room`. One that is taken has a number behind it. A name without
 *  any Latin letter or digit has `instead`. */
export function freshSlug(name: string, taken: ReadonlySet<string>, instead: string): string {
  const own = slugFor(slugFor(name).slice(0, longest));
  const base = own === '' ? instead : own;
  const isFree = (slug: string): boolean => !taken.has(slug) && !reserved.includes(slug) && !devices.test(slug);
  if (isFree(base)) return base;
  let number = 2;
  while (!isFree(`${base}-${number}`)) number += 1;
  return `${base}-${number}`;
}
