/** Where things are in the book. In: rooms, options, selections and what else has a page or an anchor. Out: paths in the book's folder, links from page to
 *  page, and where places of sheets lead. Runs in a browser. Absent: pages. */
export * from './paths.js';
export { agreedCode, isAgreedAt } from './printed-codes.js';
export { placeLinks } from './place-links.js';
export { relativeLink } from './relative-link.js';
