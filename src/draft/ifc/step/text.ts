/** A text as people read it: ISO 10303-21 writes what is not plain ASCII as `\X2\00E9\X0\`, `\X4\0001F511\X0\`, `\X\E9` or `\S\i`. What is
 *  no such sign stays as it is written. */
export function decoded(written: string): string {
  if (!written.includes('\\')) return written;
  return written.replace(signs, (sign, two?: string, four?: string, one?: string, upper?: string) => {
    if (two !== undefined) return characters(two, 4);
    if (four !== undefined) return characters(four, 8);
    if (one !== undefined) return String.fromCharCode(parseInt(one, 16));
    if (upper !== undefined) return String.fromCharCode(upper.charCodeAt(0) + 128);
    return sign === '\\\\' ? '\\' : '';
  });
}

const signs =
  /\\X2\\((?:[0-9A-F]{4})*)\\X0\\|\\X4\\((?:[0-9A-F]{8})*)\\X0\\|\\X\\([0-9A-F]{2})|\\S\\([\x20-\x7e])|\\P[A-I]\\|\\\\/gu;

function characters(digits: string, each: 4 | 8): string {
  const codes = digits.match(each === 4 ? /.{4}/gu : /.{8}/gu) ?? [];
  return codes
    .map((code) => parseInt(code, 16))
    .map((code) => (each === 4 ? String.fromCharCode(code) : code <= 0x10ffff ? String.fromCodePoint(code) : '�'))
    .join('');
}
