import type { ErrorObject, ValidateFunction } from 'ajv';
import {
  nearest,
  problemAt,
  type Origin,
  type Path,
  type Problem,
  type ProblemCode,
} from '../../base/problem/index.js';
import { bestBranch } from './best-branch.js';
import type { Finding } from './finding.js';
import { isUsual, locale, remember, type Shelf } from '../../base/units/index.js';
import { oncePerGroup, oncePerList, placeName } from './once-a-cause.js';
import { otherComma } from './other-comma.js';
import { groupFix, type Part } from './group-words.js';
import { notations, patternWords, slugPattern, type Notation } from './formats.js';
import { answerOf, quoted, typeWords } from './value-words.js';

/** Checks a value with a validator; findings have the path of what is wrong, below `path`. */
export function findings(validate: ValidateFunction, value: unknown, path: Path = []): readonly Finding[] {
  if (validate(value)) return [];
  const errors = [...(validate.errors ?? [])];
  // Of a value with several forms only the form that comes nearest is spoken of.
  const forms = errors.filter((error) => error.keyword === 'oneOf');
  // A form within a form at the same place is reported before it.
  const outer = forms.filter(
    (form, index) =>
      !forms.some((other) => isBelow(form.instancePath, other.instancePath, true)) &&
      !forms.slice(index + 1).some((other) => other.instancePath === form.instancePath),
  );
  const own = errors.filter((error) => !outer.some((form) => isBelow(error.instancePath, form.instancePath, false)));
  const found = [
    ...own.flatMap((error) => findingOf(error, [...path, ...pointer(error.instancePath)]) ?? []),
    ...outer.flatMap((form) => bestBranch(form, [...path, ...pointer(form.instancePath)], findings)),
  ];
  return firstOfPlace(found);
}

/** What schemas have against values, the known ones and those of parts that have a schema of their own. */
export type Find = (
  schema: string,
  validator: () => ValidateFunction,
  value: unknown,
  path?: Path,
) => readonly Finding[];

/** `schema` tells the validator from all others. That there is nothing against a value is kept: a house's records are mostly as they were, and compiling
 *  the schemas takes longer than reading them. */
export function finder(shelf?: Shelf<readonly Finding[]>): Find {
  return (schema, validator, value, path) =>
    remember(
      shelf,
      JSON.stringify([schema, locale(), value]),
      () => findings(validator(), value, path),
      (found) => found.length === 0,
    );
}

/** Findings as problems. A key that is missing because it is misspelt is one problem, not two. */
export function findingProblems(found: readonly Finding[], origin: Origin): readonly Problem[] {
  const misspelt = new Set(
    found.flatMap(({ path, meant }) => (meant === undefined ? [] : [placeName([...path.slice(0, -1), meant])])),
  );
  return oncePerGroup(oncePerList(found))
    .filter(({ path, missing }) => missing === undefined || !misspelt.has(placeName([...path, missing])))
    .map(({ path, code, message, fix, cause, onKey }) =>
      problemAt(origin, path, code, message, {
        onKey,
        ...(fix !== undefined && { fix }),
        ...(cause !== undefined && { cause }),
      }),
    );
}

function isBelow(path: string, above: string, strictly: boolean): boolean {
  return path.startsWith(`${above}/`) || (!strictly && path === above);
}

function pointer(path: string): (string | number)[] {
  return path
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'))
    .map((part) => (/^\d+$/u.test(part) ? Number(part) : part));
}

/** An empty text breaks both its least length and its form: one cause once. */
function firstOfPlace(found: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  return found.filter(({ path, code }) => {
    if (code === 'key-missing') return true;
    const place = JSON.stringify(path);
    return seen.has(place) ? false : seen.add(place);
  });
}

