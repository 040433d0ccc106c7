import { isMap, isNode, isScalar, isSeq, parseDocument, type YAMLMap } from 'yaml';
import type { Source } from '../../core/model/index.js';
import type { IsoDate } from '../../base/units/index.js';

/** A house's records as they stood at the end of a day: of each selection, what was decided or ordered later is left out, and
 *  of each allowance the invoices that came later. All else, comments too, stays to the letter. */
export function recordsAsOf(sources: readonly Source[], day: IsoDate): Source[] {
  return sources.map(({ path, text }) => ({
    path,
    text: path.startsWith('content/rooms/')
      ? recordAsOf(text, 'selections', (item) => laterPairs(item, day))
      : path === 'content/house.md'
        ? recordAsOf(text, 'allowances', (item) => laterInvoices(item, day))
        : text,
  }));
}

/** Nodes that stand on the same lines, or on lines that follow each other. */
type Ranged = readonly unknown[];

const decision = ['chosen', 'chosen-on', 'chosen-by', 'ordered-on', 'installed-on'];
const facts = ['ordered-on', 'installed-on'];

/** A record without the lines of what `later` finds in the items of a list. */
function recordAsOf(text: string, list: string, later: (item: YAMLMap) => readonly Ranged[]): string {
  const start = text.indexOf('\n') + 1;
  const end = text.indexOf('\n---', start) + 1;
  const document = parseDocument(text.slice(start, end), { version: '1.2' });
  const items = document.get(list, true);
  if (!isSeq(items)) return text;
  return items.items
    .filter((item) => isMap(item))
    .flatMap(later)
    .map((ranged) => lineOf(ranged, text, start))
    .sort((a, b) => b.from - a.from)
    .reduce((rest, { from, to }) => rest.slice(0, from) + rest.slice(to), text);
}

/** The pairs of a selection that were written after a day. */
function laterPairs(selection: YAMLMap, day: IsoDate): readonly Ranged[] {
  const isLater = (key: string): boolean => String(selection.get(key) ?? '') > day;
  const keys = isLater('chosen-on') ? decision : facts.filter(isLater);
  const pairs = selection.items.filter((pair) => isScalar(pair.key) && keys.includes(String(pair.key.value)));
  return pairs.map(({ key, value }) => [key, value]);
}

/** The invoices of an allowance that came after a day; all of them with their key. */
function laterInvoices(allowance: YAMLMap, day: IsoDate): readonly Ranged[] {
  const pair = allowance.items.find(({ key }) => isScalar(key) && key.value === 'invoices');
  if (!pair || !isSeq(pair.value)) return [];
  const later = pair.value.items.filter((item) => isMap(item) && String(item.get('on')) > day);
  return later.length === pair.value.items.length ? [[pair.key, ...later]] : later.map((item) => [item]);
}

/** The lines that nodes of a record take up, first to last. */
function lineOf(nodes: Ranged, text: string, offset: number): { readonly from: number; readonly to: number } {
  const ends = nodes.flatMap((node) => (isNode(node) && node.range ? [node.range] : []));
  const first = Math.min(...ends.map(([from]) => from)) + offset;
  const last = Math.max(...ends.map(([, to]) => to)) + offset;
  return { from: text.lastIndexOf('\n', first) + 1, to: text.indexOf('\n', last) + 1 };
}
