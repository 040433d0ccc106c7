import { products, type Fact, type Product } from '../fact/index.js';
import type { AttributeRule } from '../model/index.js';
import { nearest, problemAt, type Path, type Problem, type ProblemCode } from '../../base/problem/index.js';
import { joinWords } from '../../base/units/index.js';
import type { Checked } from './checked-record.js';
import type { RawCategory } from './raw/category.js';

/** Attributes by which code would read less than the category's author meant: a fact of another kind, a letter off, or lost. They
 *  are warnings: what is recorded is sound, and older issues of a house are read by newer rules. The record has no errors. */
export function factProblems(rules: readonly AttributeRule[], record: Checked<RawCategory>): readonly Problem[] {
  const all = Object.values(products) as readonly Product[];
  const own = all.filter((product) => isOf(product, rules, record.raw));
  const read = new Set(own.flatMap(({ facts }) => Object.keys(facts)));
  const strange = rules.map(({ name }) => name).filter((name) => !read.has(name));
  const ofOwn = own.flatMap((product) =>
    Object.entries(product.facts).flatMap(([name, fact]) =>
      factProblem({ product, name, fact }, rules, strange, record),
    ),
  );
  return [
    ...ofOwn,
    ...misspelt(
      strange,
      all.filter((product) => !own.includes(product)),
      record,
    ),
  ];
}

function isOf({ measuredBy, knownBy }: Product, rules: readonly AttributeRule[], { measure }: RawCategory): boolean {
  return measure.by === measuredBy || rules.some(({ name }) => knownBy.includes(name));
}

interface Named {
  readonly product: Product;
  readonly name: string;
  readonly fact: Fact;
}

function factProblem(
  { product, name, fact }: Named,
  rules: readonly AttributeRule[],
  strange: readonly string[],
  { origin }: Checked<RawCategory>,
): readonly Problem[] {
  const { kind, tells, isOptional } = fact;
  const readers = readersOf(fact);
  const rule = rules.find((candidate) => candidate.name === name);
  if (rule) {
    if (rule.kind === kind) return [];
    const message = `'${name}' of ${product.name} is of kind ${rule.kind}, and is read as ${kind}: ${readers} cannot read it`;
    return [warn(['attributes', name, 'kind'], 'fact-kind', message, `write kind: ${kind}`)];
  }
  const slip = strange.find((written) => isSlip(written, name));
  if (slip !== undefined) {
    const message = `this is ${product.name}, and nothing reads '${slip}' of it: ${readers} would read '${name}'`;
    return [
      warn(['attributes', slip], 'fact-misspelt', message, `did you mean '${name}'? Rename it in the options too`),
    ];
  }
  if (isOptional) return [];
  const message = `this is ${product.name}, and '${name}' is not among the attributes: ${readers} cannot read it`;
  const fix = `add ${name}: { label: …, kind: ${kind}, required: true }, or rename what says it: ${firstClause(tells)}`;
  return [warn(['attributes'], 'fact-missing', message, fix)];

  function warn(path: Path, code: ProblemCode, text: string, fix: string): Problem {
    return problemAt(origin, path, code, text, { fix, severity: 'warning', onKey: code !== 'fact-kind' });
  }
}

/** The one fact by which a category would be known may itself be the one that is misspelt. */
function misspelt(
  strange: readonly string[],
  others: readonly Product[],
  { origin }: Checked<RawCategory>,
): readonly Problem[] {
  return strange.flatMap((written) =>
    others.flatMap(({ name, knownBy, facts }) => {
      const meant = knownBy.find((fact) => isSlip(written, fact));
      const fact = meant === undefined ? undefined : facts[meant];
      if (meant === undefined || !fact) return [];
      const message = `nothing reads '${written}'; of ${name} ${readersOf(fact)} would read '${meant}'`;
      const fix = `did you mean '${meant}'? Rename it in the options too`;
      return [
        problemAt(origin, ['attributes', written], 'fact-misspelt', message, { fix, severity: 'warning', onKey: true }),
      ];
    }),
  );
}

/** A slip of the hand, not another word: it begins alike. Short names are near to words that mean something else: there only a
 *  letter more, less or in the wrong place counts, and a plural does not. */
function isSlip(written: string, name: string): boolean {
  if (written[0] !== name[0] || nearest(written, [name]) === undefined) return false;
  if (name.length > 5 || sorted(written) === sorted(name)) return true;
  return written.length !== name.length && written !== `${name}s`;
}

function sorted(word: string): string {
  return [...word].sort().join('');
}

/** `the caution thermal-barrier and the insulation schedule`. */
function readersOf({ cautions = [], readers = [] }: Fact): string {
  return joinWords([...cautions.map((id) => `the caution ${id}`), ...readers.map((reader) => `the ${reader}`)]);
}

/** What it tells, without what follows from it. */
function firstClause(tells: string): string {
  const [clause = tells] = tells.split(/[;.]/u);
  return clause.charAt(0).toLowerCase() + clause.slice(1);
}
