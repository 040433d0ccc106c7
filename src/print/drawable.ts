import type { Source } from '../core/model/index.js';
import { problemIn, type Problem } from '../base/problem/index.js';
import { isPrintable } from './fonts.js';

/** A character that no font of ours draws. */
export type Undrawn = string;

const standIn = '?';

/** A copy of `model` whose every string holds only characters that the book's fonts draw. What they do not draw becomes
 *  a question mark and is told once, so that one emoji in a note does not cost the owner the whole book. */
export function makeDrawable<Model>(model: Model): { readonly model: Model; readonly undrawn: readonly Undrawn[] } {
  const missing = new Set<Undrawn>();
  const replaced = replaceIn(model, missing) as Model;
  return { model: replaced, undrawn: [...missing] };
}

function replaceIn(value: unknown, missing: Set<Undrawn>): unknown {
  if (typeof value === 'string') return replaceText(value, missing);
  if (Array.isArray(value)) return value.map((item) => replaceIn(item, missing));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, replaceIn(item, missing)]));
}

function replaceText(text: string, missing: Set<Undrawn>): string {
  if (/^[\n\x20-\x7e]*$/.test(text)) return text;
  return text.normalize('NFC').replace(/[^\n\x20-\x7e]/gu, (character) => {
    if (character === '\t') return character;
    if (/[\p{Cc}\p{Cf}]/u.test(character)) return '';
    if (isPrintable(character)) return character;
    if (/\s/u.test(character)) return ' ';
    if (/\p{Pd}/u.test(character)) return '-';
    missing.add(character);
    return standIn;
  });
}

/** A warning for each character that could not be printed, where it first stands in the records. */
export function undrawnProblems(undrawn: readonly Undrawn[], sources: readonly Source[]): readonly Problem[] {
  return undrawn.flatMap((character) => {
    const source = sources.find(({ text }) => text.normalize('NFC').includes(character));
    if (!source) return [];
    const before = source.text.normalize('NFC').split(character)[0]?.split('\n') ?? [];
    const at = { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
    const code = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
    const message = `the fonts of the printed book have no character U+${code}: a question mark is printed for it`;
    const fix = 'write it in another way';
    return [
      problemIn({ file: source.path, text: source.text }, at, 'print-character', message, { fix, severity: 'warning' }),
    ];
  });
}
