import { shade } from './color.js';
import type { Random } from './random.js';
import type { Repeat } from './repeat.js';
import { Stones, type Cut } from './stone-face.js';
import { toneBy, tonesOf, type Stuff } from './stuff.js';

/** So many stones a repeat, that it stays small to write. */
const stones = 60;
/** So many courses a repeat at most: thinner ones than anybody lays come again sooner. */
const mostCourses = 24;
const [moldedWidth, moldedHeight] = [48, 36];

/** Ledge stones in uneven courses, with shadows between. Molded ones come again after 4 feet. */
export function ledge(stuff: Stuff): Repeat {
  return stuff.facts.shapes === undefined ? natural(stuff) : molded(stuff, stuff.facts.shapes);
}

function natural(stuff: Stuff): Repeat {
  const { random, base } = stuff;
  const heights = heightsOf(stuff);
  const mean = heights.reduce((sum, high) => sum + high, 0) / heights.length;
  const width = Math.round(Math.max(16, Math.min(72, Math.sqrt(stones * mean * lengthOf(mean) * 1.25))));
  const courses = coursesOf(random, heights, width * 0.8);
  const wall = new Stones(random, base);
  const nextTone = toneBy(random, tonesOf(stuff, 8, 0.045));
  const lowest = Math.min(...heights);
  const height = courses.reduce((sum, high) => sum + high, 0);
  let bottom = 0;
  for (const high of courses) {
    // Long stones low.
    const longer = 1.2 - 0.4 * (bottom / height);
    let left = random.between(0, width);
    for (const long of lengthsOf(random, width, lengthOf(high) * longer)) {
      const beds = split(random, high, lowest);
      beds.forEach(([from, to]) => {
        wall.add({ left, right: left + long, bottom: bottom + from, top: bottom + to }, cutOf(to - from), nextTone());
      });
      left += long;
    }
    bottom += high;
  }
  return { width, height, ground: shade(base, -0.32), marks: wall.marks };
}

/** Even courses of few shapes, in another order in each. */
function molded(stuff: Stuff, shapes: number): Repeat {
  const { random, base } = stuff;
  const heights = heightsOf(stuff);
  const wall = new Stones(random, base);
  const nextTone = toneBy(random, tonesOf(stuff, 5, 0.035));
  const perHeight = Math.max(2, Math.round(shapes / heights.length));
  const sum = heights.reduce((all, high) => all + high, 0);
  const inSet = heights.reduce((all, high) => all + moldedWidth / lengthOf(high), 0);
  const times = Math.min(Math.round(moldedHeight / sum), Math.ceil(stones / inSet));
  const courses = Array.from({ length: Math.max(1, times) }, () => heights).flat();
  let bottom = 0;
  for (const high of courses) {
    const wanted = Array.from({ length: perHeight }, (_, index) => lengthOf(high) * (0.7 + (0.7 * index) / perHeight));
    let left = random.between(0, moldedWidth);
    for (const long of filled(random, wanted, moldedWidth)) {
      const bed = { left, right: left + long, bottom, top: bottom + high };
      wall.add(bed, { gap: 0.1, rough: 0.06, band: 0.16 }, nextTone());
      left += long;
    }
    bottom += high;
  }
  return { width: moldedWidth, height: bottom, ground: shade(base, -0.28), marks: wall.marks };
}

/** Of the record, else by the swatch's repeat, which is the tallest stone's or a panel's. */
function heightsOf({ facts, repeat = 5 }: Stuff): readonly number[] {
  const told = (facts.courses ?? []).filter((high) => high > 0);
  return told.length > 0 ? told : [0.4, 0.55, 0.75, 1].map((share) => share * repeat);
}

/** A stone's usual length by its height: low ones are longer for it. */
function lengthOf(high: number): number {
  return 4 + high * 2.3;
}

function cutOf(high: number): Cut {
  return { gap: 0.06 + high * 0.035, rough: high * 0.08, band: 0.16 };
}

/** Heights in no order, none twice running, up to about `wanted` inches. */
function coursesOf(random: Random, heights: readonly number[], wanted: number): readonly number[] {
  const courses: number[] = [];
  for (let sum = 0; sum < wanted && courses.length < mostCourses; sum += courses.at(-1)!) {
    const others = heights.filter((high) => high !== courses.at(-1));
    courses.push(random.pick(others.length > 0 ? others : heights));
  }
  return courses;
}

/** Lengths about `usual` that fill the width. */
function lengthsOf(random: Random, width: number, usual: number): readonly number[] {
  const count = Math.max(2, Math.round(width / usual));
  const shares = Array.from({ length: count }, () => random.between(0.55, 1.5));
  const sum = shares.reduce((all, share) => all + share, 0);
  return shares.map((share) => (share / sum) * width);
}

/** Wanted lengths one after another, all stretched alike to fill the width. */
function filled(random: Random, wanted: readonly number[], width: number): readonly number[] {
  const lengths: number[] = [];
  for (let sum = 0; sum < width - wanted[0]! / 2; sum += lengths.at(-1)!) lengths.push(random.pick(wanted));
  const sum = lengths.reduce((all, long) => all + long, 0);
  return lengths.map((long) => (long / sum) * width);
}

/** A tall course has now and then two low stones, one on the other. */
function split(random: Random, high: number, lowest: number): readonly (readonly [from: number, to: number])[] {
  if (high < lowest * 2 || random.next() > 0.18) return [[0, high]];
  const at = random.between(0.4, 0.6) * high;
  return [
    [0, at],
    [at, high],
  ];
}
