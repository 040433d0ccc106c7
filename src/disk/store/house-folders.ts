import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { byText } from '../../base/units/index.js';
import { isHouseFolder } from './read-house-folder.js';

/** The house folders one or two levels below a folder, as paths from it with `/`, in their order. Nothing is looked for below a house, in folders whose
 *  names begin with a dot, or behind links that are no house themselves. Rejects when the disk refuses to list a folder. */
export async function houseFolders(dir: string): Promise<readonly string[]> {
  return (await housesIn(dir, '', 2)).toSorted(byText);
}

async function housesIn(dir: string, below: string, levels: number): Promise<string[]> {
  const entries = await readdir(join(dir, below), { withFileTypes: true });
  const found: string[] = [];
  for (const entry of entries) {
    if (entry.name.startsWith('.') || entry.name === 'node_modules') continue;
    const path = below === '' ? entry.name : `${below}/${entry.name}`;
    if (await isHouseFolder(join(dir, path))) found.push(path);
    else if (entry.isDirectory() && levels > 1) found.push(...(await housesIn(dir, path, levels - 1)));
  }
  return found;
}
