import { extentOf, overlaps, turnedBox, type Convex, type Extent, type Spot } from '../convex.js';
import { isInside, spotsInside } from '../inside.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';
import { textWidth, type Weight } from '../text-width.js';

interface Line {
  readonly words: string;
  readonly size: number;
  readonly weight: Weight;
  readonly color: 'text' | 'accent';
}

/** Of a line's size, from one baseline to the next, and what of it stands over the baseline. */
const leading = 1.22;
const rise = 0.72;
/** Free paper around a label, in points. */
const air = 1.5;

/** A room's name over its number where it finds room free of doors and of what stands there, upright before turned, whole before the
 *  number alone; clear of what hangs over the room where that can be. With `numbers`, the number alone. */
export function drawName(
  sheet: Sheet,
  outline: readonly Spot[],
  { number, name, over }: { readonly number: string; readonly name: string; readonly over: readonly Convex[] },
  numbers: boolean,
): void {
  const spots = spotsInside(outline);
  const isFree = sheet.freeWithin(outline);
  const room = extentOf(outline);
  const { named, figure } = formsOf(number, name);
  const tried = [
    ...(numbers ? [] : [0, -90].flatMap((turn) => named.map((lines) => ({ lines, turn })))),
    ...[0, -90].map((turn) => ({ lines: [figure], turn })),
  ];
  for (const { lines, turn } of tried) {
    const boxAt = boxOf(lines, turn);
    if (!isWithin(extentOf(boxAt([0, 0])), room)) continue;
    const free = (place: Spot): boolean => {
      const box = boxAt(place);
      return box.every((corner) => isInside(corner, outline)) && isFree(box, 0.5);
    };
    const clear = (place: Spot): boolean => free(place) && !over.some((one) => overlaps(one, boxAt(place)));
    const spot = (over.length > 0 ? spots.find(clear) : undefined) ?? spots.find(free);
    if (spot) return write(sheet, spot, lines, turn);
  }
  // Better over a line than unnamed.
  const numberAt = boxOf([figure], 0);
  const spot = spots.find((place) => isFree(numberAt(place), 0, true)) ?? spots[0];
  if (spot) write(sheet, spot, [figure], 0);
}

function formsOf(
  number: string,
  name: string,
): { readonly named: readonly (readonly Line[])[]; readonly figure: Line } {
  const figure: Line = { words: number, size: sizes.dimension, weight: 600, color: 'accent' };
  const called = (words: readonly string[]): Line[] =>
    words.map((line) => ({ words: line, size: sizes.name, weight: 600, color: 'text' }));
  const halves = inTwo(name);
  return { named: [[...called([name]), figure], ...(halves ? [[...called(halves), figure]] : [])], figure };
}

/** At the space nearest to the middle. */
function inTwo(name: string): readonly [string, string] | undefined {
  const spaces = [...name.matchAll(/ /gu)].map(({ index }) => index);
  const middle = name.length / 2;
  const [at] = spaces.toSorted((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  return at === undefined ? undefined : [name.slice(0, at), name.slice(at + 1)];
}

function sizeOf(lines: readonly Line[]): { readonly width: number; readonly height: number } {
  const width = Math.max(...lines.map(({ words, size, weight }) => textWidth(words, size, weight)));
  const height = lines.reduce((sum, { size }, index) => sum + size * (index === 0 ? rise : leading), 0);
  return { width, height };
}

/** Whether one box is small enough for another, wherever it lies. */
function isWithin(one: Extent, other: Extent): boolean {
  return one.right - one.left <= other.right - other.left && one.bottom - one.top <= other.bottom - other.top;
}

/** The box of a label about any place. */
function boxOf(lines: readonly Line[], turn: number): (place: Spot) => readonly Spot[] {
  const { width, height } = sizeOf(lines);
  const [w, h] = [width + 2 * air, height + 2 * air];
  return (place) => turnedBox(place, -w / 2, -h / 2, w, h, turn);
}

function write(sheet: Sheet, [x, y]: Spot, lines: readonly Line[], turn: number): void {
  const { height } = sizeOf(lines);
  let down = -height / 2;
  lines.forEach(({ words, size, weight, color }, index) => {
    down += size * (index === 0 ? rise : leading);
    const at: Spot = turn === 0 ? [x, y + down] : [x + down, y];
    sheet.write(at, words, { size, weight, color, turn, ground: 'paper' });
  });
}
