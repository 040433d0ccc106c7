import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { deskPaths } from './paths.js';

/** What was just done, or why it was not. */
export interface Said {
  readonly isDone: boolean;
  readonly words: string;
}

/** What can be taken back: what it was, and its number among all that was done. */
export interface LastDone {
  readonly number: number;
  readonly what: string;
}

/** Lines that are shown at once. */
const mostLines = 6;

export function SaidWords({ said: { isDone, words } }: { said: Said }): VNode {
  const lines = words.split('\n');
  const isLong = lines.length > mostLines + 2;
  return (
    <div class={`desk-said ${isDone ? 'is-done' : 'is-refused'}`} role={isDone ? 'status' : 'alert'}>
      <p>{isDone ? 'Done.' : 'Not done.'}</p>
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

/** Records that are named lead to their text. Words are set into pages of every folder: the way begins at the desk's own root. */
function Linked({ words }: { words: string }): VNode {
  const parts = words.split(/(\bcontent\/[\w./-]+\.md\b)/u);
  return (
    <>
      {parts.map((part, index) =>
        index % 2 === 0 ? part : <a href={`/${deskPaths.record}?path=${encodeURIComponent(part)}`}>{part}</a>,
      )}
    </>
  );
}

/** The same as text, to be set into a page of the book. */
export function saidHtml(said: Said): string {
  return render(<SaidWords said={said} />);
}
