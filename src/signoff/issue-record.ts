import { stringify } from 'yaml';
import type { Issue } from '../core/model/index.js';

/** The text of an issue's record, `content/issues/NNN.md`. */
export function issueRecord(issue: Omit<Issue, 'number' | 'origin'>, words: string): string {
  const { purpose, date, commit, digest, rooms, trades, signatures, open = [], anyway, shared, body } = issue;
  const data = {
    purpose,
    date,
    commit,
    digest,
    ...(anyway && { anyway }),
    rooms,
    trades,
    ...(shared && { shared }),
    ...(open.length > 0 && { open }),
    ...(signatures.length > 0 && { signatures }),
  };
  const prose = body === '' ? words : body;
  return `---\n${stringify(data, { lineWidth: 0 })}---\n${prose.trim()}\n`;
}
