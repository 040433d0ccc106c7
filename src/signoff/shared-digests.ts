import type { Source } from '../core/model/index.js';
import { isShared } from '../core/records/index.js';
import { canonicalJson, digestOfBytes } from './digest/index.js';

/** SHA-256 of what each shared folder gives a house: its records that stand, by their paths, as canonical JSON (RFC 8785). By the folder's
 *  way from the house folder; a folder that gives nothing has the digest of nothing. */
export function sharedDigests(
  folders: readonly string[],
  sources: readonly Source[],
): Readonly<Record<string, string>> {
  const shared = sources.filter(({ path }) => isShared(path));
  return Object.fromEntries(
    folders.map((folder) => {
      const own = shared.filter(({ path }) => path.startsWith(`${folder}/`)).map(({ path, text }) => ({ path, text }));
      const sorted = own.toSorted((a, b) => (a.path < b.path ? -1 : 1));
      return [folder, digestOfBytes(new TextEncoder().encode(canonicalJson(sorted)))];
    }),
  );
}
