import { didYouMean, positionOf, problemIn, type Problem } from '../../base/problem/index.js';
import type { Source } from '../model/index.js';
import { likeMarks, mark, plainly } from './like-marks.js';

/** Comments that are no marks, what looks like a mark, and marks that end nothing. A mark a letter off would show to all what it was to
 *  hide, so each is an error. */
export function unknownMarks({ path, text }: Source): readonly Problem[] {
  const problem = (index: number, message: string, fix: string): Problem =>
    problemIn({ file: path, text }, positionOf(text, index), 'comment-unknown', message, { fix });
  return [
    ...likeMarks(text).map(({ index, said }) =>
      problem(
        index,
        `${shorten(said)} is no mark: it would hide nothing`,
        nearestMark(said) ?? 'marks are builder and trades; what nobody is to read is not written here',
      ),
    ),
    ...oddMarks(text).map(({ index, said, why }) =>
      problem(index, `${said} ${why}`, 'each part that is marked begins and ends once'),
    ),
  ];
}

/** The mark that may be meant: by its letters, or the same letters in other signs. */
function nearestMark(said: string): string | undefined {
  const letters = plainly(said).text.toLowerCase();
  const name = letters.replace(/[^\p{L}\p{N}]/gu, '');
  if (name === 'builder' || name === 'trades')
    return `write it in plain signs: <!-- ${letters.includes('/') ? '/' : ''}${name} -->`;
  return didYouMean(name, ['builder', 'trades']);
}

function shorten(said: string): string {
  const [line = ''] = said.split('\n');
  return line.length > 50 || line !== said ? `${line.slice(0, 45)}…` : line;
}

/** Marks that begin what is open already, or end what is not. */
function oddMarks(text: string): readonly { readonly index: number; readonly said: string; readonly why: string }[] {
  const open = new Set<string>();
  return [...text.matchAll(mark)].flatMap(({ 0: said, 1: slash, 2: name = '', index }) => {
    const key = name.toLowerCase();
    const isEnd = slash === '/';
    const isOdd = isEnd !== open.has(key);
    if (isEnd) open.delete(key);
    else open.add(key);
    const why = isEnd ? 'ends nothing: what stands before it is not marked' : 'begins what is marked already';
    return isOdd ? [{ index, said, why }] : [];
  });
}

/** The text with its marks taken out, for those who may read all of it. */
export function withoutMarks(text: string): string {
  return text.replace(mark, '');
}

/** The text without what is marked for the builder. A mark that is never closed takes everything after it. */
export function withoutBuilder(text: string): string {
  return pieces(text)
    .filter(({ inside }) => !inside.has('builder'))
    .map(({ text: piece }) => piece)
    .join('');
}

/** Only what is marked for trades, and of it nothing that is marked for the builder. A mark that is never closed gives
 *  nothing: who forgot to close it did not mean the rest of the page. */
export function onlyTrades(text: string): string {
  const open = openMark(text);
  return pieces(text)
    .filter(({ inside, from }) => inside.has('trades') && !inside.has('builder') && (!open || from < open.index))
    .map(({ text: piece }) => piece.trim())
    .filter((piece) => piece !== '')
    .join('\n\n');
}

/** The first mark that is never closed, with its place in the text. */
export function openMark(text: string): { readonly name: string; readonly index: number } | undefined {
  const open = new Map<string, number>();
  for (const { 1: slash, 2: name = '', index } of text.matchAll(mark)) {
    const key = name.toLowerCase();
    if (slash === '/') open.delete(key);
    else if (!open.has(key)) open.set(key, index);
  }
  const [first] = [...open].sort(([, a], [, b]) => a - b);
  return first && { name: first[0], index: first[1] };
}

interface Piece {
  readonly text: string;
  readonly from: number;
  readonly inside: ReadonlySet<string>;
}

function pieces(text: string): readonly Piece[] {
  const found: Piece[] = [];
  const inside = new Set<string>();
  let from = 0;
  for (const { 0: whole, 1: slash, 2: name = '', index } of text.matchAll(mark)) {
    found.push({ text: text.slice(from, index), from, inside: new Set(inside) });
    if (slash === '/') inside.delete(name.toLowerCase());
    else inside.add(name.toLowerCase());
    from = index + whole.length;
  }
  return [...found, { text: text.slice(from), from, inside: new Set(inside) }];
}
