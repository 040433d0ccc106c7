/** Records at a git version. In: a house folder and a version. Out: its files, or why they cannot be had. Absent: any
 *  writing to the repository. */
export { readVersion } from './read-version.js';
export type { VersionFiles } from './read-version.js';
export { workingTree } from './working-tree.js';
