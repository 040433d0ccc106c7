import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';

/** What was just done, or why it was not. */
export interface Said {
  readonly isDone: boolean;
  readonly words: string;
}

export function SaidWords({ said: { isDone, words } }: { said: Said }): VNode {
  return (
    <div class={`desk-said ${isDone ? 'is-done' : 'is-refused'}`} role={isDone ? 'status' : 'alert'}>
      <p>{isDone ? 'Done.' : 'Not done.'}</p>
      <pre>{words}</pre>
    </div>
  );
}

/** The same as text, to be set into a page of the book. */
export function saidHtml(said: Said): string {
  return render(<SaidWords said={said} />);
}
