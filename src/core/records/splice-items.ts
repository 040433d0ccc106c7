import { Document, isMap, isScalar, isSeq, stringify, visit, type YAMLSeq } from 'yaml';
import { splice } from './splice.js';
import { frontMatterOf, inOrder, parse, setKeys } from './splice-keys.js';

/** A record with one item more at the end of a top-level list, by splicing: every other byte stays as it was. The item is written as the
 *  one before it is, in one line or over several. A list that is not there yet comes after the first of the keys `after` that is, else
 *  last. `text` is a record that was read without errors; throws on any other: a fault of the program. */
export function appendItem(
  text: string,
  list: string,
  item: Readonly<Record<string, unknown>>,
  after: readonly string[],
): string {
  const { yaml, start } = frontMatterOf(text);
  const document = parse(yaml);
  const node: unknown = document.get(list, true);
  if (!isSeq(node) || node.items.length === 0) return setKeys(text, [{ in: [], values: { [list]: [item] }, after }]);
  const eol = text.slice(0, start).endsWith('\r\n') ? '\r\n' : '\n';
  const written = splice(yaml, [node.flow ? inFlow(node, item) : asLine(node, item, { yaml, eol })]);
  const meant = document.clone();
  meant.addIn([list], meant.createNode(item));
  if (inOrder(meant) !== inOrder(parse(written))) throw new Error('a record was not spliced as meant');
  return text.slice(0, start) + written + text.slice(start + yaml.length);
}

interface Edited {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** `[a, b]` has the item behind b. */
function inFlow(node: YAMLSeq, item: object): Edited {
  const at = endOf(node.items.at(-1));
  return { from: at, to: at, text: `, ${inline(item)}` };
}

/** A line, or several, under the last item's. */
function asLine(node: YAMLSeq, item: object, { yaml, eol }: { readonly yaml: string; readonly eol: string }): Edited {
  const last = node.items.at(-1);
  const dash = yaml.lastIndexOf('-', startOf(last) - 1);
  const indent = ' '.repeat(dash - (yaml.lastIndexOf('\n', dash) + 1));
  const isInline = isMap(last) && last.flow === true;
  const lines = isInline ? [inline(item)] : overLines(item);
  const body = lines.map((line, index) => `${indent}${index === 0 ? '- ' : '  '}${line}${eol}`).join('');
  const end = yaml.slice(0, endOf(last)).trimEnd().length;
  const next = yaml.indexOf('\n', end) + 1;
  return { from: next, to: next, text: body };
}

/** A key on each line; a list of words in one. */
function overLines(item: object): readonly string[] {
  const document = new Document(item);
  visit(document, { Seq: (_, list) => void (list.flow = list.items.every(isScalar)) });
  return document.toString({ lineWidth: 0 }).trimEnd().split('\n');
}

function inline(item: object): string {
  return stringify(item, { lineWidth: 0, collectionStyle: 'flow' }).trim();
}

function startOf(node: unknown): number {
  return rangeOf(node)[0];
}

function endOf(node: unknown): number {
  return rangeOf(node)[1];
}

function rangeOf(node: unknown): readonly [number, number, number] {
  const range = (node as { readonly range?: [number, number, number] | null }).range;
  if (!range) throw new Error('an item of a record to splice has no place');
  return range;
}
