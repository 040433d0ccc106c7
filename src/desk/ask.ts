import type { View } from '../site/index.js';

export interface Choice {
  readonly value: string;
  readonly label: string;
}

/** One thing that a form asks for. */
export interface Field {
  readonly name: string;
  readonly label: string;
  /** Where it stands on the command line: a flag, or a word in the order of the fields. */
  readonly as: `--${string}` | 'word';
  /** `text`: paragraphs; `lines`: one value on each; `several`: ticked; `picked`: what the form is about, and nobody is asked; `file`: its path is in the command. */
  readonly kind: 'line' | 'lines' | 'text' | 'day' | 'one-of' | 'several' | 'picked' | 'file';
  readonly hint?: string;
  /** What a list offers. */
  readonly choices?: readonly Choice[];
  readonly value?: string;
  /** Of a day: none after it. */
  readonly latest?: string;
  /** Of lines: how many are seen. */
  readonly rows?: number;
  /** Of a file: kinds that are taken. */
  readonly accept?: string;
  /** It may be left out. */
  readonly isOptional?: boolean;
  /** Nothing is a value as well: it takes away what is there. */
  readonly takesNothing?: boolean;
  /** What stands before the value in its flag: `maker=`. */
  readonly key?: string;
  /** Rarely filled: shown when somebody asks for more. */
  readonly isMore?: boolean;
}

/** A form that runs one command: what a person would have typed. */
export interface Ask {
  readonly id: string;
  readonly title: string;
  readonly says?: string;
  readonly button: string;
  readonly command: readonly string[];
  /** What stands now where the form writes: filled in later, it must still stand. */
  readonly was?: string;
  /** The id of the selection that it makes the choice of. */
  readonly chooses?: string;
  /** Where what it did is seen, once it is done. */
  readonly shown?: Shown;
  readonly fields: readonly Field[];
}

/** A page of the book or the desk, by its path, and what leads there. */
export interface Shown {
  readonly path: string;
  readonly words: string;
}

/** The words of the command line that a filled form comes to. What is typed is never taken for a flag. */
export function wordsOf(
  { command, fields }: Pick<Ask, 'command' | 'fields'>,
  given: URLSearchParams,
): readonly string[] {
  const valuesOf = ({ name, kind, takesNothing }: Field): readonly string[] => {
    const text = (given.get(name) ?? '').trim();
    if (kind === 'several') return given.getAll(name).length === 0 ? [] : [given.getAll(name).join(',')];
    if (kind === 'text') return text === '' && takesNothing !== true ? [] : [text.replaceAll('\r\n', '\n')];
    if (kind === 'lines')
      return text
        .split(/\r?\n/u)
        .map((line) => line.trim())
        .filter((line) => line !== '');
    return text === '' ? [] : [text.replaceAll(/\s*[\r\n]+\s*/gu, ' ')];
  };
  const flags = fields.flatMap((field) =>
    field.as === 'word' ? [] : valuesOf(field).map((text) => `${field.as}=${field.key ?? ''}${text}`),
  );
  const own = fields.flatMap((field) => (field.as === 'word' ? valuesOf(field) : []));
  return [...command, ...flags, ...(own.length > 0 ? ['--', ...own] : [])];
}

/** The people of the house, by name: several may have one role. */
export function peopleOf(view: View | undefined): readonly Choice[] {
  return (view?.book.house.people ?? []).map(({ role, name }) => ({ value: name, label: `${name} (${role})` }));
}
