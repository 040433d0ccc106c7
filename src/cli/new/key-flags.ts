import type { Command } from 'commander';
import { plainKeys, readPlain, type PlainKey } from '../../manual/index.js';
import { UsageError } from '../usage-error.js';

const asked: Readonly<Record<PlainKey['kind'], string>> = {
  text: 'words',
  day: 'day',
  number: 'number',
  'yes-no': 'yes|no',
  list: 'words',
};

/** Keys of a group that a command takes by a flag of their name: all plain ones but those that it takes otherwise. */
function keysBut(group: string, except: readonly string[]): readonly PlainKey[] {
  return plainKeys(group).filter(({ name }) => !except.includes(name));
}

/** A command with a flag for each plain key of a group, in the schema's own words. */
export function withKeyFlags(command: Command, group: string, except: readonly string[]): Command {
  for (const { name, meaning, kind, choices } of keysBut(group, except)) {
    const few = choices ? `; ${choices.join(', ')}` : '';
    const parted = kind === 'list' ? ' With commas.' : '';
    command.option(`--${name} <${asked[kind]}>`, `${meaning.replace(/\.$/u, '')}${few}.${parted}`);
  }
  return command;
}

/** What such flags say, by key, as it stands in a record. A UsageError tells of each that cannot be read. */
export function keysGiven(
  group: string,
  except: readonly string[],
  flags: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> {
  const given = keysBut(group, except).flatMap((key) => {
    const text = flags[flagOf(key)];
    return typeof text === 'string' ? [{ key, reading: readPlain(key, text) }] : [];
  });
  const wrong = given.flatMap(({ key, reading }) =>
    reading.ok ? [] : [`--${key.name}  ${reading.why}${reading.fix === undefined ? '' : `: ${reading.fix}`}`],
  );
  if (wrong.length > 0) throw new UsageError(`${wrong.join('\n')}\nNothing was written.`);
  return Object.fromEntries(given.flatMap(({ key, reading }) => (reading.ok ? [[key.name, reading.value]] : [])));
}

/** `needed-at` as commander has it: `neededAt`. */
function flagOf({ name }: PlainKey): string {
  return name.replaceAll(/-([a-z])/gu, (_, letter: string) => letter.toUpperCase());
}
