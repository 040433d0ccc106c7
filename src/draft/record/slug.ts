import { slugFor } from '../../core/records/index.js';

/** Words that mean something else where a record is named. */
const reserved: readonly string[] = ['none', 'outside', 'owner'];

/** File names are no longer than this, with room for a number and the ending. */
const longest = 60;

/** The file name of a new record by its name, without the ending: `great-room`. One that is taken has a number behind it. A name without
 *  any Latin letter or digit has `instead`. */
export function freshSlug(name: string, taken: ReadonlySet<string>, instead: string): string {
  const own = slugFor(slugFor(name).slice(0, longest));
  const base = own === '' ? instead : own;
  const isFree = (slug: string): boolean => !taken.has(slug) && !reserved.includes(slug);
  if (isFree(base)) return base;
  let number = 2;
  while (!isFree(`${base}-${number}`)) number += 1;
  return `${base}-${number}`;
}
