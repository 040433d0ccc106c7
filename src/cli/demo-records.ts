import type { Source } from '../core/model/index.js';
import { programPath } from '../disk/program/index.js';
import { readHouseFolder } from '../disk/store/index.js';

/** The records of the demo house, which is the program's own content/: examples, and the conventions that a new house begins with. */
export async function demoRecords(): Promise<readonly Source[]> {
  return (await readHouseFolder(programPath('.'))).files;
}
