import { parseDay } from '../base/units/index.js';
import { readCodeLine } from './code-line.js';
import { roomOf } from './encode-slip.js';
import type { Slip, SlipChoice } from './slip.js';

export type DecodedSlip =
  | {
      readonly ok: true;
      readonly slip: Slip;
      /** The code line as it was written: what a digest of the slip is made of. */
      readonly line: string;
    }
  | {
      readonly ok: false;
      /** A sentence without its point: `its code line is cut off: …`. */
      readonly why: string;
    };

/** Choices of a slip: more than any house has places. */
const mostChoices = 2000;

/** The slip in a text, such as a mail that it was pasted into: quoted, wrapped, with words around it. Never throws. */
export function decodeSlip(text: string): DecodedSlip {
  const read = readCodeLine(text);
  if (!read.ok) return read;
  const [house = '', snapshot = '', by = '', on = '', note = '', ...rest] = wordsOf(read.text);
  const choices = choicesOf(rest);
  if (!choices || !parseDay(on).ok) return { ok: false, why: 'its code line holds something else than a slip' };
  if (choices.length > mostChoices) return { ok: false, why: 'it holds more choices than any house has' };
  const ids = choices.map(({ selection }) => selection);
  if (new Set(ids).size < ids.length) return { ok: false, why: 'it chooses one place twice' };
  return { ok: true, line: read.line, slip: { house, snapshot, by, on, ...(note !== '' && { note }), choices } };
}

function wordsOf(text: string): readonly string[] {
  try {
    return text.split('\n').map((line) => String(JSON.parse(`"${line}"`)));
  } catch {
    return [];
  }
}

function choicesOf(words: readonly string[]): readonly SlipChoice[] | undefined {
  const choices: SlipChoice[] = [];
  for (let index = 0; index < words.length; index += 3) {
    const [named = '', was = '', now] = words.slice(index, index + 3);
    if (named === '' || now === undefined) return undefined;
    const selection = named.startsWith('/') ? roomOf(choices.at(-1)?.selection ?? '') + named : named;
    choices.push({ selection, was: was || null, now: now || null });
  }
  return choices;
}

/** Why a slip is none of a house, by the house's job number, as a sentence without its point; undefined where it is. */
export function whyNotOf({ house }: Pick<Slip, 'house'>, number: string): string | undefined {
  return house === number ? undefined : `it is of job ${house}, and this house is job ${number}`;
}
