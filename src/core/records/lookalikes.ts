import type { Path } from '../../base/problem/index.js';

/** Spaces that are none to YAML, and signs without any width: what a document or a web page brings along when it is copied from. */
const oddSpace = /[\u00a0\u1680\u2000-\u200d\u202f\u205f\u2060\u3000\ufeff]/u;

/** The first of them in a text: `U+00A0, a no-break space`. */
export function oddSpaceIn(text: string): { readonly index: number; readonly name: string } | undefined {
  const [sign] = oddSpace.exec(text) ?? [];
  if (sign === undefined) return undefined;
  const isWide = !/[\u200b-\u200d\u2060\ufeff]/u.test(sign);
  const what = /[\u00a0\u202f]/u.test(sign)
    ? 'a no-break space'
    : isWide
      ? 'a typographic space'
      : 'a sign without width';
  return { index: text.indexOf(sign), name: `${codePoint(sign)}, ${what}` };
}

/** A text without them, as it was meant. */
export function withoutOddSpaces(text: string): string {
  return text
    .replace(/[\u200b-\u200d\u2060\ufeff]/gu, '')
    .replace(new RegExp(oddSpace, 'gu'), ' ')
    .trim();
}

/** What stands between typographic quotes, where a text is nothing else: of `“06 20 00”`, `06 20 00`. */
export function insideTypographic(text: string): string | undefined {
  const [, double, single] = /^[“”„‟]([^“”„‟]+)[“”„‟]$|^[‘’‚‛]([^‘’‚‛]+)[‘’‚‛]$/u.exec(text.trim()) ?? [];
  return double ?? single;
}

/** A typographic quote where a value begins: after a key, in a list, between brackets. */
export const typographicStart = /(?<=(?:[:[{,]|^ *-) *)[“”„‟‘’‚‛]/u;

/** The value at a path of a record; undefined where there is none. */
export function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, part) =>
      value !== null && typeof value === 'object'
        ? (value as Readonly<Record<string | number, unknown>>)[part]
        : undefined,
    data,
  );
}

/** What nothing is seen of: spaces of every kind, signs without width, controls, and the blanks of scripts that have a letter for one. */
const unseen = /[\s\p{Cc}\p{Cf}\p{Z}\p{Default_Ignorable_Code_Point}\u2800]/gu;

/** Is nothing of a text to be seen on paper? */
export function nothingSeen(text: string): boolean {
  return text.replace(unseen, '') === '';
}

/** Controls other than tabs and ends of lines, halves of a sign, what is none by definition, and signs that turn around what follows them. */
const unshown = /[^\P{Cc}\t\n\r]|[\p{Cs}\ufffe\uffff\u202d\u202e]/u;

/** The first sign of a text that cannot be shown or printed: `U+0007`. */
export function unshownSignIn(text: string): string | undefined {
  const [sign] = unshown.exec(text) ?? [];
  return sign === undefined ? undefined : codePoint(sign);
}

/** `U+00A0`. */
function codePoint(sign: string): string {
  return `U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}

/** Every single value of a record with its path. */
export function leavesIn(value: unknown, path: Path = []): readonly { readonly value: unknown; readonly path: Path }[] {
  if (value === null || typeof value !== 'object') return [{ value, path }];
  const parts: readonly (readonly [string | number, unknown])[] = Array.isArray(value)
    ? value.map((part: unknown, index) => [index, part] as const)
    : Object.entries(value);
  return parts.flatMap(([key, part]) => leavesIn(part, [...path, key]));
}
