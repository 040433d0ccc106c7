import { isMap, isNode, isScalar, parseDocument, stringify, type Pair } from 'yaml';
import { splice, type Edit } from '../core/records/index.js';

/** A record with top-level keys of its front matter set to `values`, by splicing: every byte outside these keys stays as it was, remarks
 *  and the other keys' notation too. Keys that are not there come after `after`, in order. `text` is a record that was read
 *  without errors; throws on any other, which is a fault of the program. */
export function spliceKeys(text: string, values: Readonly<Record<string, unknown>>, after: string): string {
  const start = text.indexOf('\n') + 1;
  const end = text.indexOf('\n---', start) + 1;
  const eol = text.slice(0, start).endsWith('\r\n') ? '\r\n' : '\n';
  const document = parseDocument(text.slice(start, end), { version: '1.2' });
  if (document.errors.length > 0 || !isMap(document.contents)) throw new Error('a record to splice is none');
  const pairs = document.contents.items;
  const spanOf = (name: string): readonly [number, number] | undefined => {
    const pair: Pair | undefined = pairs.find(({ key }) => isScalar(key) && key.value === name);
    if (!pair || !isScalar(pair.key) || !pair.key.range) return undefined;
    const stop = isNode(pair.value) && pair.value.range ? pair.value.range[1] : pair.key.range[1] + 1;
    return [start + pair.key.range[0], start + stop];
  };
  const print = (name: string): string =>
    stringify({ [name]: values[name] }, { lineWidth: 0 })
      .trimEnd()
      .replaceAll('\n', eol);
  const names = Object.keys(values);
  const edits = names.flatMap((name): Edit[] => {
    const span = spanOf(name);
    if (!span) return [];
    const [from, to] = span;
    // A list or a map may end at the line break after it.
    const kept = /\s*$/u.exec(text.slice(from, to))?.[0].length ?? 0;
    return [{ from, to: to - kept, text: print(name) }];
  });
  const fresh = names.filter((name) => spanOf(name) === undefined).map((name) => print(name) + eol);
  const anchor = spanOf(after)?.[1];
  const lineEnd = anchor === undefined ? end : text.indexOf('\n', text.slice(0, anchor).trimEnd().length) + 1;
  if (fresh.length > 0) edits.push({ from: lineEnd, to: lineEnd, text: fresh.join('') });
  return splice(text, edits);
}
