import { limits } from '../limits.js';
import { PartRefused } from '../refused.js';
import { add, crossed, dot, less, size, type Xyz } from '../xyz.js';
import type { Loop } from './curve.js';

/** A flat face: its outline, then its holes, which turn the other way. */
export type Face = readonly Loop[];

/** What one item of a body is made of. Those of one body may touch: each is closed by itself. */
export type Solid = readonly Face[];

/** A body's faces, each turned so that it goes counter-clockwise seen from outside, and what they enclose in cubic feet. */
export interface Body {
  readonly faces: readonly Face[];
  readonly volume: number;
}

/** Twice a face's area, as a vector that stands on it. */
export function normalOf(face: Face): Xyz {
  const origin = face[0]?.[0] ?? { x: 0, y: 0, z: 0 };
  let sum: Xyz = { x: 0, y: 0, z: 0 };
  for (const loop of face) {
    loop.forEach((place, index) => {
      const next = loop[(index + 1) % loop.length] as Xyz;
      sum = add(sum, crossed(less(place, origin), less(next, origin)));
    });
  }
  return sum;
}

/** A face of loops that turn as they come: the largest is its outline. */
export function faceOf(loops: readonly Loop[]): Face {
  const [outline, ...others] = loops.toSorted((a, b) => size(normalOf([b])) - size(normalOf([a])));
  if (!outline) return [];
  const normal = normalOf([outline]);
  return [outline, ...others.map((hole) => (dot(normalOf([hole]), normal) > 0 ? hole.toReversed() : hole))];
}

/** Turns faces alike, since some programs write them as they come: two that share an edge run along it opposite ways. Throws PartRefused
 *  where nothing is enclosed. */
export function bodyOf(solids: readonly Solid[]): Body {
  let volume = 0;
  const alike = solids.flatMap(shellsOf).flatMap((shell) => {
    const enclosed = volumeOf(shell);
    volume += Math.abs(enclosed);
    return enclosed < 0 ? shell.map(turned) : shell;
  });
  if (!(volume > 1e-6)) throw new PartRefused('its body encloses nothing');
  return { faces: few(alike), volume };
}

/** Stops before a body grows past what is worth reading. */
export function few<T>(faces: readonly T[]): readonly T[] {
  if (faces.length > limits.faces) throw new PartRefused(`its body has more than ${limits.faces} faces`);
  return faces;
}

function turned(face: Face): Face {
  return face.map((loop) => loop.toReversed());
}

/** Sum of the pyramids from one corner to each face, which is exact for flat faces. */
function volumeOf(faces: readonly Face[]): number {
  const origin = faces[0]?.[0]?.[0] ?? { x: 0, y: 0, z: 0 };
  let sum = 0;
  for (const face of faces) {
    const at = face[0]?.[0];
    if (at) sum += dot(less(at, origin), normalOf(face));
  }
  return sum / 6;
}

/** Corners of one edge that two faces write apart, in feet: an eighth of a millimetre. */
const grain = 1 / 2400;

/** A face on the other side of an edge. */
interface Beside {
  readonly face: number;
  /** Both are seen from outside, or both from inside. */
  readonly isAlike: boolean;
}

/** Faces that hang together by edges, each shell turned as its first face is. */
function shellsOf(faces: Solid): readonly Solid[] {
  const beside = besideOf(faces);
  const flips = new Map<number, boolean>();
  return faces.flatMap((_, first) => {
    if (flips.has(first)) return [];
    flips.set(first, false);
    const shell: Face[] = [];
    const waiting = [first];
    for (let here = waiting.pop(); here !== undefined; here = waiting.pop()) {
      const isTurned = flips.get(here) === true;
      const face = faces[here] as Face;
      shell.push(isTurned ? turned(face) : face);
      for (const { face: next, isAlike } of beside[here] ?? []) {
        if (flips.has(next)) continue;
        flips.set(next, isTurned === isAlike);
        waiting.push(next);
      }
    }
    return [shell];
  });
}

/** An edge of two faces tells; one of three or more, where bodies touch, does not. */
function besideOf(faces: readonly Face[]): readonly (readonly Beside[])[] {
  const shared = new Map<string, { readonly face: number; readonly isAhead: boolean }[]>();
  faces.forEach((face, index) => {
    for (const loop of face) {
      const keys = loop.map(({ x, y, z }) => [x, y, z].map((figure) => Math.round(figure / grain)).join());
      keys.forEach((from, corner) => {
        const to = keys[(corner + 1) % keys.length] as string;
        if (from === to) return;
        const edge = from < to ? `${from} ${to}` : `${to} ${from}`;
        const sides = shared.get(edge) ?? [];
        if (sides.length === 0) shared.set(edge, sides);
        sides.push({ face: index, isAhead: from < to });
      });
    }
  });
  const beside = faces.map((): Beside[] => []);
  for (const [one, other, ...more] of shared.values()) {
    if (!one || !other || more.length > 0) continue;
    const isAlike = one.isAhead !== other.isAhead;
    beside[one.face]?.push({ face: other.face, isAlike });
    beside[other.face]?.push({ face: one.face, isAlike });
  }
  return beside;
}
