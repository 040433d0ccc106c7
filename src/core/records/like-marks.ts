/** Marks in the Markdown of a record's body. `<!-- trades -->` … `<!-- /trades -->` is for the trades that work there;
 *  `<!-- builder -->` … `<!-- /builder -->` is in no handout. The book shows both, without the marks. */
export const mark = /<!--\s*(\/?)(builder|trades)\s*-->/giu;

/** What somebody took for a mark, or for a comment. */
export interface LikeMark {
  readonly index: number;
  readonly said: string;
}

/** Without any of these signs a text has nothing like a mark. */
const hint =
  /[<>\uff1c\uff1e\ufe64\ufe65\u2039\u203a\u3008\u3009\u27e8\u27e9]|&(?:[lg]t|#)|[!\uff01][^\n]{0,20}(?:builder|trade)/iu;

const word = '(?:builder|bulider|bilder|buidler|trade)s?';

/** Plain signs are read: comments of HTML, whole or broken, and marks that lost a sign. */
const like = new RegExp(
  [
    '<\\s*!\\s*-[^]*?(?:-\\s*>|$)',
    `<[\\s!?/\\\\-]*${word}\\b[^<>\\n]*>?`,
    `[[({]?!-{2,}[\\s/]*${word}\\b[^<>\\n]*>?`,
    `\\/?\\s*\\b${word}\\s*-{2,}\\s*>`,
  ].join('|'),
  'giu',
);

/** Everything in a text that is no mark and looks like one, or like a comment: misspelt, in other dashes or brackets, in entities, in wide
 *  letters, or with what nobody sees between its signs. */
export function likeMarks(text: string): readonly LikeMark[] {
  if (!hint.test(text)) return [];
  const plain = plainly(text.replace(mark, (whole) => ' '.repeat(whole.length)));
  return [...plain.text.matchAll(like)].map(({ 0: found, index }) => {
    const from = plain.placeOf(index);
    return { index: from, said: text.slice(from, plain.placeOf(index + found.length)).trimEnd() };
  });
}

const named: Readonly<Record<string, string>> = {
  lt: '<',
  gt: '>',
  excl: '!',
  sol: '/',
  dash: '-',
  hyphen: '-',
  ndash: '-',
  mdash: '-',
  minus: '-',
  shy: '',
  nbsp: ' ',
};

/** A text in plain signs, and where in the text the sign at an index stands. */
export function plainly(text: string): { readonly text: string; readonly placeOf: (index: number) => number } {
  if (!/[^\0-\x7f]|&/u.test(text)) return { text, placeOf: (index) => index };
  const from: number[] = [];
  let plain = '';
  for (const { 0: sign, index } of text.matchAll(/&#?[a-z0-9]{1,8};?|[^]/giu)) {
    const signs = sign < '\x80' && sign.length === 1 ? sign : plainSign(sign);
    plain += signs;
    while (from.length < plain.length) from.push(index);
  }
  return { text: plain, placeOf: (index) => from[index] ?? text.length };
}

function plainSign(sign: string): string {
  if (sign.length > 1 && sign.startsWith('&')) return entity(sign);
  const plain = sign.normalize('NFKC');
  if (/[\p{Pd}\u2212\u2043\u2500\u2501]/u.test(plain)) return '-';
  if (/[\u2039\u3008\u27e8\u2329\u02c2]/u.test(plain)) return '<';
  if (/[\u203a\u3009\u27e9\u232a\u02c3]/u.test(plain)) return '>';
  if (plain === '\u01c3') return '!';
  return /^[\p{Cf}\p{M}]+$/u.test(plain) ? '' : plain;
}

function entity(written: string): string {
  const [, hex, decimal, name = ''] = /^&(?:#x([0-9a-f]+)|#([0-9]+)|([a-z]+));?$/iu.exec(written) ?? [];
  const number = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
  if (Number.isInteger(number) && number > 0 && number <= 0x10ffff) return plainSign(String.fromCodePoint(number));
  return named[name.toLowerCase()] ?? written;
}
