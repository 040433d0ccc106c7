/** The manual: what every key of every record means, made from the schemas. In: the schemas, records for examples. Out: Markdown, or an
 *  answer in words. Absent: a house's own figures. */
export { referencePages, type ReferencePage } from './markdown.js';
export { explain, type Explained, type Explanation } from './explain.js';
export { meaningOf, plainKey, plainKeys, readPlain, type PlainKey } from './plain-keys.js';
