import { joinWords, unread, type Reading } from '../../base/units/index.js';
import { readName } from '../../draft/index.js';
import type { Asker, Choice, Question } from '../asker.js';
import { UsageError } from '../usage-error.js';

/** One thing that a record is made of: given with a flag or an argument, else asked for, else what usually holds. */
export interface Wanted extends Question {
  /** As it is told to who gave nothing: `--price '$6.50 / sq ft'`, or for an argument `its name`. */
  readonly flag: string;
  readonly given: string | undefined;
  /** How the flag is read, where that is stricter than the answer to a question. */
  readonly readGiven?: (text: string) => Reading<unknown>;
  /** What it may be, where it is one of a few. */
  readonly choices?: readonly Choice[];
}

/** The name of a new record, which no other of its kind has, be it as its name or as its file's. */
export function nameWanted(
  what: string,
  given: string | undefined,
  others: readonly { readonly slug: string; readonly name: string }[],
): Wanted {
  return {
    flag: 'its name',
    given,
    asks: 'What is it called?',
    read: (text) => {
      const name = readName(text);
      return name.ok && isNamed(text.trim(), others)
        ? unread(`there is a ${what} '${name.value}' already`, 'give it another name')
        : name;
    },
  };
}

/** Is one of them called so, or its file? */
export function isNamed(name: string, all: readonly { readonly slug: string; readonly name: string }[]): boolean {
  return all.some((one) => one.slug === name || one.name.toLowerCase() === name.toLowerCase());
}

/** Takes all of them. Rejects with a UsageError that tells at once what cannot be taken and what is missing. */
export async function take<Key extends string>(
  wanted: Readonly<Record<Key, Wanted>>,
  asker: Asker | undefined,
): Promise<Readonly<Record<Key, string>>> {
  const entries = Object.entries(wanted) as [Key, Wanted][];
  const wrong = entries.flatMap(([, one]) =>
    one.given === undefined ? [] : refusal(one, (one.readGiven ?? one.read)(one.given)),
  );
  const missing = entries.filter(([, { given, usual }]) => !asker && given === undefined && usual === undefined);
  const lines = [
    ...wrong,
    ...(missing.length === 0 ? [] : [`Missing: ${joinWords(missing.map(([, { flag }]) => flag))}.`]),
  ];
  if (lines.length > 0) throw new UsageError(`${lines.join('\n')}\nNothing was written.`);
  const taken: Partial<Record<Key, string>> = {};
  for (const [key, one] of entries) taken[key] = one.given ?? (asker ? await ask(one, asker) : (one.usual ?? ''));
  return taken as Record<Key, string>;
}

function refusal({ flag }: Wanted, reading: Reading<unknown>): readonly string[] {
  if (reading.ok) return [];
  const name = flag.startsWith('--') ? `${flag.split(' ')[0] ?? ''}  ` : '';
  return [`${name}${reading.why}${reading.fix === undefined ? '' : `: ${reading.fix}`}`];
}

function ask(wanted: Wanted, asker: Asker): Promise<string> {
  const { asks, choices, usual } = wanted;
  return choices ? asker.choice(asks, choices, usual) : asker.text(wanted);
}

/** The value of an answer that was read before. */
export function valueOf<T>(reading: Reading<T>): T {
  if (!reading.ok) throw new UsageError(`${reading.why}. Nothing was written.`);
  return reading.value;
}
