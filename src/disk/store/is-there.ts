import { lstat } from 'node:fs/promises';

/** Is something there by that name, be it a link that leads nowhere? */
export function isThere(path: string): Promise<boolean> {
  return lstat(path).then(
    () => true,
    () => false,
  );
}
