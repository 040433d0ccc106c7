/** The book as pages. In: a Book and a folder. Out: `book/` in that folder, static pages that open from disk; likewise
 *  `comparison/` for what lies between two Books. Absent: arithmetic; every figure is the Book's own. */
export { writeComparison, writeManual, writeSite } from './write-site.js';
export type { ManualText } from './manual.js';
export { housesFiles } from './houses.js';
export { assetCopies } from './assets.js';
export { besidePages, bookPages, tryScript, type BookFile } from './book-files.js';
export { makeView, type Beside, type View } from './view.js';
export { diffLines, plainLines } from './record-lines.js';
export { Shell } from './shell.js';
export { bookSet } from './chapters.js';
export { checkPath, relativeLink, type Page } from './page.js';
export { choicePaths, optionPath, pagePaths, photoFile, recordPath, roomPath } from './paths.js';
export type { Desk } from './sheet-context.js';
export { currentImages, handoutFolders } from './handout/index.js';
