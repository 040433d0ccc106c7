import type { Corner } from './canvas.js';
import { jointOf } from './boards.js';
import { shade } from './color.js';
import type { Face, Repeat } from './repeat.js';
import { tonesOf, type Stuff } from './stuff.js';

/** Breadths in a block's length, and blocks of each direction one over another in a repeat. */
const [long, lines] = [4, 6] as const;

/** Blocks at 45 degrees, each end against the next block's side. The repeat is a block's breadth. */
export function herringbone(stuff: Stuff): Repeat {
  const { random, base, repeat = 3 } = stuff;
  const gap = Math.max(0.06, repeat * 0.04);
  const tones = tonesOf(stuff, 6, 0.03);
  const marks: Face[] = [];
  const streaks: Face[] = [];
  const add = (x: number, y: number, wide: number, high: number, by: number): void => {
    const fill = shade(random.pick(tones), by);
    marks.push({ outline: block(x, y, wide, high, repeat, gap), fill });
    const share = random.between(0.2, 0.7);
    const streak =
      wide > high
        ? block(x, y + high * share, wide, 0.05 + gap / repeat, repeat, gap)
        : block(x + wide * share, y, 0.05 + gap / repeat, high, repeat, gap);
    streaks.push({ outline: streak, fill: shade(fill, -0.1), opacity: 0.35, isNear: true });
  };
  // On a grid of breadths, cell (x, y) belongs to a lying block when (x - y) mod 2·long is under long, else to a standing one. The grid
  // comes again 2·long further along a line, which is long·√2 across, and one line further, which is √2 up.
  for (let line = 0; line < lines; line++) {
    add(line, line, long, 1, 0.012);
    add(line, line + 1, 1, long, -0.012);
  }
  return {
    width: long * Math.SQRT2 * repeat,
    height: lines * Math.SQRT2 * repeat,
    ground: jointOf(base),
    marks: [...marks, ...streaks],
    digits: 2,
  };
}

function block(x: number, y: number, wide: number, high: number, breadth: number, gap: number): Corner[] {
  const [left, bottom] = [x * breadth, y * breadth];
  const [right, top] = [(x + wide) * breadth - gap, (y + high) * breadth - gap];
  const corners: Corner[] = [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
  return corners.map(([u, v]): Corner => [(u - v) * Math.SQRT1_2, (u + v) * Math.SQRT1_2]);
}
