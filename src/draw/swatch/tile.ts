import type { Corner } from './canvas.js';
import { isOther, mix, shade } from './color.js';
import type { Face, Repeat } from './repeat.js';
import { toneBy, tonesOf, type Bond, type Stuff } from './stuff.js';

/** So many tiles a repeat, about: enough that tones do not line up, few enough to be small to write. */
const mostTiles = 36;

/** The last color is the grout when it is another thing than the first; else it is a tone of the tile. */
function glazed({ colors, base }: Stuff): { readonly colors: readonly string[]; readonly grout: string } {
  const last = colors.at(-1)!;
  if (colors.length > 1 && isOther(base, last)) return { colors: colors.slice(0, -1), grout: last };
  return { colors, grout: mix(shade(base, -0.12), '#a8a59d', 0.4) };
}

/** The record's size and bond; else the repeat is a tile's width, and its height and bond are those of the common size of that width:
 *  4 x 4, 3 x 6, 3 x 9, 12 x 12, 12 x 24. */
export function tile(stuff: Stuff): Repeat {
  const { facts, repeat = 6 } = stuff;
  const [ratio, usual] = usualOf(repeat);
  const [wide, high] = facts.size ?? [repeat, repeat * ratio];
  const bond = facts.bond ?? (facts.size === undefined ? usual : 'stack');
  if (facts.turn === 45) return diagonal(tiled(stuff, wide, high, bond, true));
  const upright = tiled(stuff, wide, high, bond, false);
  return facts.turn === 90 ? quarterTurned(upright) : upright;
}

function usualOf(inches: number): readonly [ratio: number, bond: Bond] {
  if (inches < 5) return [1, 'stack'];
  if (inches <= 8) return [1 / 2, 'half'];
  if (inches <= 10) return [1 / 3, 'half'];
  return inches <= 16 ? [1, 'stack'] : [1 / 2, 'third'];
}

const rowsOfBond: Readonly<Record<Bond, number>> = { stack: 1, half: 2, third: 3 };

/** Tiles in rows; square as a whole where it is to be turned, at the cost of a few hundredths of a tile's height. */
function tiled(stuff: Stuff, wide: number, high: number, bond: Bond, isSquare: boolean): Repeat {
  const { random } = stuff;
  const { colors, grout } = glazed(stuff);
  const every = rowsOfBond[bond];
  const [columns, rows] = countsOf(wide, high * every, isSquare ? mostTiles / every / 2 : mostTiles / every);
  const tall = isSquare ? (columns * wide) / (rows * every) : high;
  const nextTone = toneBy(random, tonesOf({ colors, random }, 7, 0.014));
  const half = Math.min(0.19, wide * 0.05, tall * 0.08) / 2;
  const edge = Math.min(tall * 0.06, 0.2);
  const light = { fill: shade(stuff.base, 0.09), opacity: 0.7, isNear: true } as const;
  const dark = { fill: shade(stuff.base, -0.12), opacity: 0.5, isNear: true } as const;
  const marks: Face[] = [];
  const edges: Face[] = [];
  for (let row = 0; row < rows * every; row++) {
    for (let column = 0; column < columns; column++) {
      const [left, right] = [(column + row / every) * wide + half, (column + row / every + 1) * wide - half];
      const [bottom, top] = [row * tall + half, (row + 1) * tall - half];
      // Columns beyond the right edge come in again on the left.
      const back = left >= columns * wide ? Math.floor(left / (columns * wide)) * columns * wide : 0;
      marks.push({ outline: box(left - back, bottom, right - back, top), fill: nextTone() });
      edges.push({ outline: box(left - back, top - edge, right - back, top), ...light });
      edges.push({ outline: box(left - back, bottom, right - back, bottom + edge), ...dark });
    }
  }
  return { width: columns * wide, height: rows * every * tall, ground: grout, marks: [...marks, ...edges], digits: 2 };
}

/** Columns and rows (of so high a row) that make about a square and are at most `most` together. */
function countsOf(wide: number, high: number, most: number): readonly [columns: number, rows: number] {
  const side = Math.sqrt(Math.max(1, most) * wide * high);
  const candidates = Array.from({ length: Math.ceil(most) }, (_, index) => index + 1).flatMap((columns) => {
    const rows = Math.max(1, Math.round((columns * wide) / high));
    return columns * rows <= most ? [[columns, rows] as const] : [];
  });
  // How far from square, and how far from the wanted size: the first counts more.
  const worth = ([columns, rows]: readonly [number, number]): number =>
    2 * Math.abs(Math.log((columns * wide) / (rows * high))) + Math.abs(Math.log((columns * wide) / side));
  return candidates.reduce<readonly [number, number]>(
    (best, next) => (worth(next) < worth(best) ? next : best),
    [1, Math.max(1, Math.round(wide / high))],
  );
}

function box(left: number, bottom: number, right: number, top: number): Corner[] {
  return [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
}

function quarterTurned(repeat: Repeat): Repeat {
  const turn = (face: Face): Face => ({
    ...face,
    outline: face.outline.map(([x, y]): Corner => [repeat.height - y, x]),
  });
  return { ...turnedWith(repeat, turn), width: repeat.height, height: repeat.width };
}

/** A square repeat turned by 45 degrees. What repeats by its side along the diagonals repeats by its diagonal along the edges, and twice in that. */
function diagonal(repeat: Repeat): Repeat {
  const side = repeat.width;
  const size = side * Math.SQRT2;
  const turn = (face: Face, shift: number): Face => ({
    ...face,
    outline: face.outline.map(([x, y]): Corner => [(x + shift - y) * Math.SQRT1_2, (x + shift + y) * Math.SQRT1_2]),
  });
  const twice = turnedWith(repeat, (face) => turn(face, 0));
  const again = turnedWith(repeat, (face) => turn(face, side));
  return {
    ...repeat,
    width: size,
    height: size,
    marks: [...twice.marks, ...again.marks],
  };
}

function turnedWith(repeat: Repeat, turn: (face: Face) => Face): Repeat {
  const all = (marks: Repeat['marks']): Repeat['marks'] => marks.map((mark) => ('at' in mark ? mark : turn(mark)));
  return { ...repeat, marks: all(repeat.marks) };
}

/** Six-sided tiles, point up; the size or the repeat is from side to side. */
export function hex(stuff: Stuff): Repeat {
  const { random, facts, repeat = 2 } = stuff;
  const { colors, grout } = glazed(stuff);
  const across = facts.size?.[0] ?? repeat;
  const radius = across / Math.sqrt(3);
  const nextTone = toneBy(random, tonesOf({ colors, random }, 7, 0.016));
  const [columns, rows] = [4, 6];
  const half = Math.min(0.19, across * 0.06) / 2;
  const marks = Array.from({ length: columns * rows }, (_, index): Face => {
    const [row, column] = [Math.floor(index / columns), index % columns];
    return {
      outline: sixSides((column + (row % 2) / 2) * across, row * radius * 1.5, radius - half),
      fill: nextTone(),
    };
  });
  const upright: Repeat = {
    width: columns * across,
    height: rows * radius * 1.5,
    ground: grout,
    marks,
    digits: 2,
  };
  return facts.turn === 90 ? quarterTurned(upright) : upright;
}

function sixSides(x: number, y: number, radius: number): Corner[] {
  return [30, 90, 150, 210, 270, 330].map((degrees): Corner => {
    const turn = (degrees * Math.PI) / 180;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
}
