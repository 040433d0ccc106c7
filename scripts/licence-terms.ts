/** Licences that ask for no more than their notice: whoever gets the program may use, change and pass it on. By their names in SPDX. */
const permissive = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BSL-1.0',
  'CC0-1.0',
  'ISC',
  'MIT',
  'MIT-0',
  'Python-2.0',
  'Unlicense',
  'Zlib',
]);

/** Is a package under such terms? By an SPDX expression of names, AND, OR and brackets (SPDX 2.3, annex D); any other is not. */
export function isPermissive(expression: string): boolean {
  const words = expression.match(/[()]|[^\s()]+/gu) ?? [];
  let at = 0;
  const one = (): boolean => {
    const word = words[at++];
    if (word !== '(') return permissive.has(word ?? '');
    const inside = any();
    return words[at++] === ')' && inside;
  };
  const all = (): boolean => {
    let holds = one();
    while (words[at] === 'AND') {
      at++;
      holds = one() && holds;
    }
    return holds;
  };
  const any = (): boolean => {
    let holds = all();
    while (words[at] === 'OR') {
      at++;
      holds = all() || holds;
    }
    return holds;
  };
  const holds = any();
  return holds && at === words.length;
}
