import { didYouMean, positionOf, problemIn, type Problem } from '../../base/problem/index.js';
import type { Source } from '../model/index.js';

/** Marks in the Markdown of a record's body. `<!-- trades -->` … `<!-- /trades -->` is for the trades that work there;
 *  `<!-- builder -->` … `<!-- /builder -->` is in no handout. The book shows both, without the marks. */
const mark = /<!--\s*(\/?)(builder|trades)\s*-->/giu;

/** Comments of HTML that are no marks. A mark a letter off would show to all what it was to hide, so each is an error. */
export function unknownMarks({ path, text }: Source): readonly Problem[] {
  return [...text.matchAll(/<!--\s*(\/?)([^]*?)\s*(?:-->|$(?![^]))/gu)]
    .filter(({ 0: whole }) => whole.replace(mark, '') !== '')
    .map(({ 1: slash = '', 2: said = '', index }) =>
      problemIn(
        { file: path, text },
        positionOf(text, index),
        'comment-unknown',
        `<!-- ${slash}${shorten(said)} --> is no mark: it would hide nothing`,
        {
          fix:
            didYouMean(said.toLowerCase(), ['builder', 'trades']) ??
            'marks are builder and trades; what nobody is to read is not written here',
        },
      ),
    );
}

function shorten(text: string): string {
  const [line = ''] = text.split('\n');
  return line.length > 40 || line !== text ? `${line.slice(0, 40)}…` : line;
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
