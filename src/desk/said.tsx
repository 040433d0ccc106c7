import type { ComponentChildren, VNode } from 'preact';
import { render } from 'preact-render-to-string';
import type { Problem } from '../base/problem/index.js';
import { counted } from '../base/units/index.js';
import type { Comparison } from '../core/compare/index.js';
import { Difference } from './difference.js';
import type { Shown } from './ask.js';
import { SecretField } from './form.js';
import { Linked } from './linked.js';
import { ProblemLines } from './problems.js';

/** What was just done, or why it was not. */
export interface Said {
  readonly isDone: boolean;
  readonly words: string;
  /** What became of it, where 'Done.' or 'Not done.' does not say it. */
  readonly head?: string;
  /** Shown whole, however long it is: it is what the page is for. */
  readonly isWhole?: boolean;
  /** What it changes, or would. */
  readonly difference?: Comparison;
  /** Where more of it stands. */
  readonly shown?: Shown;
  /** What is to be looked at since it was done, and was not before. */
  readonly news?: readonly Problem[];
  /** It can be taken back. */
  readonly undo?: LastDone;
}

/** A page that says what was done: how it proves its forms, and where they lead back to. */
export interface Saying {
  readonly secret: string;
  readonly back: string;
  /** Of the page of a record. */
  readonly record?: string;
}

/** What can be taken back: what it was, and its number among all that was done. */
export interface LastDone {
  readonly number: number;
  readonly what: string;
}

/** Lines that are shown at once, in whole paragraphs where the first has no more. */
const mostLines = 6;

function firstLines(words: string): string {
  const lines = words.split('\n').slice(0, mostLines + 1);
  const end = lines.lastIndexOf('');
  return lines.slice(0, end > 0 ? end : mostLines).join('\n');
}

/** The same without what a page lists itself. */
export function withoutNews(said: Said, isListed: (problem: Problem) => boolean): Said {
  return said.news ? { ...said, news: said.news.filter((problem) => !isListed(problem)) } : said;
}

/** `children` stand below what became of it: what may be done next. */
export function SaidWords({ said, page, children }: { said: Said; page: Saying; children?: ComponentChildren }): VNode {
  const { isDone, words, head, isWhole = false, difference, shown, news = [], undo } = said;
  const lines = words.split('\n');
  const isLong = !isWhole && lines.length > mostLines + 2;
  return (
    <div class={`desk-said ${isDone ? 'is-done' : 'is-refused'}`} role={isDone ? 'status' : 'alert'}>
      <p>{head ?? (isDone ? 'Done.' : 'Not done.')}</p>
      {children}
      <SaidText words={isLong ? firstLines(words) : words} />
      {isLong && (
        <details>
          <summary>All that was said</summary>
          <SaidText words={words} />
        </details>
      )}
      {shown && (
        <p>
          <a href={fromRoot(shown.path)}>{shown.words}</a>
        </p>
      )}
      {difference && <Difference of={difference} link={fromRoot} level={3} isFolded={!isWhole} />}
      {news.length > 0 && (
        <>
          <p>{counted(news.length, 'more thing')} to look at since:</p>
          <ProblemLines problems={news} link={fromRoot} />
        </>
      )}
      {undo && <TakeBack undo={undo} page={page} />}
    </div>
  );
}

/** In the letters of the page; lines of a record with a mark beneath one in letters of one width. */
function SaidText({ words }: { words: string }): VNode {
  const isSet = /^ *\| +\^/mu.test(words);
  return (
    <pre class={isSet ? 'is-set' : undefined}>
      <Linked words={words} />
    </pre>
  );
}

/** Words are set into pages of every folder. */
const fromRoot = (to: string): string => `/${to}`;

/** Takes back what was done last. */
export function TakeBack({ undo, page: { secret, back, record } }: { undo: LastDone; page: Saying }): VNode {
  return (
    <form method="post" action={fromRoot('desk/do')} class="desk-form">
      <SecretField secret={secret} back={back} ask="undo" />
      <input type="hidden" name="number" value={undo.number} />
      {record !== undefined && <input type="hidden" name="path" value={record} />}
      <p>
        <button class="is-quiet">Take it back</button>
      </p>
    </form>
  );
}

/** The same as text, to be set into a page of the book. */
export function saidHtml(said: Said, page: Saying): string {
  return render(<SaidWords said={said} page={page} />);
}
