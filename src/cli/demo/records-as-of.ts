import { isCollection, isMap, isNode, isScalar, isSeq, parseDocument, visit, type Pair, type YAMLMap } from 'yaml';
import { factSteps, type Source } from '../../core/model/index.js';
import { splice, type Edit } from '../../core/records/index.js';
import type { IsoDate } from '../../base/units/index.js';

/** A house's records as they stood at the end of a day: what was decided, ordered or done later is left out, and a choice that
 *  was changed later is the one before. All else, comments too, stays to the letter. */
export function recordsAsOf(sources: readonly Source[], day: IsoDate): Source[] {
  return sources
    .filter(({ path, text }) => !path.startsWith('content/alternatives/') || !isLater(drawnUpOn(text), day))
    .map(({ path, text }) => ({ path, text: path.endsWith('.md') ? recordAsOf(text, day) : text }));
}

/** The day of a record that came later as a whole. */
function drawnUpOn(text: string): unknown {
  const document = parseDocument(text.split('\n---')[0]?.replace(/^---\n/u, '') ?? '', { version: '1.2' });
  return document.get('on');
}

/** What goes with a choice. */
const decision = ['chosen', 'chosen-on', 'chosen-by', 'slip', ...factSteps, 'instead-of'];

/** Facts with a day of their own, and those that are days. */
const facts = [...decision, 'kept-open-by', 'needs-done', 'withdrawn', 'invoices'];
const days = ['chosen-on', 'done-on'];

function recordAsOf(text: string, day: IsoDate): string {
  const start = text.indexOf('\n') + 1;
  const end = text.indexOf('\n---', start) + 1;
  if (start === 0 || end === 0) return text;
  const edits: Edit[] = [];
  const document = parseDocument(text.slice(start, end), { version: '1.2' });
  visit(document, {
    // A fact goes whole, with the days inside it.
    Pair: (_, { key }) => (isScalar(key) && facts.includes(String(key.value)) ? visit.SKIP : undefined),
    Map: (_, map) => {
      edits.push(...mapEdits(map, day, text, start));
    },
  });
  return splice(text, edits);
}

function mapEdits(map: YAMLMap, day: IsoDate, text: string, start: number): readonly Edit[] {
  const before = map.get('instead-of');
  const wasChosen = isMap(before) && !isLater(before.get('chosen-on'), day);
  if (wasChosen && isLater(before.get('on'), day)) return changedBack(map, before, day, text, start);
  if (isLater(map.get('chosen-on'), day)) return pairsOf(map, decision).map((pair) => without(pair, text, start));
  return [
    ...pairsOf(map, [...facts, ...days])
      .filter((pair) => saidLater(pair, day))
      .map((pair) => without(pair, text, start)),
    ...laterInvoices(map, day, text, start),
  ];
}

/** Of an allowance with invoices before and after a day, those that came after. */
function laterInvoices(map: YAMLMap, day: IsoDate, text: string, start: number): readonly Edit[] {
  return pairsOf(map, ['invoices'])
    .filter((pair) => isSeq(pair.value) && !saidLater(pair, day))
    .flatMap(({ value }) => (isSeq(value) ? value.items : []))
    .filter((invoice) => isMap(invoice) && isLater(invoice.get('on'), day))
    .map((invoice) => withoutNodes([invoice], text, start));
}

/** The choice that stood before a change, with what had come of it. */
function changedBack(map: YAMLMap, before: YAMLMap, day: IsoDate, text: string, start: number): readonly Edit[] {
  const written = (key: string, value: unknown): readonly Edit[] => {
    const node = map.get(key, true);
    if (!isNode(node) || !node.range) return [];
    return [{ from: node.range[0] + start, to: node.range[1] + start, text: String(value) }];
  };
  return [
    ...written('chosen', before.get('option')),
    ...written('chosen-on', before.get('chosen-on')),
    ...pairsOf(map, facts)
      .filter((pair) => !isScalar(pair.value) && saidLater(pair, day))
      .map((pair) => without(pair, text, start)),
  ];
}

/** A day of its own, or a map with the day `on`; a map or list of such maps, where all of them are later. */
function saidLater({ key, value }: Pair, day: IsoDate): boolean {
  if (isScalar(value)) return isScalar(key) && days.includes(String(key.value)) && isLater(value.value, day);
  if (isMap(value) && value.has('on')) return isLater(value.get('on'), day);
  if (!isCollection(value) || value.items.length === 0) return false;
  const entries = isSeq(value) ? value.items : value.items.map((item) => (item as Pair).value);
  return entries.every((entry) => isMap(entry) && entry.has('on') && isLater(entry.get('on'), day));
}

function isLater(value: unknown, day: IsoDate): boolean {
  return typeof value === 'string' && value > day;
}

function pairsOf(map: YAMLMap, keys: readonly string[]): readonly Pair[] {
  return map.items.filter((pair) => isScalar(pair.key) && keys.includes(String(pair.key.value)));
}

/** Takes a pair out: its lines in a block map, itself and the comma before it in a map on one line. */
function without(pair: Pair, text: string, offset: number): Edit {
  return withoutNodes([pair.key, pair.value], text, offset);
}

function withoutNodes(nodes: readonly unknown[], text: string, offset: number): Edit {
  const ends = nodes.flatMap((node) => (isNode(node) && node.range ? [node.range] : []));
  const first = Math.min(...ends.map(([from]) => from)) + offset;
  const last = Math.max(...ends.map(([, to]) => to)) + offset;
  const line = text.lastIndexOf('\n', first) + 1;
  if (/^\s*(?:- )?\s*$/u.test(text.slice(line, first)))
    return { from: line, to: text.indexOf('\n', last - 1) + 1, text: '' };
  return { from: text.lastIndexOf(',', first), to: last, text: '' };
}
