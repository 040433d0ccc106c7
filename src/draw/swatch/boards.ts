import type { Corner } from './canvas.js';
import { shade } from './color.js';
import type { Face, Repeat } from './repeat.js';
import { toneBy, tonesOf, type Stuff } from './stuff.js';

const tones = 6;
const courses = 8;

/** Tones of boards, on cards and in rooms. The first of a stream's numbers, so that both find the same. */
export function boardShades(stuff: Pick<Stuff, 'colors' | 'random'>): readonly string[] {
  return tonesOf(stuff, tones, 0.03);
}

/** The ink between boards. */
export function jointOf(base: string): string {
  return shade(base, -0.26);
}

/** Boards whose layout is not known: courses along x, one end joint in each 12 feet. The repeat is a board's face. */
export function boards(stuff: Stuff): Repeat {
  return coursesOf(stuff, { face: stuff.repeat ?? 5.5, long: 144, pieces: 1, gap: 0.2 });
}

/** Planks whose layout is not known: courses along x, ends staggered. The repeat is a plank's face. */
export function planks(stuff: Stuff): Repeat {
  return coursesOf(stuff, { face: stuff.repeat ?? 5, long: 120, pieces: 2, gap: 0.14 });
}

interface Courses {
  readonly face: number;
  readonly long: number;
  readonly pieces: number;
  readonly gap: number;
}

function coursesOf(stuff: Stuff, { face, long, pieces, gap }: Courses): Repeat {
  const { random, base } = stuff;
  const nextTone = toneBy(random, boardShades(stuff));
  const marks: Face[] = [];
  let start = random.between(0, long);
  for (let course = 0; course < courses; course++) {
    // Ends stand at least a sixth of the length from those of the course below.
    start = (start + long * random.between(0.17, 0.42)) % long;
    const cut = random.between(0.4, 0.6);
    const ends = pieces === 1 ? [0, 1] : [0, cut, 1];
    ends.slice(1).forEach((end, index) => {
      const [left, right] = [start + ends[index]! * long, start + end * long - gap];
      const [bottom, top] = [course * face, (course + 1) * face - gap];
      marks.push({
        outline: [
          [left, bottom],
          [right, bottom],
          [right, top],
          [left, top],
        ],
        fill: nextTone(),
      });
    });
  }
  return { width: long, height: courses * face, ground: jointOf(base), marks };
}

/** Along a timber: a few streaks of its grain. The repeat is the timber's depth. */
export function timberFace({ random, base, colors, repeat = 8 }: Stuff): Repeat {
  const [long, deep] = [60, Math.max(2, repeat)];
  const fill = colors[1] ?? shade(base, -0.13);
  const marks = Array.from({ length: 7 }, (_, index): Face => {
    const [left, right] = [random.between(0, long), random.between(24, 48)];
    const y = ((index + random.between(0.2, 0.8)) / 7) * deep;
    const thick = random.between(0.2, 0.35);
    const bow = random.between(-0.3, 0.3);
    const outline: readonly Corner[] = [
      [left, y],
      [left + right / 2, y + bow],
      [left + right, y],
      [left + right / 2, y + bow + thick * 2],
    ];
    return { outline, isSoft: true, fill, opacity: 0.45 };
  });
  return { width: long, height: deep, ground: base, marks };
}
