import { mix, shade } from './color.js';
import type { Random } from './random.js';
import type { Repeat } from './repeat.js';
import { Stones } from './stone-face.js';
import { toneBy, tonesOf, type Stuff } from './stuff.js';

/** Width and height of a repeat in usual courses. */
const [wide, tall] = [10.5, 8] as const;

/** Squared stones of several heights in mortar. The wall is made of bands, and a band of blocks that are divided each in another way, so
 *  that courses break every few feet. */
export function ashlar(stuff: Stuff): Repeat {
  const { random, base } = stuff;
  const heights = heightsOf(stuff);
  const mean = heights.reduce((sum, high) => sum + high, 0) / heights.length;
  const width = Math.round(mean * wide * 10) / 10;
  const wall = new Stones(random, base);
  const nextTone = toneBy(random, tonesOf(stuff, 7, 0.04));
  const joint = Math.min(0.45, mean * 0.06);
  const cut = { gap: joint / 2, rough: joint * 0.25, band: 0.1 };
  let bottom = 0;
  for (const band of bandsOf(random, heights, mean * tall)) {
    let left = random.between(0, width);
    let last: Courses | undefined;
    for (const long of lengthsOf(random, width, band.high * 1.9)) {
      const others = band.ways.filter((way) => way !== last);
      last = random.pick(others.length > 0 ? others : band.ways);
      let foot = bottom;
      for (const high of last) {
        let start = left;
        for (const stone of lengthsOf(random, long, high * 2.1)) {
          wall.add({ left: start, right: start + stone, bottom: foot, top: foot + high }, cut, nextTone());
          start += stone;
        }
        foot += high;
      }
      left += long;
    }
    bottom += band.high;
  }
  return { width, height: bottom, ground: mix(shade(base, -0.13), '#a39e94', 0.4), marks: wall.marks };
}

/** Of the record; else by the swatch's repeat, which is a usual stone's length. */
function heightsOf({ facts, repeat = 12 }: Stuff): readonly number[] {
  const told = (facts.courses ?? []).filter((high) => high > 0);
  return told.length > 0 ? told : [repeat / 3, repeat / 2, (repeat * 2) / 3];
}

/** Heights of the stones that stand on one another, from the foot. */
type Courses = readonly number[];

interface Band {
  readonly high: number;
  readonly ways: readonly Courses[];
}

/** Bands that can be divided in more than one way, none twice running, up to about `wanted` inches. */
function bandsOf(random: Random, heights: readonly number[], wanted: number): readonly Band[] {
  const possible = possibleBands(heights);
  const bands: Band[] = [];
  for (let sum = 0; sum < wanted; sum += bands.at(-1)!.high) {
    const others = possible.filter((band) => band !== bands.at(-1));
    bands.push(random.pick(others.length > 0 ? others : possible));
  }
  return bands;
}

function possibleBands(heights: readonly number[]): readonly Band[] {
  const ways: readonly Courses[] = heights.flatMap((one) => [[one], ...heights.map((other) => [one, other])]);
  const highs = [...new Set(ways.map(sumOf))];
  const bands = highs.map((high) => ({ high, ways: ways.filter((way) => sumOf(way) === high) }));
  const broken = bands.filter((band) => band.ways.length > 1);
  return broken.length > 0 ? broken : bands;
}

function sumOf(courses: Courses): number {
  // To the thousandth, since fractions of an inch are not exact.
  return Math.round(courses.reduce((sum, high) => sum + high, 0) * 1000) / 1000;
}

/** Lengths about `usual` that fill the stretch, a single one where it is short. */
function lengthsOf(random: Random, stretch: number, usual: number): readonly number[] {
  const count = Math.max(1, Math.round((stretch / usual) * random.between(0.75, 1.25)));
  const shares = Array.from({ length: count }, () => random.between(0.7, 1.4));
  const sum = shares.reduce((all, share) => all + share, 0);
  return shares.map((share) => (share / sum) * stretch);
}
