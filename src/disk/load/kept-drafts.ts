import { draftLines } from '../../core/compare/index.js';
import type { ChangeLine, ChangeOrder, Netted } from '../../core/model/index.js';
import type { Cents } from '../../base/units/index.js';
import { sharedDigests } from '../../signoff/index.js';
import { contentIds } from '../history/index.js';
import { programDigest } from '../program/index.js';
import { keptResults } from '../store/index.js';
import { loadComparison } from './load-comparison.js';
import type { OpenHouse } from './open-house.js';

/** A change order drafted again from its two versions, as far as it is held against its record. */
export type Redrafted =
  | {
      readonly ok: true;
      readonly money: Cents;
      readonly netted?: Netted;
      readonly lines: readonly (readonly [key: string, money: Cents])[];
    }
  | { readonly ok: false; readonly why: string };

type Line = Pick<ChangeLine, 'room' | 'selection' | 'term' | 'what' | 'from' | 'to'>;

/** What tells a line from the others. Of a term both sides count: what it becomes is what was agreed. */
export function keyOf({ room = '', selection = '', term, what, from = '', to = '' }: Line): string {
  return [room, selection, what, ...(term === undefined ? [] : [term, from, to])].join('\n');
}

/** Drafts change orders again, each for the day it was proposed. What a pair of versions gave is kept in the house folder under the
 *  digests of both, of that day and of the program, so that a long job is not computed anew by every check; versions that cannot be told by a digest
 *  are computed. */
export async function keptDrafts(
  open: OpenHouse,
  orders: readonly ChangeOrder[],
): Promise<(order: ChangeOrder) => Promise<Redrafted>> {
  if (orders.length === 0) return (order) => redraft(open, order);
  const [program, trees] = await Promise.all([
    programDigest(),
    contentIds(
      open.dir,
      orders.flatMap(({ from, to }) => [from, to]),
    ),
  ]);
  const kept = keptResults(open.dir);
  const { house, sources } = await open.current();
  // Commits are read with the shared folders of now.
  const shared = house ? Object.values(sharedDigests(house.records.house.shared, sources)) : [];
  const idOf = async (version: string): Promise<string | undefined> =>
    trees.get(version) ?? (await open.proof(version));
  return async (order) => {
    const [from, to] = [await idOf(order.from), await idOf(order.to)];
    if (program === undefined || from === undefined || to === undefined) return redraft(open, order);
    const key = ['change-order', program, from, to, order.proposedOn, ...shared].join('\n');
    const known = await kept.get(key);
    if (isRedrafted(known)) return known;
    const fresh = await redraft(open, order);
    if (fresh.ok) await kept.put(key, fresh);
    return fresh;
  };
}

async function redraft(open: OpenHouse, { from, to, proposedOn }: ChangeOrder): Promise<Redrafted> {
  const loaded = await loadComparison(open, from, to, proposedOn);
  if (!loaded.ok) return { ok: false, why: loaded.why };
  const { money, netted, lines } = draftLines(loaded.comparison);
  return { ok: true, money, ...(netted && { netted }), lines: lines.map((line) => [keyOf(line), line.money]) };
}

function isRedrafted(value: unknown): value is Redrafted & { readonly ok: true } {
  if (value === null || typeof value !== 'object') return false;
  const { ok, money, netted, lines } = value as Readonly<Record<string, unknown>>;
  const isLine = (line: unknown): boolean =>
    Array.isArray(line) && line.length === 2 && typeof line[0] === 'string' && Number.isSafeInteger(line[1]);
  const isWhole = Number.isSafeInteger(money) && (netted === undefined || isNetted(netted));
  return ok === true && isWhole && Array.isArray(lines) && lines.every(isLine);
}

function isNetted(value: unknown): boolean {
  if (value === null || typeof value !== 'object') return false;
  const sums = value as Readonly<Record<string, unknown>>;
  return ['allowance', 'work', 'markup'].every((key) => Number.isSafeInteger(sums[key]));
}
