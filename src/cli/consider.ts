import type { Category, Records, Selection, Source } from '../core/model/index.js';
import { setKeys, type SetKeys } from '../core/records/index.js';
import { didYouMean, placeWritten } from '../base/problem/index.js';
import { counted } from '../base/units/index.js';
import { UsageError } from './usage-error.js';

/** Rooms of `--for`, by their file names or as `all`; undefined where none is named. A room that there is not is wrong usage. */
export function roomsNamed(named: readonly string[] | undefined, { rooms }: Records): readonly string[] | undefined {
  if (named === undefined) return undefined;
  const slugs = rooms.map(({ slug }) => slug);
  if (named.includes('all')) return slugs;
  const wrong = named.find((slug) => !slugs.includes(slug));
  if (wrong === undefined) return named;
  throw new UsageError(
    `--for  there is no room '${wrong}': ${didYouMean(wrong, slugs) ?? `rooms are ${slugs.join(', ')}`}; or all. Nothing was written.`,
  );
}

/** Rooms' records with options of a category, by their file names, among what is considered wherever the category is open. */
export function consider(
  options: readonly string[],
  category: string,
  where: 'all' | readonly string[],
  records: Records,
): readonly Source[] {
  const isThere = (room: string): boolean => where === 'all' || where.includes(room);
  return considerWhere(
    options,
    (room, { category: of, chosen }) => of === category && chosen === undefined && isThere(room),
    records,
  );
}

/** Rooms' records with options among what is considered for the selections that are meant. What a room has from a finish set is written once, where the
 *  set is. */
export function considerWhere(
  options: readonly string[],
  isMeant: (room: string, selection: Selection) => boolean,
  { rooms, sources }: Records,
): readonly Source[] {
  const texts = new Map(sources.map(({ path, text }) => [path, text]));
  const sets = new Map<string, Map<string, SetKeys>>();
  for (const { slug: room, selections, origin } of rooms) {
    for (const selection of selections.filter((one) => isMeant(room, one))) {
      const { considering, path } = selection;
      const written = placeWritten(origin, path);
      const { file } = written.origin;
      const values = { considering: [...considering, ...options.filter((slug) => !considering.includes(slug))] };
      const own = sets.get(file) ?? new Map<string, SetKeys>();
      sets.set(
        file,
        own.set(written.path.join('.'), { in: written.path, values, after: ['allowance', 'standard', 'category'] }),
      );
    }
  }
  return [...sets].map(([path, own]) => ({ path, text: setKeys(texts.get(path) ?? '', [...own.values()]) }));
}

/** What to do with options that are new: one is nowhere until a room considers it. Empty where none is. */
export function considerWords(added: readonly string[], { slug, name }: Category, isWritten: boolean): string {
  if (added.length === 0) return '';
  const names = added.slice(0, 3).join(', ');
  const some = added.length > 3 ? `${names} and ${added.length - 3} more` : names;
  const how = isWritten
    ? `write ${added.length === 1 ? 'its file name' : 'their file names'} under considering of a ${name.toLowerCase()} (category: ${slug}) in a room's record`
    : `--for ROOM, or --for all, writes ${added.length === 1 ? 'it' : 'them'} into the rooms`;
  return `${counted(added.length, 'new option')} (${some}), considered nowhere yet: ${how}.\n`;
}
