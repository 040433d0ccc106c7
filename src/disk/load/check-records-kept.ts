import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { problemIn, type Problem } from '../../base/problem/index.js';
import { recordNumber } from '../../base/units/index.js';
import type { OpenHouse } from './open-house.js';

/** Issues and change orders of which `issued/` has the snapshot or the paper, and that have no record any more, as warnings. Of those before
 *  the last record the gap in the numbers tells already. */
export async function checkRecordsKept(open: OpenHouse): Promise<readonly Problem[]> {
  const { house } = await open.current();
  if (!house) return [];
  const { issues, changes } = house.records;
  const names = await readdir(join(open.dir, 'issued')).catch(() => []);
  return [
    ...lost(names, /^(\d{3,})\.json$/u, issues, { what: 'issue', folder: 'issues' }),
    ...lost(names, /^change-(\d{3,})\.pdf$/u, changes, { what: 'change order', folder: 'changes' }),
  ];
}

function lost(
  names: readonly string[],
  pattern: RegExp,
  records: readonly { readonly number: number }[],
  { what, folder }: { readonly what: string; readonly folder: string },
): readonly Problem[] {
  const last = Math.max(0, ...records.map(({ number }) => number));
  return names.toSorted().flatMap((name): readonly Problem[] => {
    const number = Number(pattern.exec(name)?.[1] ?? 0);
    if (number <= last) return [];
    const file = `content/${folder}/${recordNumber(number)}.md`;
    const message = `${what} ${number} is missing: issued/${name} is there, and its record is not`;
    const fix = `git restore ${file} brings it back; where that is committed, git log -- ${file} says since when`;
    return [problemIn({ file, text: '' }, { line: 1, column: 1 }, 'number-gap', message, { fix, severity: 'warning' })];
  });
}
