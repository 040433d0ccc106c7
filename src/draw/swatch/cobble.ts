import { clipBy, type Corner } from './canvas.js';
import { mix, shade } from './color.js';
import type { Repeat } from './repeat.js';
import { toneBy, tonesOf, type Stuff } from './stuff.js';

const [columns, rows] = [5, 5] as const;

/** Rounded field stones in mortar: cells around scattered centers, drawn in from their edges. The repeat is a usual stone. */
export function cobble(stuff: Stuff): Repeat {
  const { random, base, repeat = 7 } = stuff;
  const size = Math.max(1, repeat);
  const [width, height] = [columns * size, rows * size * 0.9];
  const nextTone = toneBy(random, tonesOf(stuff, 8, 0.05));
  const cells = cellsOf(stuff, size, width, height);
  const faces = cells.map(({ center, corners }) => ({
    outline: corners.map((corner) => toward(center, corner, 0.93, 0.93)),
    isSoft: true,
    fill: nextTone(),
  }));
  const lights = cells.map(({ center, corners }) => ({
    outline: corners.map((corner) => {
      const [x, y] = toward(center, corner, 0.68, 0.6);
      return [x - size * 0.05, y + size * 0.1] as const;
    }),
    isSoft: true,
    fill: shade(base, 0.2),
    opacity: 0.22,
    isNear: true as const,
  }));
  return { width, height, ground: mix(shade(base, -0.1), '#8f8a80', 0.6), marks: [...faces, ...lights] };
}

function toward(center: Corner, [x, y]: Corner, across: number, up: number): Corner {
  return [center[0] + (x - center[0]) * across, center[1] + (y - center[1]) * up];
}

interface Cell {
  readonly center: Corner;
  readonly corners: readonly Corner[];
}

/** Cells nearest to jittered centers, each cut by the bisectors to its neighbors, those across the edges too. */
function cellsOf({ random }: Stuff, size: number, width: number, height: number): readonly Cell[] {
  const centers = Array.from({ length: rows * columns }, (_, index): Corner => {
    const [row, column] = [Math.floor(index / columns), index % columns];
    return [
      (column + (row % 2) / 2 + random.between(-0.32, 0.32)) * size,
      (row + random.between(-0.33, 0.33)) * size * 0.9,
    ];
  });
  const all = [-1, 0, 1].flatMap((up) =>
    [-1, 0, 1].flatMap((right) => centers.map(([x, y]): Corner => [x + right * width, y + up * height])),
  );
  return centers.map((center) => {
    const reach = size * 2;
    const start: Corner[] = [
      [center[0] - reach, center[1] - reach],
      [center[0] + reach, center[1] - reach],
      [center[0] + reach, center[1] + reach],
      [center[0] - reach, center[1] + reach],
    ];
    const near = all.filter(([x, y]) => {
      const away = Math.hypot(x - center[0], y - center[1]);
      return away > 0 && away < size * 3;
    });
    const corners = unrepeated(
      near.reduce((kept, other) => clipBy(kept, sideOf(center, other)), start),
      size * 0.22,
    );
    return { center: middleOf(corners), corners };
  });
}

/** Positive on the center's side of the line half way to the other. */
function sideOf(center: Corner, other: Corner): (corner: Corner) => number {
  const [middleX, middleY] = [(center[0] + other[0]) / 2, (center[1] + other[1]) / 2];
  return ([x, y]) => (x - middleX) * (center[0] - other[0]) + (y - middleY) * (center[1] - other[1]);
}

function middleOf(corners: readonly Corner[]): Corner {
  return [
    corners.reduce((sum, [x]) => sum + x, 0) / corners.length,
    corners.reduce((sum, [, y]) => sum + y, 0) / corners.length,
  ];
}

/** Corners without those that are almost on the one before. */
function unrepeated(corners: readonly Corner[], near: number): Corner[] {
  return corners.filter(([x, y], index) => {
    const [beforeX, beforeY] = corners[(index + corners.length - 1) % corners.length]!;
    return Math.hypot(x - beforeX, y - beforeY) > near;
  });
}
