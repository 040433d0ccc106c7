/** Does an amount name a currency of its own: `€12`, `CAD 12`, `CA$12`, `12 EUR`, `£7.40 / sq ft`? Amounts of a house are all
 *  in its one currency, written with a bare `$`. */
export function namesCurrency(text: string): boolean {
  const amount = text.split(/\/|\bper\b/u)[0] ?? '';
  if (!/\d/u.test(amount)) return false;
  return (
    /[^$\P{Sc}]/u.test(amount) ||
    /^\s*(?:[A-Z]{3}(?=[\s\d])|[A-Z]{1,3}\$)|\d\s*(?:[A-Z]{3}|euros?|pounds?)\s*$/u.test(amount)
  );
}

export const oneCurrency =
  'a house has one currency, and its amounts are written with $: convert it, and write such as $12,450 or $7.40';
