import { readFileSync } from 'node:fs';
import { escape } from '../base/svg/index.js';
import { capital, once } from '../base/units/index.js';
import { programPath } from '../disk/program/index.js';

/** A word of the trade with what it means, as docs/glossary.md has it. */
export interface Term {
  /** As the glossary heads it: `Gross, deductions, net`. */
  readonly title: string;
  readonly meaning: string;
  /** How it stands in a text, in small letters. */
  readonly word: string;
  /** Finds it in a text, one or several. */
  readonly pattern: RegExp;
}

/** Words of docs/glossary.md that an owner may not know. The others say what they mean, or are on every line. */
export const explained = [
  'standard',
  'alternative',
  'choice slip',
  'take-off',
  'deductions',
  'net',
  'convention',
  'waste',
  'pool',
  'contract sum',
  'allowance',
  'upgrade',
  'credit',
  'mark-up',
  'contingency',
  'invoiced',
  'milestone',
  'lead time',
  'change order',
  'handout',
  'key plan',
  'misclosure',
  'caution',
] as const;

/** Entries of a glossary in Markdown, by each of the words that their heads name. */
export function readGlossary(text: string): readonly Term[] {
  return [...text.matchAll(/^- \*\*(.+?)\*\*: (.+)$/gmu)].flatMap(([, title = '', meaning = '']) =>
    title.split(', ').map((head) => {
      const word = head.toLowerCase();
      const pattern = new RegExp(`(?<![\\w-])${word}s?(?![\\w-])`, 'iu');
      return { title, meaning: meaning.replaceAll('`', ''), word, pattern };
    }),
  );
}

/** What pages explain, read once. */
export const pageTerms = once((): readonly Term[] => {
  const words = new Set<string>(explained);
  return readGlossary(readFileSync(programPath('docs/glossary.md'), 'utf8')).filter(({ word }) => words.has(word));
});

/** Nothing is explained in what is tapped already, in heads, in what is drawn, and in what a record says as it is written. */
const barred = new Set(
  'a button summary label legend select h1 h2 h3 h4 h5 h6 th caption svg code pre nav script style textarea'.split(' '),
);
/** For the ear or for the eye alone, or the text of a record. */
const hidden = /class="[^"]*\b(?:for-the-ear|record)\b|aria-hidden/u;
const empty = new Set(['br', 'hr', 'img', 'input', 'wbr', 'col', 'meta', 'link']);
const tag = /<(\/?)([a-z][a-z0-9-]*)((?:"[^"]*"|'[^']*'|[^'">])*)>/gu;

interface Found {
  readonly at: number;
  readonly words: string;
  readonly isFolded: boolean;
}

/** A finished page in which each term is explained where it first stands, before all where nothing folds it away: a button with its meaning as
 *  title, which opens the same at the foot of the page's text. Needs no script. The page's own text is in `main`. */
export function explainTerms(html: string, terms: readonly Term[]): string {
  const from = html.indexOf('<main');
  const to = html.lastIndexOf('</main>');
  if (from < 0 || to < 0) return html;
  const found = findTerms(html.slice(from, to), terms);
  const entries = [...found].sort(([, one], [, other]) => one.at - other.at);
  let done = html.slice(0, from);
  let next = from;
  for (const [term, { at, words }] of entries) {
    done += html.slice(next, from + at) + button(term, words);
    next = from + at + words.length;
  }
  return done + html.slice(next, to) + entries.map(([term]) => meaning(term)).join('') + html.slice(to);
}

function findTerms(text: string, terms: readonly Term[]): ReadonlyMap<Term, Found> {
  const found = new Map<Term, Found>();
  const open: { readonly name: string; readonly isBarred: boolean; readonly isFolded: boolean }[] = [];
  let last = 0;
  const look = (end: number): void => {
    const { isBarred = false, isFolded = false } = open.at(-1) ?? {};
    if (isBarred || end === last) return;
    const run = text.slice(last, end);
    for (const term of terms) {
      const before = found.get(term);
      if (before && (!before.isFolded || isFolded)) continue;
      const match = term.pattern.exec(run);
      if (match) found.set(term, { at: last + match.index, words: match[0], isFolded });
    }
  };
  for (const match of text.matchAll(tag)) {
    const [whole, closes, name = '', attributes = ''] = match;
    look(match.index);
    last = match.index + whole.length;
    if (closes === '/') {
      if (open.at(-1)?.name === name) open.pop();
    } else if (!empty.has(name) && !attributes.endsWith('/')) {
      const { isBarred = false, isFolded = false } = open.at(-1) ?? {};
      open.push({
        name,
        isBarred: isBarred || barred.has(name) || hidden.test(attributes),
        isFolded: isFolded || name === 'details',
      });
    }
  }
  look(text.length);
  return found;
}

const idOf = ({ word }: Term): string => `term-${word.replaceAll(' ', '-')}`;

function button(term: Term, words: string): string {
  return `<button type="button" class="term" popovertarget="${idOf(term)}" title="${escape(term.meaning)}">${words}</button>`;
}

function meaning(term: Term): string {
  const { title } = term;
  return `<p id="${idOf(term)}" class="term-words" popover><strong>${escape(title)}</strong>: ${escape(capital(term.meaning))}</p>`;
}
