import type { VNode } from 'preact';
import { capital, notToldYet } from '../../base/units/index.js';
import { phraseHtml, proseHtml } from '../../write/index.js';

/** A record's body. markdown-it has escaped it: raw HTML in it is shown as text. */
export function Prose({ text }: { text: string }): VNode | null {
  if (text.trim() === '') return null;
  return <div class="prose" dangerouslySetInnerHTML={{ __html: proseHtml(text) }} />;
}

/** A record's one-line text, such as a note. */
export function Phrase({ text }: { text: string }): VNode {
  return <span dangerouslySetInnerHTML={{ __html: phraseHtml(text) }} />;
}

/** A phrase that an option may not tell yet. */
export function Told({ text }: { text: string | undefined }): VNode {
  return text === undefined ? <span class="why">{capital(notToldYet)}.</span> : <Phrase text={text} />;
}
