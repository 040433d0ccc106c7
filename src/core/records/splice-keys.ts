import { isMap, isNode, isScalar, parseDocument, stringify, type Document, type Pair, type YAMLMap } from 'yaml';
import type { Path } from '../../base/problem/index.js';
import { byText } from '../../base/units/index.js';
import { splice, type Edit } from './splice.js';

/** Keys of one map of a record, to be set. */
export interface SetKeys {
  /** Where the map stands: `[]` for the record itself, `['selections', 2]` for a selection. */
  readonly in: Path;
  /** What is undefined is taken away. */
  readonly values: Readonly<Record<string, unknown>>;
  /** Keys that are not there come after the first of these that is there, in order; else last. */
  readonly after: readonly string[];
}

/** A record with top-level keys of its front matter set. */
export function spliceKeys(text: string, values: Readonly<Record<string, unknown>>, after: string): string {
  return setKeys(text, [{ in: [], values, after: [after] }]);
}

/** A record with keys of its maps set or taken away by splicing: every byte outside these keys stays as it was, remarks and the other keys'
 *  notation too. What comes of it is read again, and must hold what was meant and nothing else. `text` is a record that was
 *  read without errors; throws on any other, and on a path that is no map: a fault of the program. */
export function setKeys(text: string, sets: readonly SetKeys[]): string {
  const { yaml, start } = frontMatterOf(text);
  const eol = text.slice(0, start).endsWith('\r\n') ? '\r\n' : '\n';
  const document = parse(yaml);
  const edits = sets.flatMap((set) => mapEdits(mapAt(document, set.in), set, { yaml, eol }));
  const written = splice(yaml, edits);
  prove(document, parse(written), sets);
  return text.slice(0, start) + written + text.slice(start + yaml.length);
}

/** A value of a record that was read without errors. */
export function valueAt(text: string, path: Path): unknown {
  const document = parse(frontMatterOf(text).yaml);
  const node: unknown = document.getIn(path, true);
  return isNode(node) ? node.toJS(document) : node;
}

/** The YAML between the lines of dashes, and where it begins. */
export function frontMatterOf(text: string): { readonly yaml: string; readonly start: number } {
  const start = text.indexOf('\n') + 1;
  return { yaml: text.slice(start, text.indexOf('\n---', start) + 1), start };
}

export function parse(yaml: string): Document.Parsed {
  const document = parseDocument(yaml, { version: '1.2' });
  if (document.errors.length > 0) throw new Error('a record to splice is none');
  return document;
}

function mapAt(document: Document.Parsed, path: Path): YAMLMap {
  const map: unknown = path.length === 0 ? document.contents : document.getIn(path, true);
  if (!isMap(map) || map.items.length === 0) throw new Error('what is to be spliced is no map');
  return map;
}

interface Written {
  readonly yaml: string;
  readonly eol: string;
}

function mapEdits(map: YAMLMap, { values, after }: SetKeys, { yaml, eol }: Written): readonly Edit[] {
  const spans = new Map(map.items.flatMap((pair) => spanOf(pair, yaml)));
  const [first = [0, 0]] = spans.values();
  const indent = map.flow ? '' : ' '.repeat(first[0] - (yaml.lastIndexOf('\n', first[0] - 1) + 1));
  const print = (name: string): string =>
    map.flow ? printInLine(name, values[name]) : printLines(name, values[name]).replaceAll('\n', eol + indent);
  const names = Object.keys(values).filter((name) => values[name] !== undefined);
  const gone = new Set(Object.keys(values).filter((name) => values[name] === undefined && spans.has(name)));
  const replaced = names.flatMap((name): readonly Edit[] => {
    const span = spans.get(name);
    return span ? [{ from: span[0], to: span[1], text: print(name) }] : [];
  });
  const edits = [...replaced, ...removals([...spans], gone, { yaml, isFlow: map.flow === true })];
  const fresh = names.filter((name) => !spans.has(name)).map(print);
  const anchor =
    spans.get(after.find((name) => spans.has(name) && !gone.has(name)) ?? '') ?? [...spans.values()].at(-1) ?? first;
  const place = map.flow ? anchor[1] : yaml.indexOf('\n', anchor[1]) + 1;
  const added = fresh.map((pair) => (map.flow ? `, ${pair}` : `${indent}${pair}${eol}`)).join('');
  return fresh.length === 0 ? edits : [...edits, { from: place, to: place, text: added }];
}

type Spans = readonly (readonly [name: string, span: readonly [from: number, to: number]])[];

/** What takes pairs away: between braces with one comma each, else with their lines. A remark behind a pair stays, on a line of its own. */
function removals(
  spans: Spans,
  gone: ReadonlySet<string>,
  { yaml, isFlow }: { readonly yaml: string; readonly isFlow: boolean },
): readonly Edit[] {
  return spans.flatMap(([name, [from, to]], index) => {
    if (!gone.has(name)) return [];
    const next = spans[index + 1]?.[1][0];
    if (isFlow) {
      const before = spans[index - 1]?.[1][1];
      const isFirst = spans.slice(0, index).every(([other]) => gone.has(other));
      return [isFirst || before === undefined ? { from, to: next ?? to, text: '' } : { from: before, to, text: '' }];
    }
    const line = yaml.lastIndexOf('\n', from - 1) + 1;
    const end = yaml.indexOf('\n', to);
    const behind = yaml.slice(to, end);
    if (behind.trim() !== '') return [{ from, to: to + behind.length - behind.trimStart().length, text: '' }];
    if (yaml.slice(line, from).trim() === '') return [{ from: line, to: end + 1, text: '' }];
    // Behind the dash of a list: the next pair takes its place.
    return [{ from, to: next !== undefined && yaml.slice(to, next).trim() === '' ? next : to, text: '' }];
  });
}

/** Where a pair stands, by its name; without the line break at which a list, a map or a folded text may end. */
function spanOf({ key, value }: Pair, yaml: string): readonly (readonly [string, readonly [number, number]])[] {
  if (!isScalar(key) || !key.range) return [];
  const [from, keyEnd] = key.range;
  const to = isNode(value) && value.range ? value.range[1] : keyEnd + 1;
  return [[String(key.value), [from, yaml.slice(0, to).trimEnd().length]]];
}

function printLines(name: string, value: unknown): string {
  return stringify({ [name]: value }, { lineWidth: 0 }).trimEnd();
}

/** `chosen-by: The owners`, as it stands between braces. */
function printInLine(name: string, value: unknown): string {
  return stringify({ [name]: value }, { lineWidth: 0, collectionStyle: 'flow' })
    .trim()
    .replace(/^\{ ?/u, '')
    .replace(/ ?\}$/u, '');
}

/** Only what was meant has changed. */
function prove(before: Document.Parsed, after: Document.Parsed, sets: readonly SetKeys[]): void {
  const meant = before.clone();
  for (const { in: path, values } of sets)
    for (const [name, value] of Object.entries(values))
      if (value === undefined) meant.deleteIn([...path, name]);
      else meant.setIn([...path, name], meant.createNode(value));
  if (inOrder(meant) !== inOrder(after)) throw new Error('a record was not spliced as meant');
}

/** Its values, with keys in order: where in a map a key stands means nothing. */
export function inOrder(document: Document): string {
  return JSON.stringify(document.toJS(), (_, value: unknown) =>
    value !== null && typeof value === 'object' && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => byText(a, b)))
      : value,
  );
}
