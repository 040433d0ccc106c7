const fractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

/** Text with typographic signs made plain: primes and curly quotes become ' and ", drawn fractions a/b, the true minus
 *  a hyphen, any white space one space. */
export function plainText(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/gu, (sign) => ` ${fractions[sign] ?? sign}`)
    .replace(/[′‘’‛]/gu, "'")
    .replace(/[″“”‟]/gu, '"')
    .replace(/''/gu, '"')
    .replace(/\u2044/gu, '/')
    .replace(/[−‐‑‒–—]/gu, '-')
    .replace(/\s+/gu, ' ')
    .trim();
}

/** Digits in groups of three: `1486000` is `1,486,000`. Takes the digits of a whole number without a sign. */
export function groupDigits(digits: string): string {
  return digits.replace(/\B(?=(\d{3})+$)/gu, ',');
}
