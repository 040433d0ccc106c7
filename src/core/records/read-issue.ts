import type { Issue } from '../model/index.js';
import { hasErrors, type Problem } from '../../base/problem/index.js';
import type { Checked } from './checked-record.js';
import type { RawIssue } from './raw/issue.js';

/** An issue's record, as far as it can be read. */
export interface IssueDraft {
  readonly record: Checked<RawIssue>;
  readonly whole?: Issue;
  readonly problems: readonly Problem[];
}

export function readIssue(record: Checked<RawIssue>): IssueDraft {
  const { slug, raw, body, origin, problems } = record;
  if (hasErrors(problems)) return { record, problems };
  const { purpose, date, commit, digest, rooms, trades, signatures = [], open, anyway, shared } = raw;
  return {
    record,
    problems,
    whole: {
      number: Number(slug),
      purpose,
      date,
      commit,
      digest,
      rooms,
      trades,
      signatures,
      ...(open && { open }),
      ...(shared && { shared }),
      ...(anyway && { anyway }),
      ...(raw.void && { void: raw.void }),
      body,
      origin,
    },
  };
}
