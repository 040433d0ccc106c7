import type { DraftOpening } from '../opening/draft.js';
import type { Space } from './space.js';
import type { Wall } from './wall.js';

/** Rooms that no opening and no open side joins to the rest, each with one that it may be placed from: nothing else would say where the
 *  house has them. The largest group that hangs together stays where it is. */
export function apartFrom(
  spaces: readonly Space[],
  walls: ReadonlyMap<Space, readonly Wall[]>,
  openings: readonly DraftOpening[],
): ReadonlyMap<Space, Space> {
  const beside = new Map(spaces.map((space) => [space, new Set<Space>()]));
  const join = (one: Space, other: Space): void => {
    beside.get(one)?.add(other);
    beside.get(other)?.add(one);
  };
  for (const [space, around] of walls) for (const { openTo } of around) if (openTo) join(space, openTo);
  for (const { own, other } of openings) if (other) join(own.space, other.space);
  const groups = groupsOf(spaces, beside);
  const [largest, ...others] = groups.toSorted((a, b) => b.length - a.length);
  const anchor = largest?.[0];
  return new Map(others.flatMap(([first]) => (first && anchor ? [[first, anchor] as const] : [])));
}

function groupsOf(
  spaces: readonly Space[],
  beside: ReadonlyMap<Space, ReadonlySet<Space>>,
): readonly (readonly Space[])[] {
  const seen = new Set<Space>();
  return spaces.flatMap((space) => {
    if (seen.has(space)) return [];
    seen.add(space);
    const group = [space];
    for (const member of group) {
      for (const next of beside.get(member) ?? []) {
        if (seen.has(next)) continue;
        seen.add(next);
        group.push(next);
      }
    }
    return [group];
  });
}
