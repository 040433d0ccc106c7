import type { Problem } from '../problem/index.js';
import { isPrintable } from './fonts.js';

const standIn = '?';

/** A copy of `model` whose every string holds only characters that the book's fonts draw. What they do not draw becomes
 *  a question mark and is reported once, so that one emoji in a note does not cost the owner the whole book. */
export function makeDrawable<Model>(model: Model, file = 'book.pdf'): { model: Model; problems: readonly Problem[] } {
  const missing = new Map<string, string>();
  const replaced = replaceIn(model, missing) as Model;
  const problems = [...missing].map(([character, text]) => report(character, text, file));
  return { model: replaced, problems };
}

function replaceIn(value: unknown, missing: Map<string, string>): unknown {
  if (typeof value === 'string') return replaceText(value, missing);
  if (Array.isArray(value)) return value.map((item) => replaceIn(item, missing));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, replaceIn(item, missing)]));
}

function replaceText(text: string, missing: Map<string, string>): string {
  if (/^[\n\x20-\x7e]*$/.test(text)) return text;
  return text.normalize('NFC').replace(/[^\n\x20-\x7e]/gu, (character) => {
    if (character === '\t') return character;
    if (/[\p{Cc}\p{Cf}]/u.test(character)) return '';
    if (isPrintable(character)) return character;
    if (/\s/u.test(character)) return ' ';
    if (/\p{Pd}/u.test(character)) return '-';
    if (!missing.has(character)) missing.set(character, text);
    return standIn;
  });
}

function report(character: string, text: string, file: string): Problem {
  const codePoint = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  const near = text
    .replace(/<[^>]*>/g, ' ')
    .trim()
    .slice(0, 60);
  return {
    code: 'print-character',
    file,
    at: { line: 1, column: 1 },
    severity: 'warning',
    message: `the fonts of the printed book have no character U+${codePoint}; a question mark is printed in '${near}'`,
    fix: 'write it in another way in the record',
  };
}
