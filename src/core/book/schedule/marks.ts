/** `D2` before `D10`: letters first, then the number. */
export function compareMarks(a: string, b: string): number {
  const [, lettersA = a, numberA = ''] = /^(\D*)(\d*)/.exec(a) ?? [];
  const [, lettersB = b, numberB = ''] = /^(\D*)(\d*)/.exec(b) ?? [];
  if (lettersA !== lettersB) return lettersA < lettersB ? -1 : 1;
  const difference = Number(numberA) - Number(numberB);
  if (difference !== 0) return difference;
  return a === b ? 0 : a < b ? -1 : 1;
}
