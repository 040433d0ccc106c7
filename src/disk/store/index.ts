/** The disk. In: a folder or a path. Out: a house's files as text, or files written whole. Absent: what is in the files. */
export { houseFolders } from './house-folders.js';
export { isHouseFolder, readHouseFolder, type HouseFolder } from './read-house-folder.js';
export type { ReadBefore } from './read-folder.js';
export { keptResults, type KeptResults } from './kept-results.js';
export { readShared } from './read-shared.js';
export { makeFolder } from './make-folder.js';
export { liesInside } from './lies-inside.js';
export { oneAtATime } from './one-at-a-time.js';
export { readListFile, readWorkbook, workbookKind } from './read-list-file.js';
export { readFileInside } from './read-file.js';
export { finishBegun, makeInPlace, makeStage, partsIn, putInPlace, writeTogether, type Begun } from './put-in-place.js';
export { readPhotoFile } from './read-photo-file.js';
export { finishReplaced } from './replaced.js';
export { readsAlike, traceReads, type Read } from './reads.js';
export { treeDigest } from './tree-digest.js';
export { writeAtomically } from './write-atomically.js';
export { writeNew } from './write-new.js';
export { refuseTaken, writeNewFolder } from './write-new-folder.js';
export {
  outputMark,
  OutputRefused,
  outputWords,
  refuseForeign,
  replaceFolder,
  writeTree,
  type TreeFile,
} from './write-tree.js';