function findingOf(error: ErrorObject, path: Path): Finding | undefined {
  // What is wrong with a name comes once more as `propertyNames`, with its place.
  if (error.propertyName !== undefined) return undefined;
  const name =
    path.length === 0 ? 'the record' : `'${String(path.findLast((part) => typeof part === 'string') ?? '')}'`;
  const data: unknown = error.data;
  const on = (code: ProblemCode, message: string, fix?: string): Finding => ({
    path,
    code,
    message,
    ...(fix !== undefined && { fix }),
    onKey: false,
  });
  const params = error.params as Readonly<Record<string, unknown>>;
  switch (error.keyword) {
    case 'additionalProperties':
      return unknownKey(String(params['additionalProperty']), error, path);
    case 'required':
    case 'dependentRequired':
      return missingKey(String(params['missingProperty']), error, path);
    case 'type':
      return wrongType(error, path, name);
    case 'format': {
      const notation = notations[String(params['format'])];
      return notation && wrongText(notation, String(data), path);
    }
    case 'enum':
    case 'const': {
      const allowed = error.keyword === 'const' ? [params['allowedValue']] : (params['allowedValues'] as unknown[]);
      const choices = allowed.map(String);
      return { ...on('value-unknown', `${name} cannot be ${quoted(data)}`, choiceFix(data, choices)), choices };
    }
    case 'pattern': {
      const form = String(params['pattern']);
      const words = patternWords[form];
      const message = `${quoted(data)} is not ${words?.what ?? 'in the form asked for'}`;
      return { ...on('text-form', message, words?.fix), form };
    }
    case 'minLength':
      return on('text-empty', `${name} is empty`, 'write it, or leave the key out where it may be absent');
    case 'minItems':
      return on(
        'list-short',
        `${name} needs at least ${String(params['limit'])} ${params['limit'] === 1 ? 'entry' : 'entries'}`,
        params['limit'] === 1 ? 'write one, or leave the key out where it may be absent' : 'add what is missing',
      );
    case 'maxItems':
      return on(
        'list-long',
        `${name} has more than ${String(params['limit'])} entries`,
        `keep ${String(params['limit'])} at most`,
      );
    case 'minProperties':
      return on('list-short', `${name} is empty`, 'write at least one, or leave the key out where it may be absent');
    case 'uniqueItems':
      return {
        ...on('entry-twice', `${name} has the same entry twice`, 'keep one of the two'),
        path: [...path, Math.max(Number(params['i']), Number(params['j']))],
      };
    case 'minimum':
      return on(
        'number-small',
        `${name} is ${quoted(data)}; it must be ${String(params['limit'])} or more`,
        `write ${String(params['limit'])} or more`,
      );
    case 'exclusiveMinimum':
      return on(
        'number-small',
        `${name} is ${quoted(data)}; it must be more than ${String(params['limit'])}`,
        `write more than ${String(params['limit'])}`,
      );
    case 'propertyNames': {
      const key = String(params['propertyName']);
      return {
        path: [...path, key],
        code: 'text-form',
        message: `the name '${key}' is not a slug`,
        fix: 'use small letters, digits and single hyphens',
        onKey: true,
      };
    }
    default:
      throw new Error(`a schema uses '${error.keyword}', which has no words for people`);
  }
}

function unknownKey(key: string, error: ErrorObject, path: Path): Finding {
  const known = Object.keys((error.parentSchema?.['properties'] ?? {}) as object);
  const used = Object.keys((error.data ?? {}) as object);
  const meant =
    nearest(
      key,
      known.filter((name) => !used.includes(name)),
    ) ?? nearest(key, known);
  const hasValue = (error.data as Readonly<Record<string, unknown>>)[key] !== null;
  const fix = meant === undefined ? unknownKeyFix(key, known, hasValue) : `did you mean '${meant}'?`;
  const message = `there is no key '${key}' here`;
  return {
    path: [...path, key],
    code: 'key-unknown',
    message,
    fix,
    onKey: true,
    ...(meant !== undefined && { meant }),
  };
}

function unknownKeyFix(key: string, known: readonly string[], hasValue: boolean): string {
  // `{ general: Boards, oiled }` is two keys to YAML, and the second has no value.
  if (/\s/u.test(key) || !hasValue)
    return 'a text that holds a comma goes inside quotes where it stands between { and }';
  return known.length > 0 ? `keys here: ${known.join(', ')}` : 'leave it out';
}

