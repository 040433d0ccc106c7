import type { Source } from '../core/model/index.js';

/** The new text of a record that was read, as it is written. The byte order mark with which some editors begin a file stays: it is in its source, and
 *  in no text that a reader has. */
export function recordText({ sources }: { readonly sources: readonly Source[] }, file: string, text: string): string {
  const before = sources.find(({ path }) => path === file)?.text ?? '';
  const mark = before.startsWith('\uFEFF') && !text.startsWith('\uFEFF') ? '\uFEFF' : '';
  return mark + text;
}
