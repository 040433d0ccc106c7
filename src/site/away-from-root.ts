import { parse } from 'node:path';
import process from 'node:process';
import { pagesRoot } from './assets.js';

/** Has Eleventy work where its paths are right: 3.1 takes a letter too many off each where one stands in the root of the disk, as a container does that was told nothing else.
 *  Paths that are given to it are absolute. */
export async function awayFromRoot<T>(work: () => Promise<T>): Promise<T> {
  const here = process.cwd();
  if (here !== parse(here).root) return work();
  process.chdir(pagesRoot);
  try {
    return await work();
  } finally {
    process.chdir(here);
  }
}
