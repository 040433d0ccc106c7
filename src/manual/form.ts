import { inLocale, joinWords, usualLocale, type Locale } from '../base/units/index.js';
import { notations, patternWords, typeWords } from '../core/records/index.js';
import { waysOf, type Schema } from './schema.js';

/** How a value is written, in words, with what one looks like: "a length, such as 14'-6\" or 4.42 m". */
export function formOf(schema: Schema): string {
  const forms = [...new Set(waysOf(schema).map(wayWords))];
  return forms.join('; or ');
}

function wayWords(schema: Schema): string {
  const { type, format, pattern, items, additionalProperties, minimum, maximum } = schema;
  if (schema.const !== undefined) return String(schema.const);
  if (schema.enum) return joinWords(schema.enum.map(String), 'or');
  const notation = format === undefined ? undefined : notations[format];
  if (notation) return `${notation.what}, such as ${inBothUnits(() => notation.example())}`;
  const named = pattern === undefined ? undefined : patternWords[pattern];
  if (named) return patternForm(named);
  if (type === 'array') return items ? `a list; each is ${formOf(items)}` : 'a list';
  if (typeof additionalProperties === 'object') return `a group of names; each is ${formOf(additionalProperties)}`;
  if (schema.properties) return groupWords(Object.keys(schema.properties));
  const least = minimum === undefined ? '' : ` of ${minimum} or more`;
  return `${typeWords(type)}${maximum === undefined ? least : ` from ${minimum ?? 0} to ${maximum}`}`;
}

/** Where the words of a pattern end in an example, the form has it too. */
function patternForm({ what, fix }: { readonly what: string; readonly fix: string }): string {
  const example = /such as (.+)$/u.exec(fix)?.[1];
  return example === undefined ? what : `${what}, such as ${example}`;
}

/** A group by its keys, where they are few enough to be read in a line. */
function groupWords(names: readonly string[]): string {
  return names.length > 4 ? 'a group of keys' : `a group of ${joinWords(names)}`;
}

/** An example in feet and in metres, where the two differ. */
function inBothUnits(example: () => string): string {
  const locales: readonly Locale[] = [usualLocale, { ...usualLocale, units: 'metric' }];
  return [...new Set(locales.map((locale) => inLocale(locale, example)))].join(' or ');
}
