/** Handouts as folders of pages. In: handouts. Out: files by path. Absent: a Book, and so any money; the disk that is written. */
export { currentImages } from './current.js';
export { handoutFolders } from './write-handout.js';
