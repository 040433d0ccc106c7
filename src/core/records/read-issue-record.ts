import type { Issue, Source } from '../model/index.js';
import { checkRecord } from './checked-record.js';
import { readFrontMatter } from './front-matter.js';
import type { RawIssue } from './raw/issue.js';
import { readIssue } from './read-issue.js';
import { readPath } from './record-path.js';

/** One issue's record, read without the rest of the house; undefined when it is none or has an error, which `bookmatch check`
 *  tells. */
export function readIssueRecord(source: Source): Issue | undefined {
  const path = readPath(source).value;
  const front = readFrontMatter(source).value;
  if (path?.kind !== 'issues' || !front) return undefined;
  return readIssue(checkRecord<RawIssue>('issue', path.slug, front)).whole;
}
