import { isMap, isScalar, isSeq, parseDocument, type Pair, type YAMLMap } from 'yaml';
import type { Source } from '../../core/model/index.js';
import type { IsoDate } from '../../base/units/index.js';

/** A house's records as they stood at the end of a day: of each selection, what was decided or ordered later is left out.
 *  All else, comments too, stays to the letter. */
export function recordsAsOf(sources: readonly Source[], day: IsoDate): Source[] {
  return sources.map(({ path, text }) => ({
    path,
    text: path.startsWith('content/rooms/') ? roomAsOf(text, day) : text,
  }));
}

const decision = ['chosen', 'chosen-on', 'chosen-by', 'ordered-on', 'installed-on'];
const facts = ['ordered-on', 'installed-on'];

function roomAsOf(text: string, day: IsoDate): string {
  const start = text.indexOf('\n') + 1;
  const end = text.indexOf('\n---', start) + 1;
  const document = parseDocument(text.slice(start, end), { version: '1.2' });
  const selections = document.get('selections', true);
  if (!isSeq(selections)) return text;
  const later = selections.items.filter((item) => isMap(item)).flatMap((item) => laterPairs(item, day));
  return later
    .map((pair) => lineOf(pair, text, start))
    .sort((a, b) => b.from - a.from)
    .reduce((rest, { from, to }) => rest.slice(0, from) + rest.slice(to), text);
}

/** The pairs of a selection that were written after a day. */
function laterPairs(selection: YAMLMap, day: IsoDate): readonly Pair[] {
  const isLater = (key: string): boolean => String(selection.get(key) ?? '') > day;
  const keys = isLater('chosen-on') ? decision : facts.filter(isLater);
  return selection.items.filter((pair) => isScalar(pair.key) && keys.includes(String(pair.key.value)));
}

/** The lines that a pair of a block map takes up. */
function lineOf(pair: Pair, text: string, offset: number): { readonly from: number; readonly to: number } {
  const ends = [pair.key, pair.value].flatMap((node) => (isScalar(node) && node.range ? [node.range] : []));
  const first = Math.min(...ends.map(([from]) => from)) + offset;
  const last = Math.max(...ends.map(([, to]) => to)) + offset;
  return { from: text.lastIndexOf('\n', first) + 1, to: text.indexOf('\n', last) + 1 };
}
