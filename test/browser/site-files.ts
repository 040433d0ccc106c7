import { readdirSync } from 'node:fs';
import { basename, join, relative, sep } from 'node:path';

/** Pages in a folder, as paths with `/`, sorted. */
export function htmlFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

/** One page of each kind: every page at the top, of each folder the longest, and of what a room has beside its page the longest by name. */
export function onePageOfEachKind(pages: readonly string[], sizeOf: (page: string) => number): string[] {
  const kinds = new Map<string, string>();
  for (const page of pages) {
    const folder = page.split('/').slice(0, -1);
    const [first = ''] = folder;
    const isOfRoom = first === 'rooms' && folder.length > 1;
    const kind = folder.length === 0 ? page : isOfRoom ? basename(page) : first;
    const best = kinds.get(kind);
    if (best === undefined || sizeOf(page) > sizeOf(best)) kinds.set(kind, page);
  }
  return [...kinds.values()];
}
