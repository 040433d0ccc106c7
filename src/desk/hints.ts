import { capital, isMetric, unitName, withSign } from '../base/units/index.js';
import { notations } from '../core/records/index.js';
import type { PlainKey } from '../manual/index.js';

/** What a form says of a field is sentences, all of them made here; what a value looks like is in the units of the house. */
export const hints = {
  roomLine: () => forExample(`${either(`Loft 12' x 10'`, 'Loft 3.6 x 3 m')}: east-west by north-south`),
  walkedName: () => 'Where the name does not tell what the room is used for, both: Loft as study.',
  ceiling: () => forExample(either(`9'-0"`, '2.70 m')),
  walls: () =>
    `Which way it goes and how far, as in: east ${either(`14'-2"`, '4.32 m')}. Short ways do as well: n, ne, e. ` +
    `A name may stand before it: window wall: south ${either(`12'`, '3.66 m')}.`,
  price: (unit: string) => forExample(`${withSign('6.50')} / ${unit}`),
  covers: (meaning: string) => `${meaning} Tick what this contract says.`,
  example: (text: string) => forExample(text),
  length: () => forExample(productLength()),
  lengths: () => forExample(`${either(`6", 1'-0"`, '150 mm, 300 mm')}, with commas between them`),
  days: () => 'Working days, for example 3.',
  considered: () => 'Wherever the category is still open there.',
  note: () => 'It stands behind what the record tells of the room.',
  photo: () => 'Without one, the photograph that is there stays.',
  shows: () => 'In words, for whoever does not see it.',
} as const;

/** What a key means, as its schema says it, and what one looks like where it is typed; undefined where its label says that already. */
export function keyHint(key: PlainKey, isOffered: boolean): string | undefined {
  const { name, meaning, form, kind } = key;
  if (meaning.toLowerCase() === `${name}.`) return undefined;
  if (isOffered || kind === 'day') return meaning;
  if (kind === 'number') return `${meaning} ${capital(form)}.`;
  const example = exampleOf(key);
  if (example === undefined || meaning.includes(example)) return meaning;
  const plain = meaning.replace(/, such as [^,]+\.$/u, '.');
  return plain.includes('such as') ? inUnitsHere(plain) : `${plain} ${forExample(example)}`;
}

/** A schema's words are in dollars and square feet. */
function inUnitsHere(words: string): string {
  return words
    .replaceAll(/\$([\d,.]*\d)/gu, (_, digits: string) => withSign(digits))
    .replaceAll('sq ft', unitName('sq ft'));
}

/** A value of a key as a person types it into a form, in the units of the house. */
function exampleOf({ format, form }: PlainKey): string | undefined {
  if (format === 'dimension') return productLength();
  const notation = format === undefined ? undefined : notations[format];
  // What has a form of its own has an example in quotes; names of the house's own have none.
  return notation?.example() ?? /such as "([^"]+)"$/u.exec(form)?.[1];
}

function productLength(): string {
  return either('3 1/2"', '89 mm');
}

function either(customary: string, metric: string): string {
  return isMetric() ? metric : customary;
}

function forExample(words: string): string {
  return `For example ${words}.`;
}
