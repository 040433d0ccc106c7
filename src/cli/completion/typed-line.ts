import type { Argument, Command, Option } from 'commander';

/** A word that may stand next, and what it is. */
export interface Candidate {
  readonly word: string;
  readonly about: string;
}

/** What may stand in the last place of a command line. */
export interface Place {
  /** What is typed of it so far. */
  readonly start: string;
  /** Words that the program knows by itself, however they start. */
  readonly candidates: readonly Candidate[];
  /** What the command calls the value that is wanted there, `trade`, where it takes one. */
  readonly value?: string;
  /** The house folder that the line names. */
  readonly house?: string;
}

/** Says what may stand for the last of the words typed so far; `program` has the command loaded that the first of them names. */
export function placeOf(program: Command, typed: readonly string[]): Place {
  const words = parted(typed);
  const start = words.at(-1) ?? '';
  let command = program;
  let operands = 0;
  let house: string | undefined;
  let awaiting: Option | undefined;
  for (const word of words.slice(0, -1)) {
    if (awaiting) {
      if (awaiting.long === '--house') house = word;
      awaiting = undefined;
    } else if (word.startsWith('-')) {
      const option = optionNamed(command, word);
      awaiting = option && takesValue(option) ? option : undefined;
    } else {
      const within = operands === 0 ? command.commands.find((one) => one.name() === word) : undefined;
      if (within) command = within;
      else operands += 1;
    }
  }
  const at = { start, ...(house !== undefined && { house }) };
  if (awaiting) return { ...at, ...valueOf(awaiting) };
  if (start.startsWith('-')) return { ...at, candidates: flagsOf(command) };
  const argument = command.registeredArguments[operands] ?? lastIfMany(command.registeredArguments);
  const place = argument ? valueOf(argument) : { candidates: [] };
  const commands = operands === 0 ? command.commands : [];
  const names = commands.map((one) => ({ word: one.name(), about: one.description() }));
  return { ...at, ...place, candidates: [...names, ...place.candidates] };
}

/** Words with each --flag=value as two, however the shell hands it on: as one word, or as three. */
function parted(typed: readonly string[]): readonly string[] {
  return typed.flatMap((word, index) => {
    if (word === '=' && typed[index - 1]?.startsWith('--') === true) return index === typed.length - 1 ? [''] : [];
    const [, flag, value] = flagWithValue.exec(word) ?? [];
    return flag === undefined || value === undefined ? [word] : [flag, value];
  });
}

/** `--flag=` and what stands behind it. */
export const flagWithValue = /^(--[a-z][a-z-]*)=(.*)$/su;

function optionNamed(command: Command, flag: string): Option | undefined {
  return command.options.find(({ long, short }) => flag === long || flag === short);
}

function takesValue({ required, optional }: Option): boolean {
  return required || optional;
}

function lastIfMany(declared: readonly Argument[]): Argument | undefined {
  const last = declared.at(-1);
  return last?.variadic === true ? last : undefined;
}

function flagsOf(command: Command): readonly Candidate[] {
  const own = command.options.filter(({ hidden }) => !hidden);
  const flags = own.map(({ long, description }) => ({ word: long ?? '', about: description }));
  return [...flags, { word: '--help', about: 'display help for command' }];
}

/** Of an option or an argument: its choices, and what it calls itself: `trade` of `--trade <trade>`. */
function valueOf(one: Option | Argument): Pick<Place, 'candidates' | 'value'> {
  const choices = (one.argChoices ?? []).map((word) => ({ word, about: '' }));
  const called = 'flags' in one ? /[<[](.+?)(?:\.\.\.)?[>\]]/u.exec(one.flags)?.[1] : one.name();
  return { candidates: choices, ...(called !== undefined && { value: called }) };
}
