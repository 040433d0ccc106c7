import { nearest, type Path } from '../../base/problem/index.js';
import type { Finding } from './finding.js';
import { validatorOf } from './validators.js';
import { quoted } from './value-words.js';

/** One way of writing a value: a word such as `round`, or a group with one key such as `{ arch: … }`. */
interface NamedForm {
  readonly name: string;
  readonly isWord: boolean;
}

/** The forms of a `oneOf` that are told apart by their names alone; undefined where one of them is told otherwise. */
function namedForms(refs: readonly string[]): readonly NamedForm[] | undefined {
  const forms = refs.map(namesOf);
  return forms.some((names) => names.length === 0) ? undefined : forms.flat();
}

function namesOf(ref: string): readonly NamedForm[] {
  const { schema } = validatorOf(ref);
  if (typeof schema !== 'object') return [];
  const { enum: words, properties = {} } = schema as { enum?: readonly string[]; properties?: object };
  if (words) return words.map((name) => ({ name, isWord: true }));
  const keys = Object.keys(properties);
  return keys.length === 1 ? keys.map((name) => ({ name, isWord: false })) : [];
}

/** What is wrong with the name of a value's form, where its forms have names: none of them, or two of them. Undefined where the
 *  name is right, and where forms are told apart otherwise. */
export function formFinding(refs: readonly string[], data: unknown, path: Path): Finding | undefined {
  const forms = namedForms(refs);
  if (!forms) return undefined;
  const name = String(path.findLast((part) => typeof part === 'string') ?? '');
  const said = (written: string, fix: string, at: Path = path): Finding => ({
    path: at,
    code: 'value-unknown',
    message: `'${name}' cannot be ${written}`,
    fix,
    onKey: at !== path,
  });
  if (typeof data === 'string') {
    const isRight = forms.some((form) => form.isWord && form.name === data);
    return isRight ? undefined : said(quoted(data), fixFor(data, forms));
  }
  if (data === null || typeof data !== 'object' || Array.isArray(data)) return said(quoted(data), allOf(forms));
  const keys = Object.keys(data);
  const known = keys.filter((key) => forms.some((form) => !form.isWord && form.name === key));
  const [first, second] = known;
  if (first !== undefined && second !== undefined)
    return said(`both ${first} and ${second}`, 'write one of the two', [...path, second]);
  if (first !== undefined) return undefined;
  const [written] = keys;
  if (written === undefined) return said('a group without a key', allOf(forms));
  return said(`'${written}'`, fixFor(written, forms), [...path, written]);
}

function fixFor(written: string, forms: readonly NamedForm[]): string {
  const names = forms.map(({ name }) => name);
  const meant = names.includes(written) ? written : nearest(written, names);
  const form = forms.find(({ name }) => name === meant);
  return form ? `did you mean ${formWords(form)}? ${allWords(forms)}` : allOf(forms);
}

const formWords = ({ name, isWord }: NamedForm): string => (isWord ? name : `{ ${name}: … }`);

const listOf = (forms: readonly NamedForm[]): string =>
  forms
    .map(formWords)
    .join(', ')
    .replace(/, ([^,]*)$/u, ' or $1');

const allOf = (forms: readonly NamedForm[]): string => `write ${listOf(forms)}`;

const allWords = (forms: readonly NamedForm[]): string => `Forms are ${listOf(forms)}`;
