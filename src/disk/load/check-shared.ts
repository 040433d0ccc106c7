import { problemAt, type Problem } from '../../base/problem/index.js';
import { counted } from '../../base/units/index.js';
import { isShared } from '../../core/records/index.js';
import { sharedDigests } from '../../signoff/index.js';
import type { OpenHouse } from './open-house.js';

/** Shared folders that give other records than when the house was last issued, each a notice with how many. */
export async function checkShared(open: OpenHouse): Promise<readonly Problem[]> {
  const { house, sources } = await open.current();
  const last = house?.records.issues.findLast((issue) => !issue.void);
  if (!house || !last?.shared) return [];
  const { shared, origin } = house.records.house;
  const now = sharedDigests(shared, sources);
  const moved = shared.filter((folder) => last.shared?.[folder] !== now[folder]);
  if (moved.length === 0) return [];
  const snapshot = await open.snapshot(last);
  const then = new Map(snapshot.ok ? snapshot.sources.map(({ path, text }) => [path, text]) : []);
  const texts = new Map(sources.map(({ path, text }) => [path, text]));
  const paths = [...new Set([...then.keys(), ...texts.keys()])].filter(isShared);
  return moved.map((folder) => {
    const changed = paths.filter((path) => path.startsWith(`${folder}/`) && then.get(path) !== texts.get(path));
    const count = snapshot.ok ? `: ${counted(changed.length, 'record')}` : '';
    const message = `${folder} is not as it was in issue ${last.number}${count}`;
    const fix = `bookmatch compare issue-${last.number} says what that moves`;
    const severity = 'notice';
    return problemAt(origin, ['shared', shared.indexOf(folder)], 'shared-changed', message, { fix, severity });
  });
}
