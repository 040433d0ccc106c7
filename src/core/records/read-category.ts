import { attributeFor } from '../fact/index.js';
import type { AttributeRule, Category } from '../model/index.js';
import { hasErrors, problemAt, type Path, type Problem } from '../../base/problem/index.js';
import type { Checked } from './checked-record.js';
import { factProblems } from './fact-problems.js';
import type { RawAttributeRule, RawCategory } from './raw/category.js';
import { quoteProblems } from './quote-problems.js';
import { measureProblems, namesWanted, readAssembly, readMeasure } from './read-measure.js';

/** A category's record, as far as it can be read. */
export interface CategoryDraft {
  readonly slug: string;
  readonly record: Checked<RawCategory>;
  /** Absent when they are wrong: options cannot be checked against them. */
  readonly rules?: readonly AttributeRule[];
  /** Attributes that figures are made from: an option without them may be considered, but not chosen. */
  readonly measuredFrom: ReadonlySet<string>;
  readonly whole?: Category;
  readonly problems: readonly Problem[];
}

/** Attributes that a way of measuring works with. */
const workedWith: Readonly<Record<string, ReturnType<typeof attributeFor> & { readonly label: string }>> = {
  stone: { ...attributeFor('stone', 'corner-covers'), label: 'Corner coverage' },
  railing: { ...attributeFor('railing', 'post-spacing'), label: 'Post spacing' },
};

export function readCategory(record: Checked<RawCategory>): CategoryDraft {
  const rules =
    record.sound(['attributes']) && !record.meant('attributes')
      ? Object.entries(record.raw.attributes ?? {}).map(([name, raw]) => readRule(name, raw))
      : undefined;
  const errors = [
    ...record.problems,
    ...sharedProblems(record),
    ...(rules ? [...ruleProblems(rules, record), ...measureProblems(rules, record)] : []),
  ];
  // One cause once: what is wrong may be why a fact is not there.
  const problems = rules && !hasErrors(errors) ? [...errors, ...factProblems(rules, record)] : errors;
  return {
    slug: record.slug,
    record,
    problems,
    measuredFrom: new Set(record.sound(['measure']) && record.sound(['assemblies']) ? measuredFrom(record.raw) : []),
    ...(rules && { rules }),
    ...(rules && !hasErrors(problems) && { whole: wholeCategory(record, rules) }),
  };
}

/** Quotations that options share. */
function sharedProblems({ raw, origin, sound }: Checked<RawCategory>): readonly Problem[] {
  if (!sound(['options']) || !sound(['families'])) return [];
  return [
    ...quoteProblems(raw.options?.quoted, ['options', 'quoted'], origin),
    ...Object.entries(raw.families ?? {}).flatMap(([name, { quoted }]) =>
      quoteProblems(quoted, ['families', name, 'quoted'], origin),
    ),
  ];
}

function readRule(name: string, raw: RawAttributeRule): AttributeRule {
  const { label, kind, required, choices, means, source } = raw;
  return {
    name,
    label,
    kind,
    required: required ?? false,
    ...(choices && { choices }),
    ...(means && { means: { words: means, from: source ?? "the category's record" } }),
  };
}

function wholeCategory(
  { slug, raw, body, origin }: Checked<RawCategory>,
  attributes: readonly AttributeRule[],
): Category {
  const { schedule, assemblies } = raw;
  const [early = [], measuredAfter] = [raw['fixes-early'], raw['measured-after']];
  return {
    slug,
    name: raw.name,
    trade: raw.trade,
    section: raw.section,
    measure: readMeasure(raw),
    ...(assemblies && { assemblies: assemblies.map(readAssembly) }),
    sequence: raw.sequence,
    neededAt: raw['needed-at'],
    ...(measuredAfter !== undefined && { measuredAfter }),
    fixesEarly: [early].flat().map(({ milestone, why }) => ({ milestone, why })),
    layer: raw.layer,
    ...(raw['needs-beneath'] && { needsBeneath: raw['needs-beneath'].map(namesOf) }),
    ...(schedule && { schedule }),
    ...(raw.key !== undefined && { key: raw.key }),
    attributes,
    body,
    origin,
  };
}

/** One name is written without a list. */
function namesOf(written: string | readonly string[]): readonly string[] {
  return typeof written === 'string' ? [written] : written;
}

function ruleProblems(
  rules: readonly AttributeRule[],
  { raw, origin, sound }: Checked<RawCategory>,
): readonly Problem[] {
  const problems: Problem[] = [];
  for (const { name, kind, choices } of rules) {
    if (!choices || kind === 'text') continue;
    const path: Path = ['attributes', name, 'choices'];
    const message = `'${name}' is of kind ${kind} and has choices, which are texts`;
    problems.push(
      problemAt(origin, path, 'choices-unsuited', message, { fix: 'make its kind text, or leave the choices out' }),
    );
  }
  const need = sound(['measure']) ? workedWith[raw.measure.by] : undefined;
  if (need && !rules.some(({ name, kind }) => name === need.name && kind === need.kind)) {
    const message = `measuring by ${raw.measure.by} works with the attribute '${need.name}', which is not among the attributes`;
    problems.push(problemAt(origin, ['measure', 'by'], 'attribute-needed', message, { fix: addWords(need) }));
  }
  return [...problems, ...layProblems(rules, { raw, origin, sound })];
}

/** What pieces are laid out by. */
const laidBy = [
  { ...attributeFor('pieces', 'face'), label: 'Face coverage' },
  { ...attributeFor('pieces', 'stock'), label: 'Stock lengths' },
];

function layProblems(
  rules: readonly AttributeRule[],
  { raw, origin, sound }: Pick<Checked<RawCategory>, 'raw' | 'origin' | 'sound'>,
): readonly Problem[] {
  if (!sound(['measure']) || raw.measure.lay === undefined) return [];
  return laidBy.flatMap(({ name, kind, label }) => {
    if (rules.some((rule) => rule.name === name && rule.kind === kind)) return [];
    const message = `laying ${raw.measure.lay} out works with the attribute '${name}', which is not among the attributes`;
    return [
      problemAt(origin, ['measure', 'lay'], 'attribute-needed', message, { fix: addWords({ name, kind, label }) }),
    ];
  });
}

function measuredFrom(raw: RawCategory): readonly string[] {
  const need = workedWith[raw.measure.by];
  const laid = raw.measure.lay === undefined ? [] : laidBy;
  return [...(need ? [need] : []), ...laid].map(({ name }) => name).concat(namesWanted(raw));
}

function addWords({ name, kind, label }: (typeof laidBy)[number]): string {
  return `add ${name}: { label: ${label}, kind: ${kind}, required: true }`;
}
