import { problemAt, type Problem } from '../../base/problem/index.js';
import { printDay, type IsoDate } from '../../base/units/index.js';
import type { OpenHouse } from './open-house.js';

/** Proposed change orders whose last day is past, as warnings. */
export async function checkValid(open: OpenHouse, on: IsoDate): Promise<readonly Problem[]> {
  const { house } = await open.current();
  return (house?.records.changes ?? []).flatMap(({ number, state, validUntil, origin }) => {
    if (state !== 'proposed' || validUntil === undefined || validUntil >= on) return [];
    const message = `change order ${number} was valid until ${printDay(validUntil)} and nobody decided it`;
    const fix = `draft it anew at today’s prices, and void this one: bookmatch void ${number} --by "…" --why "…"`;
    return [problemAt(origin, ['valid-until'], 'change-expired', message, { fix, severity: 'warning' })];
  });
}
