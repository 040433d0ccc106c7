/** The book as pages. In: a Book and a folder. Out: `book/` in that folder, static pages that open from disk. Absent:
 *  arithmetic; every figure is the Book's own. */
export { writeSite } from './write-site.js';
export type { WrittenPage } from './write-site.js';
