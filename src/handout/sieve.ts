import type { Gate, Sieved } from '../sheet/index.js';
import { likeMarks, withoutBuilder } from '../core/records/index.js';
import { blocksOf } from './blocks.js';
import { moneyIn, withoutMoney } from './money.js';

/** Signs by which Markdown may read otherwise than it is written. */
const marked = /[*_[\]&\\`<>|~\n]/u;

/** Does the text speak of money, as written or as it is read? Answers the words that do, or undefined. */
export function moneyWords(text: string): string | undefined {
  const found = moneyIn(text);
  if (found !== undefined || !marked.test(text)) return found;
  const blocks = blocksOf(text);
  return firstOf(blocks, moneyOf) ?? moneyIn(blocks.flatMap(({ read }) => read).join(' '));
}

/** Prose of a record as a handout may carry it: without what is marked for the builder, without comments, and without each
 *  paragraph, list or table that speaks of money. Markdown stays Markdown. */
export function sieve(text: string): Sieved {
  return sifted(text) as Sieved;
}

/** A name as a handout may carry it. What is built has to be called something: only its words of money go. */
export function sieveName(text: string): Sieved {
  const named = sifted(text);
  if (named !== '' || text === '') return named as Sieved;
  const left = withoutMoney(withoutComments(text));
  return (moneyWords(left) === undefined ? left : '…') as Sieved;
}

/** What lets words of records into a trade's cells. */
export const forTrades: Gate<Sieved> = (text, as) => (as === 'name' ? sieveName(text) : sieve(text));

function sifted(text: string): string {
  if (!text.includes('<!--') && likeMarks(text).length === 0 && moneyWords(text) === undefined) return text;
  const open = withoutComments(text);
  if (moneyWords(open) === undefined) return open.trim();
  return parts(open)
    .filter((part) => moneyOf(part) === undefined)
    .map(({ written }) => written)
    .join('\n\n')
    .trim();
}

/** The paragraphs, lists and tables that `sieve` leaves out because they speak of money. */
export function sievedOut(text: string): readonly { readonly part: string; readonly word: string }[] {
  const open = withoutComments(text);
  if (moneyWords(open) === undefined) return [];
  return parts(open).flatMap((part) => {
    const word = moneyOf(part);
    return word === undefined ? [] : [{ part: part.written, word }];
  });
}

type Part = ReturnType<typeof blocksOf>[number];

/** As written, each item by itself, and over the ends of items: '$ | 500'. */
const moneyOf = ({ written, read }: Part): string | undefined =>
  moneyIn(written) ?? firstOf(read, moneyIn) ?? moneyIn(read.join(' '));

function firstOf<T>(all: readonly T[], find: (one: T) => string | undefined): string | undefined {
  for (const one of all) {
    const found = find(one);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Its blocks; the whole where money is read over the ends of blocks. */
function parts(text: string): readonly Part[] {
  const blocks = blocksOf(text);
  if (blocks.some((block) => moneyOf(block) !== undefined)) return blocks;
  return [{ written: text, read: blocks.flatMap(({ read }) => read) }];
}

/** Without what is marked for the builder. A comment that is no mark, or what looks like one, was to hide something, and nobody knows how far: what
 *  follows it is left out. */
function withoutComments(text: string): string {
  const open = withoutBuilder(text).replace(/<!--\s*\/?trades\s*-->/giu, '');
  const [other] = likeMarks(open);
  const left = other ? open.slice(0, other.index) : open;
  return left === text ? text : left.replace(/(?<=\S) {2,}(?=\S)/gu, ' ');
}
