import { writeCodeLine } from './code-line.js';
import type { Slip, SlipChoice } from './slip.js';

/** The line of a slip that the program reads: some 950 letters for forty choices, with twelve digits of a digest. The same slip has the same line.
 *  What is packed are lines, which cost less than JSON: house, snapshot, person, day and note, then of each choice the selection (from its first stroke, where
 *  its room is the one before), what was and what is wanted, both empty where nothing is chosen. */
export function encodeSlip({ house, snapshot, by, on, note = '', choices }: Slip): string {
  const words = [house, snapshot, by, on, note, ...choices.flatMap(choiceWords)];
  return writeCodeLine(words.map(asLine).join('\n'));
}

function choiceWords(
  { selection, was, now }: SlipChoice,
  index: number,
  all: readonly SlipChoice[],
): readonly string[] {
  const room = `${roomOf(selection)}/`;
  const isSame = all[index - 1]?.selection.startsWith(room) === true;
  return [isSame ? selection.slice(room.length - 1) : selection, was ?? '', now ?? ''];
}

/** The part of a selection's id before its first stroke. */
export function roomOf(selection: string): string {
  return selection.slice(0, Math.max(selection.indexOf('/'), 0));
}

/** Ends of lines and control characters as JSON escapes them. */
function asLine(word: string): string {
  return JSON.stringify(word).slice(1, -1);
}