/** What a schema says of a key, with an example in the units of the house in force where it has one. */
function inHouseUnits(schema: { description?: string; format?: string } | undefined): string | undefined {
  const notation = notations[schema?.format ?? ''];
  if (!notation || isUsual()) return schema?.description;
  return schema?.description?.replace(/, such as .*$/u, `, such as ${notation.example()}.`);
}

function missingKey(key: string, error: ErrorObject, path: Path): Finding {
  const properties = (error.parentSchema?.['properties'] ?? {}) as Readonly<
    Record<string, { description?: string; format?: string } | undefined>
  >;
  const last = path[path.length - 1];
  const where =
    last === undefined
      ? 'the record'
      : typeof last === 'number'
        ? `this entry of '${String(path[path.length - 2] ?? '')}'`
        : `'${last}'`;
  const means = inHouseUnits(properties[key]);
  const told = means === undefined || means.replace(/\.$/u, '').toLowerCase() === key;
  const fix = told ? undefined : `${key}: ${means.charAt(0).toLowerCase()}${means.slice(1).replace(/\.$/u, '')}`;
  return {
    path,
    missing: key,
    code: 'key-missing',
    message: `${where} lacks '${key}'`,
    ...(fix !== undefined && { fix }),
    onKey: true,
  };
}

interface Wanted extends Part {
  readonly pattern?: string;
}

function wrongType(error: ErrorObject, path: Path, name: string): Finding {
  const data: unknown = error.data;
  const schema = (error.parentSchema ?? {}) as Wanted;
  const notation = schema.format === undefined ? undefined : notations[schema.format];
  const asked = notation ? `${notation.what} such as ${notation.example()}` : typeWords(schema.type);
  const message = `${name}: expected ${asked}, got ${data === null ? 'nothing' : typeof data === 'number' ? `the number ${data}` : quoted(data)}`;
  const fix = typeFix(data, schema, notation);
  return { path, code: 'value-type', message, asked, ...(fix !== undefined && { fix }), onKey: data === null };
}

function typeFix(data: unknown, schema: Wanted, notation?: Notation): string | undefined {
  if (notation) {
    if (typeof data !== 'number' || !Number.isFinite(data)) return undefined;
    if (notation.fromNumber) return `did you mean ${notation.fromNumber(data)}?`;
    const reading = notation.read(String(data));
    return reading.ok ? undefined : reading.fix;
  }
  const answer = answerOf(data);
  if (schema.type === 'boolean' && answer !== undefined) return `write ${answer}`;
  const form = schema.pattern === undefined ? undefined : patternWords[schema.pattern];
  if (form && schema.pattern !== slugPattern) return form.fix;
  if (schema.type === 'string' && schema.enum) return choiceFix(data, schema.enum.map(String));
  if (schema.type === 'string' && (typeof data === 'number' || typeof data === 'boolean'))
    return `write it in quotes: "${data}"`;
  // `- Backing: railing posts` is a key and its value to YAML.
  if (schema.type === 'string' && data !== null && typeof data === 'object' && !Array.isArray(data))
    return 'a text that holds a colon and a space goes inside quotes';
  if (schema.type === 'string' && Array.isArray(data)) return 'write one of them, without [ and ]';
  if (schema.type === 'object' || schema.type === 'array') return groupFix(schema, data);
  return undefined;
}

function wrongText(notation: Notation, text: string, path: Path): Finding | undefined {
  const reading = notation.read(text);
  if (reading.ok) return undefined;
  const { why: message, fix } = otherComma(notation, text, reading.why) ?? reading;
  const { cause } = reading;
  return {
    path,
    code: notation.code,
    message,
    ...(fix !== undefined && { fix }),
    ...(cause !== undefined && { cause }),
    onKey: false,
  };
}

/** `did you mean 'gable'?`, or the choices. */
function choiceFix(data: unknown, choices: readonly string[]): string {
  const meant = typeof data === 'string' ? nearest(data, choices) : undefined;
  return meant === undefined
    ? `write ${choices.length > 1 ? 'one of ' : ''}${choices.join(', ')}`
    : `did you mean '${meant}'?`;
}
