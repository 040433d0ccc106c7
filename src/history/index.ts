/** Git. In: a house folder and a version. Out: the records at that version, or why they cannot be had; files committed. Absent:
 *  any other writing to the repository. */
export { commitFiles } from './commit-files.js';
export { readVersion } from './read-version.js';
export type { VersionFiles } from './read-version.js';
export { workingTree } from './working-tree.js';
