import { capital } from '../base/units/index.js';
import { plainKey, plainKeys, type PlainKey } from '../manual/index.js';
import type { Choice, Field } from './ask.js';
import { keyHint } from './hints.js';

const nothing: Choice = { value: '', label: '' };

/** What a form asks for a key of a record, in the words of its schema; `own` is what only the form knows, such as the names that a house has. */
export function keyField(key: PlainKey, own: Partial<Field> = {}): Field {
  const { name, isNeeded, kind } = key;
  const choices = own.choices ?? choicesOf(key);
  const isOptional = own.isOptional ?? !isNeeded;
  const hint = keyHint(key, choices !== undefined);
  const isSeveral = kind === 'list' && choices !== undefined;
  return {
    name,
    label: capital(name.replaceAll('-', ' ')),
    as: `--${name}`,
    kind: isSeveral ? 'several' : choices ? 'one-of' : kind === 'day' ? 'day' : 'line',
    ...(hint !== undefined && { hint }),
    ...own,
    isOptional,
    ...(choices && { choices: isOptional && !isSeveral ? [nothing, ...choices] : choices }),
  };
}

/** Fields for the plain keys of a group, but for some; `own` by key. */
export function keyFields(
  group: string,
  { except, own = {} }: { readonly except: readonly string[]; readonly own?: Readonly<Record<string, Partial<Field>>> },
): readonly Field[] {
  return plainKeys(group)
    .filter(({ name }) => !except.includes(name))
    .map((key) => keyField(key, own[key.name]));
}

/** The name of a new record, as its schema has it. */
export function nameField(group: string, as: Field['as']): Field {
  return keyField(plainKey(group, 'name'), { as });
}

function choicesOf({ choices, kind }: PlainKey): readonly Choice[] | undefined {
  const values = kind === 'yes-no' ? ['yes', 'no'] : choices;
  return values?.map((value) => ({ value, label: value }));
}
