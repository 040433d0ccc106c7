import type { ChangeOrder, Issue } from '../../core/model/index.js';
import { problemIn, type Problem } from '../../base/problem/index.js';
import { identityOf } from '../../core/records/index.js';
import { recordsElsewhere } from '../history/index.js';
import { issuedPath } from './read-snapshot.js';
import type { OpenHouse } from './open-house.js';

/** Numbers that this clone and another branch gave to different issues or change orders, each a warning that tells how to mend it. */
export async function checkNumbers(open: OpenHouse): Promise<readonly Problem[]> {
  const { house } = await open.current();
  if (!house) return [];
  const { issues, changes } = house.records;
  if (issues.length + changes.length === 0) return [];
  const own = new Map<string, Issue | ChangeOrder>(
    [...issues, ...changes].map((record) => [record.origin.file, record]),
  );
  const told = new Set<string>();
  return (await recordsElsewhere(open.dir)).flatMap(({ path, text, branch }) => {
    const record = own.get(path);
    if (!record || told.has(path) || sameRecord(record.origin.text, text)) return [];
    told.add(path);
    const [what, files, anew] =
      'digest' in record
        ? ([
            `issue ${record.number}`,
            `${path} ${issuedPath(record.number)}.*`,
            `bookmatch issue --for ${record.purpose}`,
          ] as const)
        : ([`change order ${record.number}`, path, `bookmatch compare ${record.from} ${record.to} --draft`] as const);
    const message = `${what} is another one in ${branch}: two clones gave the same number`;
    const fix = `git merge ${branch}, keep its files (git checkout --theirs ${files}), commit, then make yours anew: ${anew} takes the next number`;
    return [problemIn(record.origin, { line: 1, column: 1 }, 'number-twice', message, { fix, severity: 'warning' })];
  });
}

function sameRecord(a: string, b: string): boolean {
  return identityOf(a.split(/\r?\n/u)) === identityOf(b.split(/\r?\n/u));
}
