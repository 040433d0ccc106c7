import { PartRefused } from '../refused.js';
import { add, dot, less, times, type Xyz } from '../xyz.js';
import { withoutRepeats, type Loop } from './curve.js';
import { faceOf, normalOf, type Face, type Solid } from './face.js';

/** What lies on the side of a plane that `way`, a unit vector, points to. */
export interface HalfSpace {
  readonly on: Xyz;
  readonly way: Xyz;
}

/** Nearer to the plane than this, in feet, is on it. */
const near = 1e-7;

/** A body without a half-space. Throws PartRefused where what is cut cannot be closed. */
export function cutAway(faces: Solid, { on, way }: HalfSpace): Solid {
  const off = (place: Xyz): number => {
    const distance = dot(less(place, on), way);
    return Math.abs(distance) < near ? 0 : distance;
  };
  const kept = faces.flatMap((face) => {
    const loops = face.map((loop) => withoutRepeats(below(loop, off))).filter((loop) => loop.length > 2);
    // What is left of a face that lies in the plane itself, and looks the way that is cut away, is not closed again.
    return loops.length === 0 ? [] : [loops];
  });
  const open = edgesOn(kept, off);
  const caps = closed(open);
  if (caps.length === 0) return kept;
  const cap = faceOf(caps);
  return [...kept, dot(normalOf(cap), way) < 0 ? cap.map((loop) => loop.toReversed()) : cap];
}

/** The part of a loop that is kept, its ends joined along the plane. */
function below(loop: Loop, off: (place: Xyz) => number): Loop {
  return loop.flatMap((from, index) => {
    const to = loop[(index + 1) % loop.length] as Xyz;
    const [start, end] = [off(from), off(to)];
    const crossing = start * end < 0 ? [add(from, times(less(to, from), start / (start - end)))] : [];
    return start <= 0 ? [from, ...crossing] : crossing;
  });
}

/** Edges in the plane that only one face has, the other way round: the border of what closes the body. */
function edgesOn(faces: readonly Face[], off: (place: Xyz) => number): ReadonlyMap<string, readonly [Xyz, Xyz]> {
  const open = new Map<string, readonly [Xyz, Xyz]>();
  for (const loop of faces.flat()) {
    loop.forEach((from, index) => {
      const to = loop[(index + 1) % loop.length] as Xyz;
      if (Math.abs(off(from)) > near || Math.abs(off(to)) > near) return;
      const back = `${keyOf(from)} ${keyOf(to)}`;
      if (!open.delete(back)) open.set(`${keyOf(to)} ${keyOf(from)}`, [to, from]);
    });
  }
  return open;
}

function keyOf({ x, y, z }: Xyz): string {
  return [x, y, z].map((figure) => Math.round(figure / 1e-5)).join();
}

/** Edges joined into loops. */
function closed(edges: ReadonlyMap<string, readonly [Xyz, Xyz]>): readonly Loop[] {
  const leaving = new Map<string, (readonly [Xyz, Xyz])[]>();
  for (const edge of edges.values()) {
    const key = keyOf(edge[0]);
    leaving.set(key, [...(leaving.get(key) ?? []), edge]);
  }
  const loops: Loop[] = [];
  for (const [start, ends] of leaving) {
    while (ends.length > 0) {
      const loop: Xyz[] = [];
      let key = start;
      do {
        const next = leaving.get(key)?.pop();
        if (!next) throw new PartRefused('what its half-space cuts off does not close');
        loop.push(next[0]);
        key = keyOf(next[1]);
      } while (key !== start);
      if (loop.length > 2) loops.push(loop);
    }
  }
  return loops;
}
