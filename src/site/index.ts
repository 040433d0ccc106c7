/** The book as pages. In: a Book and a folder. Out: `book/` in that folder, static pages that open from disk; likewise
 *  `comparison/` for what lies between two Books. Absent: arithmetic; every figure is the Book's own. */
export { writeComparison, writeManual, writeSite } from './write-site.js';
export type { ManualText } from './manual.js';
export type { Beside } from './view.js';
export { currentFile, currentScript, handoutFolders } from './handout/index.js';
