import { shade } from './color.js';
import type { Face, Repeat } from './repeat.js';
import type { Stuff } from './stuff.js';

/** Folded seams of sheet metal, where a repeat is given: its width from seam to seam. The rest is one sheet. */
export function seams({ base, repeat }: Stuff): Repeat | undefined {
  if (repeat === undefined) return undefined;
  const height = 12;
  const left = repeat * 0.6;
  const stripe = (from: number, to: number, fill: string, opacity?: number): Face => ({
    outline: [
      [left + from, 0],
      [left + to, 0],
      [left + to, height],
      [left + from, height],
    ],
    fill,
    ...(opacity === undefined ? {} : { opacity }),
  });
  const marks = [
    stripe(0, 0.35, shade(base, 0.12)),
    stripe(0.35, 0.8, shade(base, -0.07)),
    stripe(0.8, 1.4, shade(base, -0.18), 0.7),
  ];
  return { width: repeat, height, ground: base, marks, digits: 2 };
}
