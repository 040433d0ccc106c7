import { lookUp, type Book, type BookRoom, type BookSelection } from '../../core/book/index.js';
import { nearest } from '../../base/problem/index.js';
import { joinWords, slugFor } from '../../base/units/index.js';
import { standing, type SlipChoice } from '../../slip/index.js';
import { choiceTitle } from '../../table/index.js';
import { UsageError } from '../usage-error.js';

/** What `bookmatch choose ROOM PLACE OPTION` names, by file names or as pages print them: `'Great room' 'Stone facing' 'Thin natural ledge'`. A name that
 *  there is not, or that several have, is wrong usage. */
export function nameChoice(book: Book, [room, place, option]: readonly [string, string, string]): SlipChoice {
  const selection = namePlace(book, [room, place]);
  return { selection: selection.id, was: standing(selection), now: optionNamed(book, selection, option) };
}

/** The place that two words of a command name. */
export function namePlace(book: Book, [room, place]: readonly [string, string]): BookSelection {
  return selectionNamed(book, roomNamed(book, room), place);
}

export function roomNamed({ rooms }: Book, word: string): BookRoom {
  const found = rooms.find(({ slug, name, number }) => isAny(word, [slug, name, number, `${number} ${name}`]));
  if (found) return found;
  throw unknown(
    'room',
    word,
    rooms.map(({ name }) => name),
  );
}

/** By its category, its place, or both: the first of these that names one alone. */
function selectionNamed(book: Book, { slug, name: room }: BookRoom, word: string): BookSelection {
  const look = lookUp(book);
  const own = book.selections.filter((selection) => selection.room === slug);
  const titles = (of: readonly BookSelection[]): readonly string[] => of.map((one) => choiceTitle(one, look));
  const names: readonly ((one: BookSelection) => readonly string[])[] = [
    (one) => [one.id, one.id.slice(slug.length + 1), choiceTitle(one, look)],
    ({ category }) => [category, look.categoryName(category)],
    ({ placeText, places }) => [placeText, ...places.flatMap(({ id, name }) => [id, name])],
  ];
  let several: readonly BookSelection[] = [];
  for (const of of names) {
    const found = own.filter((one) => isAny(word, of(one)));
    const [first] = found;
    if (first && found.length === 1) return first;
    if (several.length === 0) several = found;
  }
  if (several.length > 0)
    throw new UsageError(
      `'${word}' is ${several.length} places in ${room}: name one of ${joinWords(titles(several).map(quoted), 'or')}. Nothing was written.`,
    );
  throw unknown(
    `place in ${room}`,
    word,
    titles(own),
    own.map(({ category }) => look.categoryName(category)),
  );
}

/** A slug; `none` where it is declined, null to leave it open again. */
function optionNamed(book: Book, { category, considering }: BookSelection, word: string): string | null {
  const wanted = slugFor(word);
  if (wanted === 'none' || wanted === 'not-wanted') return 'none';
  if (wanted === 'open') return null;
  const own = book.options.filter((one) => one.category === category);
  const found = own.filter(({ slug, name }) => isAny(word, [slug, name]));
  const [first] = found;
  if (first && found.length === 1) return first.slug;
  if (first)
    throw new UsageError(
      `'${word}' is ${found.length} options: name one of ${joinWords(
        found.map(({ slug }) => slug),
        'or',
      )}. Nothing was written.`,
    );
  const considered = own.filter(({ slug }) => considering.includes(slug));
  const listed = (considered.length > 0 ? considered : own).map(({ name }) => name);
  throw unknown(
    'option',
    word,
    [...listed, 'none', 'open'],
    own.flatMap(({ slug, name }) => [slug, name]),
  );
}

function isAny(word: string, names: readonly string[]): boolean {
  return names.some((name) => slugFor(name) === slugFor(word));
}

/** `listed` is what there is; `near` also stands for what may have been meant. */
function unknown(what: string, word: string, listed: readonly string[], near: readonly string[] = []): UsageError {
  const meant = nearest(word, [...listed, ...near]);
  const there =
    meant === undefined ? `there is ${joinWords([...new Set(listed)].map(quoted))}` : `did you mean ${quoted(meant)}?`;
  return new UsageError(`there is no ${what} '${word}': ${there}\nNothing was written.`);
}

const quoted = (name: string): string => `'${name}'`;
