import { join } from 'node:path';
import type { Source } from '../core/model/index.js';
import { writeAtomically } from '../disk/store/index.js';

/** Writes a record that was read with its new text. The byte order mark with which some editors begin a file stays: it is in its source, and
 *  in no text that a reader has. */
export async function writeRecord(
  dir: string,
  { sources }: { readonly sources: readonly Source[] },
  file: string,
  text: string,
): Promise<void> {
  await writeAtomically(join(dir, file), recordText({ sources }, file, text));
}

/** A record's new text as it is written. */
export function recordText({ sources }: { readonly sources: readonly Source[] }, file: string, text: string): string {
  const before = sources.find(({ path }) => path === file)?.text ?? '';
  const mark = before.startsWith('\uFEFF') && !text.startsWith('\uFEFF') ? '\uFEFF' : '';
  return mark + text;
}
