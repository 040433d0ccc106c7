import type { Book, BookOption, BookRoom } from '../book/index.js';
import type { RecordChange } from './comparison.js';
import type { Pair } from './match.js';

/** Records added, removed, edited or renamed. A rename is followed by the room or option that the record holds, else by
 *  the same text. */
export function compareRecords(from: Book, to: Book, matched: readonly Pair<BookRoom | BookOption>[]): RecordChange[] {
  const before = new Map(from.sources.map((source) => [source.path, source.text]));
  const after = new Map(to.sources.map((source) => [source.path, source.text]));
  const gone = new Map([...before].filter(([path]) => !after.has(path)).map(([path, text]) => [text, path]));
  const renames = new Map<string, string>();
  for (const { from: old, to: now } of matched) {
    if (old && now && old.source !== now.source && !after.has(old.source)) renames.set(now.source, old.source);
  }
  for (const [path, text] of after) {
    const old = gone.get(text);
    if (old !== undefined && !before.has(path) && !renames.has(path)) renames.set(path, old);
  }
  const followed = new Set(renames.values());
  return [...new Set([...before.keys(), ...after.keys()])].sort().flatMap((path): RecordChange[] => {
    if (followed.has(path)) return [];
    const renamedFrom = renames.get(path);
    if (renamedFrom !== undefined) return [{ path, kind: 'renamed', renamedFrom }];
    if (!before.has(path)) return [{ path, kind: 'added' }];
    if (!after.has(path)) return [{ path, kind: 'removed' }];
    return before.get(path) === after.get(path) ? [] : [{ path, kind: 'edited' }];
  });
}
