import { counterClockwise, reversed, signedArea, type Patch, type Ring } from '../../src/base/geometry/index.js';

/** Seeded random numbers in [0, 1): mulberry32, so that a run can be had again. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A star-shaped outline, mostly concave, with corners on whole inches, 4 to 24 ft across. */
export function star(random: () => number, centre = { x: 15, y: 12 }, reach = 12): Ring {
  const count = 4 + Math.floor(random() * 8);
  const ring = Array.from({ length: count }, (_, i) => {
    const angle = ((i + 0.2 + 0.6 * random()) / count) * 2 * Math.PI;
    const radius = reach * (0.25 + 0.75 * random());
    return { x: inch(centre.x + radius * Math.cos(angle)), y: inch(centre.y + radius * Math.sin(angle)) };
  });
  return signedArea(ring) > 1 ? counterClockwise(ring) : star(random, centre, reach);
}

/** A star with, mostly, a smaller one cut out of its middle. */
export function holed(random: () => number): Patch {
  const outline = star(random);
  const hole = random() < 0.7 ? [reversed(star(random, { x: 15, y: 12 }, 2.5))] : [];
  return { outline, holes: hole };
}

function inch(feet: number): number {
  return Math.round(feet * 12) / 12;
}
