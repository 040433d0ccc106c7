import { byText } from '../../base/units/index.js';
import type { ChangeOrder, Source } from '../model/index.js';
import type { Path } from '../../base/problem/index.js';
import { readFrontMatter } from '../records/index.js';

/** One term of the contract as the house's record writes it: the sum, a rate, an allowance's amount. */
export interface ContractTerm {
  /** `contract.sum`, `allowances.stone.amount`. */
  readonly id: string;
  /** Where it stands in the record. */
  readonly path: Path;
  /** `Contract sum`, `Allowance Stone facing: amount`. */
  readonly what: string;
  readonly text: string;
}

/** A term that reads otherwise now. */
export interface TermChange {
  readonly term: string;
  readonly what: string;
  readonly from: string;
  readonly to: string;
}

/** A term that differs from what was agreed last. */
export interface UncoveredTerm {
  readonly what: string;
  readonly path: Path;
  readonly agreed: string;
  readonly is: string;
  /** Number of a change order that holds it and is not decided yet. */
  readonly proposed?: number;
}

/** Of an allowance: what came of it, and what is said of it. Nobody agrees to these. */
const toldLater: readonly string[] = ['invoices', 'note'];

/** Stands for a term that one side does not have. */
const absent = 'none';

/** Every term that `contract:` and `allowances:` of a house's record hold, leaf by leaf: a key that is new to the record
 *  is a term without being told here. Empty when the record cannot be read. */
export function contractTerms(house: Source | undefined): readonly ContractTerm[] {
  const data = house && readFrontMatter(house).value?.data;
  if (!data) return [];
  const { contract, allowances } = data;
  const entries = Array.isArray(allowances) ? allowances : [];
  return [
    ...leaves(contract, ['contract'], ['contract']).map(({ id, path, text }) => ({
      id: id.join('.'),
      path,
      what: id[1] === 'sum' ? 'Contract sum' : `Contract: ${words(id.slice(1))}`,
      text,
    })),
    ...entries.flatMap((entry: unknown, index) => {
      const { id: slug, name = slug, ...rest } = isObject(entry) ? entry : {};
      if (typeof slug !== 'string') return [];
      const terms = Object.fromEntries(Object.entries(rest).filter(([key]) => !toldLater.includes(key)));
      return leaves(terms, ['allowances', index], ['allowances', slug]).map(({ id, path, text }) => ({
        id: id.join('.'),
        path,
        what: `Allowance ${String(name)}: ${words(id.slice(2))}`,
        text,
      }));
    }),
  ];
}

/** Terms that read otherwise now, came or went. */
export function compareContract(from: readonly ContractTerm[], to: readonly ContractTerm[]): TermChange[] {
  const [before, after] = [byId(from), byId(to)];
  return [...new Set([...after.keys(), ...before.keys()])].flatMap((term) => {
    const [old, now] = [before.get(term), after.get(term)];
    if (same(old?.text, now?.text)) return [];
    return [{ term, what: (now ?? old)?.what ?? term, from: old?.text ?? absent, to: now?.text ?? absent }];
  });
}

/** Terms that are neither as they were first agreed nor as the last approved change order that speaks of them has them. */
export function uncoveredTerms(
  first: readonly ContractTerm[],
  now: readonly ContractTerm[],
  orders: readonly ChangeOrder[],
): UncoveredTerm[] {
  const approved = orders
    .filter(({ state }) => state === 'approved')
    .toSorted((a, b) => byText(a.decidedOn ?? '', b.decidedOn ?? '') || a.number - b.number);
  const said = (list: readonly ChangeOrder[], term: string): string | undefined =>
    list.flatMap(({ lines }) => lines.flatMap((line) => (line.term === term ? [line.to ?? absent] : []))).at(-1);
  const paths = new Map([...first, ...now].map(({ id, path }) => [id, path]));
  const current = byId(now);
  return [...new Map([...first, ...now].map((term) => [term.id, term])).values()].flatMap(({ id, what }) => {
    const agreed = said(approved, id) ?? first.find((term) => term.id === id)?.text ?? absent;
    const is = current.get(id)?.text ?? absent;
    if (same(agreed, is)) return [];
    const waits = orders.find((order) => order.state === 'proposed' && same(said([order], id), is));
    return [{ what, path: paths.get(id) ?? [], agreed, is, ...(waits && { proposed: waits.number }) }];
  });
}

interface Leaf {
  readonly id: readonly string[];
  readonly path: Path;
  readonly text: string;
}

function leaves(value: unknown, path: Path, id: readonly string[]): readonly Leaf[] {
  if (Array.isArray(value) && !value.some(isObject))
    return [{ id, path, text: value.map(String).join(', ') || absent }];
  if (Array.isArray(value))
    return value.flatMap((item: unknown, index) => leaves(item, [...path, index], [...id, String(index + 1)]));
  if (isObject(value))
    return Object.entries(value).flatMap(([key, part]) => leaves(part, [...path, key], [...id, key]));
  return value === undefined || value === null ? [] : [{ id, path, text: String(value as string | number | boolean) }];
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return value !== null && typeof value === 'object' && !Array.isArray(value);
}

const byId = (terms: readonly ContractTerm[]): ReadonlyMap<string, ContractTerm> =>
  new Map(terms.map((term) => [term.id, term]));

const words = (id: readonly string[]): string => id.join(', ').replaceAll('-', ' ');

/** `$100,000` and `$100,000.00` are one sum. */
function same(a: string | undefined, b: string | undefined): boolean {
  return a === b || (a !== undefined && b !== undefined && plain(a) === plain(b));
}

function plain(text: string): string {
  return text.replace(/[,\s]/gu, '').replace(/(\$\d+)\.00\b/gu, '$1');
}
