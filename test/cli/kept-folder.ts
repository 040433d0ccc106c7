import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';

/** A folder as it stood, empty folders too, to be written down again as often as it is wanted. */
export class KeptFolder {
  readonly #folders: readonly string[];
  readonly #files: ReadonlyMap<string, Uint8Array>;

  constructor(dir: string) {
    const entries = readdirSync(dir, { recursive: true, withFileTypes: true }).map((entry) => ({
      path: relative(dir, join(entry.parentPath, entry.name)),
      isFolder: entry.isDirectory(),
    }));
    this.#folders = entries.filter(({ isFolder }) => isFolder).map(({ path }) => path);
    this.#files = new Map(
      entries.filter(({ isFolder }) => !isFolder).map(({ path }) => [path, readFileSync(join(dir, path))]),
    );
  }

  writeTo(dir: string): void {
    for (const path of this.#folders) mkdirSync(join(dir, path), { recursive: true });
    for (const [path, bytes] of this.#files) writeFileSync(join(dir, path), bytes);
  }
}
