import { patchesFrom } from './patch.js';
import { samePlace, tidied } from './ring.js';
import { cross, distance, minus, nearFeet, type Patch, type Ring, type Xy } from './xy.js';

/**
 * Makes one clean shape of patches that meet along edges, and of outlines whose holes touch them: shared edges vanish,
 * a hole at the border becomes a notch. Patches must not overlap.
 *
 * Every edge is cut at the corners that lie on it; two edges that run the same way back and forth cancel; what is left is
 * followed with the shape on the left, turning left as far as can be, so that parts that only touch come apart.
 */
export function weld(patches: readonly Patch[]): readonly Patch[] {
  const places: Xy[] = [];
  const rings = patches.flatMap(({ outline, holes }) => [outline, ...holes]).map((ring) => ring.map(placeIn(places)));
  const leaving = remainingEdges(rings, places);
  const traced: Ring[] = [];
  for (const [start, ends] of leaving) {
    while (ends.length > 0) traced.push(trace(start, leaving, places));
  }
  return patchesFrom(traced.map(tidied).filter((ring) => ring.length > 2));
}

/** Index of a place, the same for places nearer than any tape can tell. */
function placeIn(places: Xy[]): (point: Xy) => number {
  return (point) => {
    const known = places.findIndex((place) => samePlace(place, point));
    return known >= 0 ? known : places.push(point) - 1;
  };
}

function remainingEdges(rings: readonly (readonly number[])[], places: readonly Xy[]): Map<number, number[]> {
  const leaving = new Map<number, number[]>();
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i += 1) {
      const stops = stopsBetween(ring[i] as number, ring[(i + 1) % ring.length] as number, places);
      for (let k = 1; k < stops.length; k += 1) add(stops[k - 1] as number, stops[k] as number, leaving);
    }
  }
  return leaving;
}

function add(from: number, to: number, leaving: Map<number, number[]>): void {
  const back = leaving.get(to);
  const opposed = back?.indexOf(from) ?? -1;
  if (back && opposed >= 0) {
    back.splice(opposed, 1);
    return;
  }
  const ends = leaving.get(from);
  if (ends) ends.push(to);
  else leaving.set(from, [to]);
}

/** Both ends of an edge and every place on it, in order. */
function stopsBetween(from: number, to: number, places: readonly Xy[]): readonly number[] {
  const [a, b] = [places[from] as Xy, places[to] as Xy];
  const length = distance(a, b);
  const stops: { place: number; at: number }[] = [];
  places.forEach((point, place) => {
    if (place === from || place === to) return;
    const off = cross(minus(b, a), minus(point, a)) / length;
    const at = (minus(point, a).x * (b.x - a.x) + minus(point, a).y * (b.y - a.y)) / length;
    if (Math.abs(off) < nearFeet && at > 0 && at < length) stops.push({ place, at });
  });
  stops.sort((one, other) => one.at - other.at);
  return [from, ...stops.map(({ place }) => place), to];
}

function trace(start: number, leaving: Map<number, number[]>, places: readonly Xy[]): Ring {
  const ring: Xy[] = [];
  let [before, here] = [undefined as number | undefined, start];
  do {
    ring.push(places[here] as Xy);
    const ends = leaving.get(here);
    if (!ends || ends.length === 0) return [];
    const choice = before === undefined ? 0 : leftmost(places[before] as Xy, places[here] as Xy, ends, places);
    const [next] = ends.splice(choice, 1);
    [before, here] = [here, next as number];
  } while (here !== start);
  return ring;
}

function leftmost(before: Xy, here: Xy, ends: readonly number[], places: readonly Xy[]): number {
  const into = minus(here, before);
  let [best, most] = [0, -Infinity];
  ends.forEach((end, i) => {
    const out = minus(places[end] as Xy, here);
    const turn = Math.atan2(cross(into, out), into.x * out.x + into.y * out.y);
    if (turn > most) [best, most] = [i, turn];
  });
  return best;
}
