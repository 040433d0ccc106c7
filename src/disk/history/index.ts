/** Git. In: a house folder and a version. Out: the records at that version, or why they cannot be had; what differs in pairs of
 *  texts; files committed. Absent: any other writing to the repository. */
export { git, gitVersion } from './git.js';
export { beginHistory } from './begin-history.js';
export { isCommitted } from './is-committed.js';
export { commitFiles } from './commit-files.js';
export { contentIds } from './content-ids.js';
export { diffTexts } from './diff-texts.js';
export { isWithin } from './is-within.js';
export { nextNumber, recordsElsewhere, type Numbered } from './numbers-used.js';
export { readVersion } from './read-version.js';
export { workingTree } from './working-tree.js';
