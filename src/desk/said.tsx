import type { ComponentChildren, VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { Linked } from './linked.js';

/** What was just done, or why it was not. */
export interface Said {
  readonly isDone: boolean;
  readonly words: string;
  /** What became of it, where 'Done.' or 'Not done.' does not say it. */
  readonly head?: string;
  /** Shown whole, however long it is: it is what the page is for. */
  readonly isWhole?: boolean;
}

/** What can be taken back: what it was, and its number among all that was done. */
export interface LastDone {
  readonly number: number;
  readonly what: string;
}

/** Lines that are shown at once. */
const mostLines = 6;

/** `children` stand below what became of it: what may be done next. */
export function SaidWords({ said, children }: { said: Said; children?: ComponentChildren }): VNode {
  const { isDone, words, head, isWhole = false } = said;
  const lines = words.split('\n');
  const isLong = !isWhole && lines.length > mostLines + 2;
  return (
    <div class={`desk-said ${isDone ? 'is-done' : 'is-refused'}`} role={isDone ? 'status' : 'alert'}>
      <p>{head ?? (isDone ? 'Done.' : 'Not done.')}</p>
      {children}
      <pre>
        <Linked words={isLong ? lines.slice(0, mostLines).join('\n').trimEnd() : words} />
      </pre>
      {isLong && (
        <details>
          <summary>All that was said</summary>
          <pre>
            <Linked words={words} />
          </pre>
        </details>
      )}
    </div>
  );
}

/** The same as text, to be set into a page of the book. */
export function saidHtml(said: Said): string {
  return render(<SaidWords said={said} />);
}
