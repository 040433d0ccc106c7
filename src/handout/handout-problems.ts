import type { Book } from '../core/book/index.js';
import { inLocale } from '../base/units/index.js';
import { positionOf, problemIn, type Position, type Problem } from '../base/problem/index.js';
import { openMark } from '../core/records/index.js';
import { carriedNames, carriedProse, type CarriedProse } from './prose.js';
import { moneyWords, sievedOut } from './sieve.js';

/** What handouts leave out of the records because it speaks of money, and marks that are never closed, as warnings at the
 *  line of the record; names that speak of money as errors, since a name cannot be left out. Nothing leaks without them: they say
 *  what a trade will miss. `records`: of these alone, by their paths. */
export function handoutProblems(book: Book, records?: ReadonlySet<string>): readonly Problem[] {
  return inLocale(book.house, () => problemsOf(book, (path) => records?.has(path) ?? true));
}

function problemsOf(book: Book, isAsked: (path: string) => boolean): readonly Problem[] {
  const texts = new Map(book.sources.map(({ path, text }) => [path, text]));
  const seen = new Set<string>();
  const asked = (all: readonly CarriedProse[]): readonly CarriedProse[] => all.filter(({ source }) => isAsked(source));
  const problems = [
    ...asked(carriedProse(book)).flatMap((prose) => leftOut(prose, texts.get(prose.source) ?? '')),
    ...asked(carriedNames(book)).flatMap((name) => named(name, texts.get(name.source) ?? '')),
    ...book.sources.flatMap(({ path, text }) => (isAsked(path) ? unclosed(path, text) : [])),
  ];
  return problems.filter((problem) => {
    const key = `${problem.file} ${problem.at.line} ${problem.at.column} ${problem.code}`;
    return !seen.has(key) && seen.add(key);
  });
}

function leftOut({ source, what, text }: CarriedProse, record: string): readonly Problem[] {
  return sievedOut(text).map(({ part, word }) =>
    problemIn(
      { file: source, text: record },
      placeOf(part, word, record),
      'handout-money',
      `'${word}' speaks of money in ${what}: handouts leave the paragraph, list or table out`,
      {
        severity: 'warning',
        fix: 'say it without money, or move it to private: or between <!-- builder --> and <!-- /builder -->',
      },
    ),
  );
}

function named({ source, what, text }: CarriedProse, record: string): readonly Problem[] {
  const [mark] = /<!--[^]*?(?:-->|$)/u.exec(text) ?? [];
  if (mark !== undefined)
    return [
      problemIn(
        { file: source, text: record },
        placeOf(text, text.slice(text.indexOf(mark), text.lastIndexOf('-->') + 3), record),
        'comment-unknown',
        `${mark} stands in the words for ${what}: marks are for prose, and a name is read whole`,
        { fix: 'name it without; what is for the builder goes under private:' },
      ),
    ];
  const word = moneyWords(text);
  if (word === undefined) return [];
  return [
    problemIn(
      { file: source, text: record },
      placeOf(text, word, record),
      'name-money',
      `'${word}' speaks of money in the words for ${what}, which trades read in handouts`,
      { fix: 'name it without money; what it comes to is recorded where it is priced' },
    ),
  ];
}

function unclosed(path: string, text: string): readonly Problem[] {
  const mark = openMark(text);
  if (!mark) return [];
  const what = mark.name === 'builder' ? 'handouts leave out all that follows' : 'handouts leave out what it begins';
  return [
    problemIn(
      { file: path, text },
      positionOf(text, mark.index),
      'mark-open',
      `<!-- ${mark.name} --> is never closed: ${what}`,
      { severity: 'warning', fix: `write <!-- /${mark.name} --> where it ends` },
    ),
  ];
}

/** Where a text stands in a record, at its word of money. A record may fold it over lines. Where it is
 *  written in another way, such as with escapes, the word alone is looked for; else it is the record's first line. */
function placeOf(part: string, word: string, record: string): Position {
  const pattern = part
    .split(/\s+/u)
    .map((word) => word.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&'))
    .join('\\s+');
  const found = new RegExp(pattern, 'u').exec(record);
  if (!found) return positionOf(record, Math.max(record.indexOf(word), 0));
  const inside = found[0].indexOf(word);
  return positionOf(record, found.index + Math.max(inside, 0));
}
