/** `hinges left` as the first words of a line. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A name inside a sentence: `doors D01 and D02`. Marks and names of makers keep their capitals. */
export function lower(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** The plural of a pack's or a unit's name: `cartons`, `boxes`, `trays`, `assemblies`. */
export function plural(name: string): string {
  if (/(s|x|ch|sh)$/.test(name)) return `${name}es`;
  return /[^aeiou]y$/.test(name) ? `${name.slice(0, -1)}ies` : `${name}s`;
}

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** A count at the head of a sentence: `Seven choices`, `One choice`, `23 choices`; alone: `Two`. */
export function countedInWords(count: number, one?: string, many = `${one ?? ''}s`): string {
  const words = capital(small[count] ?? String(count));
  return one === undefined ? words : `${words} ${count === 1 ? one : many}`;
}

/** `1 room`, `3 rooms`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** `material, freight and tax`. */
export function joinWords(words: readonly string[], and = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${and} ${words.at(-1) ?? ''}`;
}

/** `003`: the number of an issue or a change order as its files are named. */
export function recordNumber(number: number): string {
  return String(number).padStart(3, '0');
}

/** The first 48 bits of a digest for people to read out: `4F2A-91C0-77BE`. Two versions of a house that differ share it
 *  with a chance of one in 280 million million; nobody should trust it where someone wants to deceive: use the whole one. */
export function shortDigest(hex: string): string {
  return (
    hex
      .slice(0, 12)
      .toUpperCase()
      .match(/.{1,4}/gu) ?? []
  ).join('-');
}

/** Order of texts by code unit: the same on every machine. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** What stands where a record does not tell something yet. */
export const notToldYet = 'not told yet';
/** What installing something costs, while nobody said it. */
export const notPricedYet = 'not priced yet';

/** A name as the file of its record is called: small letters, digits and single hyphens. Empty where it has none of them. */
export function slugFor(name: string): string {
  return name
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/gu, '-')
    .replace(/^-|-$/gu, '');
}
