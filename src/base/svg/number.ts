/** A coordinate as text: at most `digits` decimals, no exponent, no trailing zeros, no negative zero. */
export function numberText(value: number, digits = 2): string {
  const fixed = value.toFixed(digits);
  const short = digits > 0 ? fixed.replace(/\.?0+$/, '') : fixed;
  return short === '-0' ? '0' : short;
}
