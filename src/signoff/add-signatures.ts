import type { IssueSignature } from '../core/model/index.js';
import { spliceKeys } from '../core/records/index.js';

/** An issue's record with signatures set down in it. A role that signed before has the newer signature; all else in the record
 *  stays as it was. `text` is a record that was read without errors. */
export function addSignatures(
  text: string,
  known: readonly IssueSignature[],
  added: readonly IssueSignature[],
): string {
  const kept = known.filter(({ role }) => !added.some((one) => one.role === role));
  return spliceKeys(text, { signatures: [...kept, ...added] }, 'trades');
}
