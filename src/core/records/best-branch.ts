import type { ErrorObject, ValidateFunction } from 'ajv';
import { nearest, type Path } from '../../base/problem/index.js';
import type { Finding } from './finding.js';
import { groupFix, type Part } from './group-words.js';
import { formFinding } from './named-form.js';
import { validatorOf } from './validators.js';
import { answerOf, quoted } from './value-words.js';

type Check = (validate: ValidateFunction, value: unknown, path: Path) => readonly Finding[];

/** Findings of that form of a value which comes nearest to what was written: of the right type, with the right `form`,
 *  with the fewest findings. Every branch of a `oneOf` in the schemas is a reference to a named form. */
export function bestBranch(error: ErrorObject, path: Path, check: Check): readonly Finding[] {
  const refs = error.schema as readonly { readonly $ref: string }[];
  const misnamed = formFinding(
    refs.map(({ $ref }) => $ref),
    error.data,
    path,
  );
  if (misnamed) return [misnamed];
  const branches = refs.map(({ $ref }) => check(validatorOf($ref), error.data, path));
  // Whoever writes yes or no means the form that is true or false, and no text.
  const isAnswer = answerOf(error.data) !== undefined;
  const meant = branches.find((_, index) => isAnswer && asksTrueOrFalse(refs[index]));
  if (meant) return meant;
  const typed = branches.filter(
    (found) => !found.some((one) => one.code === 'value-type' && one.path.length === path.length),
  );
  if (typed.length === 0) return [wrongType(branches.flat(), refs, error.data, path)];
  const forms = typed.flatMap((found) => found.filter((one) => isForm(one, path)));
  const lacking = typed.every((found) =>
    found.some((one) => one.code === 'key-missing' && one.message.endsWith(`lacks 'form'`)),
  );
  if (lacking) return typed[0]?.filter((one) => one.message.endsWith(`lacks 'form'`)) ?? [];
  const named = typed.filter((found) => !found.some((one) => isForm(one, path)));
  if (named.length === 0) return [wrongForm(forms)];
  return named.reduce((best, found) => (found.length < best.length ? found : best));
}

function asksTrueOrFalse(ref: { readonly $ref: string } | undefined): boolean {
  const schema = ref && validatorOf(ref.$ref).schema;
  return typeof schema === 'object' && schema['type'] === 'boolean';
}

/** Forms are told apart by the constant key `form`. */
function isForm({ path, choices }: Finding, above: Path): boolean {
  return path.length === above.length + 1 && path[above.length] === 'form' && choices !== undefined;
}

function wrongForm(found: readonly Finding[]): Finding {
  const choices = found.flatMap((one) => one.choices ?? []);
  const first = found[0] as Finding;
  const written = /cannot be '(.*)'/u.exec(first.message)?.[1] ?? '';
  const meant = nearest(written, choices);
  return {
    ...first,
    choices,
    fix: meant === undefined ? `write one of ${choices.join(', ')}` : `did you mean '${meant}'?`,
  };
}

function wrongType(found: readonly Finding[], refs: readonly Part[], data: unknown, path: Path): Finding {
  const asked = [...new Set(found.flatMap((one) => (one.path.length === path.length && one.asked ? [one.asked] : [])))];
  const name = String(path.findLast((part) => typeof part === 'string') ?? '');
  const got = typeof data === 'number' ? `the number ${data}` : quoted(data);
  const message = `'${name}': expected ${asked.join(' or ')}, got ${got}`;
  // What a bare number was meant to be says more than the group that could stand there.
  const fix =
    found.find((one) => one.path.length === path.length && one.fix?.startsWith('did you mean'))?.fix ??
    groupFix({ oneOf: refs }, data);
  const onKey = data === null;
  return { path, code: 'value-type', message, asked: asked.join(' or '), onKey, ...(fix !== undefined && { fix }) };
}
