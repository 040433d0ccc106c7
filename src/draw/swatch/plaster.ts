import type { Corner } from './canvas.js';
import { lightness, shade } from './color.js';
import type { Face, Mark, Repeat } from './repeat.js';
import type { Stuff } from './stuff.js';

/** Plaster by the size of its relief: under 1 1/2 inches a stipple, under 4 knocked-down islands, above that trowel sweeps; smooth has
 *  no repeat. The second color is the relief's. */
export function plaster(stuff: Stuff): Repeat | undefined {
  const relief = reliefOf(stuff);
  if (!(relief > 0)) return undefined;
  if (relief < 1.5) return stipple(stuff, relief);
  return relief < 4 ? islands(stuff, relief) : sweeps(stuff, relief);
}

/** In inches. Where nothing tells it, a second color that is another tone means a relief. */
function reliefOf({ facts, repeat, unpainted }: Stuff): number {
  const told = facts.relief ?? repeat;
  if (told !== undefined) return told;
  const [first, second] = unpainted;
  return second !== undefined && Math.abs(lightness(second) - lightness(first!)) < 0.035 ? 0 : 3;
}

/** A fine spatter: dots of three sizes with their shadows. */
function stipple({ random, base, colors }: Stuff, relief: number): Repeat {
  const count = 12;
  const step = relief;
  const size = count * step;
  const [lights, shadows]: [Mark[], Mark[]] = [[], []];
  const shadow = shade(colors[1] ?? base, -0.06);
  const light = shade(base, 0.022);
  for (let row = 0; row < count; row++) {
    for (let column = 0; column < count; column++) {
      const at: Corner = [
        (column + 0.5 + random.between(-0.5, 0.5)) * step,
        (row + 0.5 + random.between(-0.5, 0.5)) * step,
      ];
      const wide = random.pick([0.42, 0.58, 0.74]) * step;
      shadows.push({ at: [at[0], at[1] - step * 0.1], size: wide, fill: shadow, opacity: 0.8 });
      lights.push({ at, size: wide, fill: light, isNear: true });
    }
  }
  return { width: size, height: size, ground: base, marks: [...shadows, ...lights] };
}

/** Soft islands, each with its shadow. */
function islands({ random, base }: Stuff, relief: number): Repeat {
  const count = 5;
  const step = relief * 1.3;
  const [shadows, faces]: [Face[], Face[]] = [[], []];
  for (let index = 0; index < count * count; index++) {
    const center: Corner = [
      ((index % count) + random.between(0.15, 0.85)) * step,
      (Math.floor(index / count) + random.between(0.15, 0.85)) * step,
    ];
    const radius = step * random.between(0.2, 0.52);
    const turn = random.between(0, Math.PI);
    const outline = [0, 1, 2, 3, 4].map((corner): Corner => {
      const angle = turn + (corner * Math.PI * 2) / 5;
      const reach = radius * random.between(0.7, 1.15);
      return [center[0] + reach * Math.cos(angle) * 1.15, center[1] + reach * Math.sin(angle) * 0.85];
    });
    const drop = step * 0.045;
    const dropped = outline.map(([x, y]): Corner => [x + drop, y - drop]);
    shadows.push({ outline: dropped, isSoft: true, fill: shade(base, -0.07), opacity: 0.75, isNear: true });
    faces.push({ outline, isSoft: true, fill: shade(base, 0.022) });
  }
  const size = count * step;
  return { width: size, height: size, ground: shade(base, -0.012), marks: [...shadows, ...faces] };
}

/** Passes of a trowel over one another, every third across the others. */
function sweeps({ random, base, colors }: Stuff, relief: number): Repeat {
  const size = Math.max(36, relief * 5.5);
  const dark = colors[1] ?? shade(base, -0.05);
  const pale = shade(base, 0.018);
  // Of two strengths each, so that what crosses shows.
  const looks = [
    { fill: dark, opacity: 0.25 },
    { fill: pale, opacity: 0.4 },
    { fill: dark, opacity: 0.18 },
    { fill: pale, opacity: 0.3 },
  ];
  const pass = (index: number): Face => {
    const x = ((index % across) + random.between(0.1, 0.9)) * (size / across);
    const y = (Math.floor(index / across) + random.between(0.1, 0.9)) * (size / across);
    const turn = random.between(-0.7, 0.7) + (index % 3 === 0 ? Math.PI / 2 : 0);
    const [long, broad] = [relief * random.between(1.4, 2.5), relief * random.between(0.4, 0.7)];
    const bow = broad * random.between(0.3, 0.6);
    const corners: readonly Corner[] = [
      [-long / 2, 0],
      [-long * 0.45, bow],
      [long * 0.42, bow],
      [long / 2, 0],
      [long * 0.46, bow - broad],
      [-long * 0.42, bow - broad],
    ];
    const outline = corners.map(([u, v]): Corner => [
      x + u * Math.cos(turn) - v * Math.sin(turn),
      y + u * Math.sin(turn) + v * Math.cos(turn),
    ]);
    return { outline, isSoft: true, ...random.pick(looks) };
  };
  const places = Array.from({ length: across ** 2 }, (_, index) => index);
  const marks = [
    ...places.map(pass),
    ...[...places, ...places].map((index): Face => ({ ...pass(index), isNear: true })),
  ];
  // Broad passes are placed well enough by the inch.
  return { width: size, height: size, ground: base, marks, digits: relief < 7 ? 1 : 0 };
}

const across = 4;
