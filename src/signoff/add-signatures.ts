import { parseDocument } from 'yaml';
import type { IssueSignature } from '../core/model/index.js';

/** An issue's record with signatures set down in it. A role that signed before has the newer signature; all else in the record
 *  stays as it was. `text` is a record that was read without errors. */
export function addSignatures(
  text: string,
  known: readonly IssueSignature[],
  added: readonly IssueSignature[],
): string {
  const start = text.indexOf('\n') + 1;
  const end = text.indexOf('\n---', start) + 1;
  const document = parseDocument(text.slice(start, end), { version: '1.2' });
  const kept = known.filter(({ role }) => !added.some((one) => one.role === role));
  document.set('signatures', document.createNode([...kept, ...added]));
  return text.slice(0, start) + document.toString({ lineWidth: 0 }) + text.slice(end);
}
