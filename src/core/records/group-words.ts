import { notations } from './formats.js';
import { validatorOf } from './validators.js';

/** The parts of a schema that say how a group or a list is written. */
export interface Part {
  readonly $ref?: string;
  readonly type?: unknown;
  readonly format?: string;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly properties?: Readonly<Record<string, Part>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: Part | boolean;
  readonly items?: Part;
  readonly oneOf?: readonly Part[];
}

/** Keys named beside the required ones at most: nobody reads twenty. */
const mostNamed = 10;

/** `write { material: …, labor: … }; it may also have pack, waste`: what to write where a group or a list of groups is wanted and
 *  `written` stands. Keys it cannot do without come first; what was written is put where it fits. Undefined where it is neither. */
export function groupFix(part: Part, written: unknown): string | undefined {
  const { form, more = [] } = formOf(resolved(part), written) ?? {};
  if (form === undefined) return undefined;
  const named = more.length > mostNamed ? `${more.slice(0, mostNamed).join(', ')}, …` : more.join(', ');
  return `write ${form}${more.length === 0 ? '' : `; it may also have ${named}`}`;
}

interface Form {
  readonly form: string;
  /** Keys that it may have besides. */
  readonly more?: readonly string[];
}

function formOf(part: Part, written: unknown): Form | undefined {
  if (part.oneOf) return oneFormOf(branchesOf(part), written);
  if (part.type === 'array') return listOf(part.items && resolved(part.items), written);
  if (part.type !== 'object') return undefined;
  const { properties = {}, required = [], additionalProperties } = part;
  const [first, ...rest] = Object.keys(properties);
  if (first === undefined) {
    if (typeof additionalProperties !== 'object') return undefined;
    const inner = formOf(resolved(additionalProperties), undefined);
    return { form: `{ name: ${inner?.form ?? '…'} }, for each its name` };
  }
  const shown = required.length > 0 ? required : [first];
  const filled = shown.find((key) => takes(properties[key], written));
  const keys = shown.map((key) => `${key}: ${key === filled ? String(written) : valueWords(properties[key])}`);
  return { form: `{ ${keys.join(', ')} }`, more: [first, ...rest].filter((key) => !shown.includes(key)) };
}

/** A list of groups has its entries one beneath another; of single values, between brackets. */
function listOf(items: Part | undefined, written: unknown): Form {
  const inner = items && formOf(items, written);
  if (inner) return { ...inner, form: `a list, each of it - ${inner.form}` };
  return { form: `a list, such as [${typeof written === 'string' ? written : ' … '}]` };
}

/** Of a value with several forms the groups: by the key that tells them apart, or the first two. */
function oneFormOf(forms: readonly Part[], written: unknown): Form | undefined {
  const groups = forms.filter(({ type }) => type === 'object');
  const names = groups.flatMap(({ properties }) =>
    properties?.['form']?.const === undefined ? [] : [String(properties['form'].const)],
  );
  if (names.length > 1) return { form: `{ form: …, … }, where form is one of ${names.join(', ')}` };
  const [first, second] = groups.map((group) => formOf(group, written)).filter((form) => form !== undefined);
  if (!first || !second || first.form === second.form) return first;
  return { form: `${first.form}, or ${second.form}` };
}

/** The forms of a value, and those of each of them. */
function branchesOf({ oneOf = [] }: Part): readonly Part[] {
  return oneOf.map(resolved).flatMap((one) => (one.oneOf ? branchesOf(one) : [one]));
}

function valueWords(part: Part | undefined): string {
  return part?.const === undefined ? '…' : String(part.const);
}

/** Is what was written a value of the key? */
function takes(part: Part | undefined, written: unknown): boolean {
  if (typeof written !== 'string' || !part) return false;
  const { format, enum: choices } = resolved(part);
  if (choices) return choices.includes(written);
  return format !== undefined && notations[format]?.read(written).ok === true;
}

function resolved(part: Part): Part {
  if (part.$ref === undefined) return part;
  const { schema } = validatorOf(part.$ref);
  return typeof schema === 'object' ? resolved(schema as Part) : {};
}
