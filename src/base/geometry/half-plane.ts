import { patchesFrom } from './patch.js';
import { tidied } from './ring.js';
import { between, nearFeet, type Patch, type Ring, type Xy } from './xy.js';

/** The side of a line where `a·x + b·y + c >= 0`; (a, b) is a unit vector that points into it. */
interface HalfPlane {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** A corner with its distance from the line, set to 0 when it is on it. */
interface Sided {
  readonly point: Xy;
  readonly off: number;
}

/**
 * The part of a patch on one side of a line; concave outlines and holes are allowed and may fall into several patches.
 *
 * Walk each ring and keep the chains that run on the kept side. They start and end on the line. Along the line the shape's
 * stretches open where a chain arrives and close where one departs, so arrivals and departures taken in order along the
 * line pair off one to one; joining each pair closes the rings. Touching corners and edges on the line need no cases
 * of their own: they give pairs of no length.
 */
export function clip(patch: Patch, side: HalfPlane): readonly Patch[] {
  const rings = [patch.outline, ...patch.holes].map((ring) => sided(ring, side));
  const all = rings.flat();
  if (all.every(({ off }) => off >= 0)) return [patch];
  if (all.every(({ off }) => off <= 0)) return [];
  const free: Ring[] = [];
  const chains: Xy[][] = [];
  for (const ring of rings) {
    if (ring.every(({ off }) => off > 0)) free.push(ring.map(({ point }) => point));
    else chains.push(...chainsOf(withCrossings(ring)));
  }
  return patchesFrom([...free, ...joined(chains, side)].map(tidied).filter((ring) => ring.length > 2));
}

export function clipAll(patches: readonly Patch[], side: HalfPlane): readonly Patch[] {
  return patches.flatMap((patch) => clip(patch, side));
}

export function opposite({ a, b, c }: HalfPlane): HalfPlane {
  return { a: -a, b: -b, c: -c };
}

/** The side to the left of the line from `from` to `to`, two different points. */
export function leftOf(from: Xy, to: Xy): HalfPlane {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const a = (from.y - to.y) / length;
  const b = (to.x - from.x) / length;
  return { a, b, c: -(a * from.x + b * from.y) };
}

function sided(ring: Ring, { a, b, c }: HalfPlane): readonly Sided[] {
  return ring.map((point) => {
    const off = a * point.x + b * point.y + c;
    return { point, off: Math.abs(off) < nearFeet ? 0 : off };
  });
}

function withCrossings(ring: readonly Sided[]): readonly Sided[] {
  return ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length] as Sided;
    if (from.off * to.off >= 0) return [from];
    return [from, { point: between(from.point, to.point, from.off / (from.off - to.off)), off: 0 }];
  });
}

/** Runs of corners on the kept side, each with the point on the line where it starts and the one where it ends. */
function chainsOf(ring: readonly Sided[]): readonly Xy[][] {
  const start = ring.findIndex(({ off }) => off <= 0);
  const chains: Xy[][] = [];
  let chain: Xy[] | undefined;
  for (let i = 0; i < ring.length; i += 1) {
    const from = ring[(start + i) % ring.length] as Sided;
    const to = ring[(start + i + 1) % ring.length] as Sided;
    if (from.off <= 0 && to.off <= 0) continue;
    chain ??= [from.point];
    chain.push(to.point);
    if (to.off > 0) continue;
    chains.push(chain);
    chain = undefined;
  }
  return chains;
}

function joined(chains: readonly Xy[][], { a, b }: HalfPlane): readonly Ring[] {
  const along = (point: Xy): number => b * point.x - a * point.y;
  const ends = chains.map((chain, index) => ({ index, at: along(chain[chain.length - 1] as Xy) }));
  const starts = chains.map((chain, index) => ({ index, at: along(chain[0] as Xy) }));
  ends.sort((one, other) => one.at - other.at);
  starts.sort((one, other) => one.at - other.at);
  const next = new Map(ends.map((end, i) => [end.index, (starts[i] as { index: number }).index]));
  const rings: Xy[][] = [];
  while (next.size > 0) {
    const ring: Xy[] = [];
    let index = next.keys().next().value;
    while (index !== undefined && next.has(index)) {
      ring.push(...(chains[index] as Xy[]));
      const following = next.get(index);
      next.delete(index);
      index = following;
    }
    rings.push(ring);
  }
  return rings;
}
