import { path, type SvgNode } from '../../base/svg/index.js';
import {
  clip,
  clipBy,
  Gathered,
  ground,
  outlineData,
  pieceColor,
  softOutline,
  type Canvas,
  type Corner,
  type Pattern,
} from './canvas.js';
import { mix, shade } from './color.js';

/** Thin ledge stones, dry-stacked: uneven courses, shadows between. */
export const ledge: Pattern = (canvas) => {
  const { random } = canvas;
  const wall = new Wall(canvas, 0.35, 0.16);
  const unit = canvas.height / (canvas.isFine ? 9 : 6);
  for (let top = 0; top < canvas.height;) {
    const high = Math.min(unit * random.pick([0.6, 0.8, 1, 1.3]), canvas.height - top);
    for (let left = -unit * random.between(0, 2.5); left < canvas.width;) {
      const wide = unit * random.between(2, 5.2);
      const isSplit = high > unit * 1.1 && random.next() < 0.4;
      if (isSplit) {
        const share = random.between(0.4, 0.6);
        wall.add(left, top, left + wide, top + high * share);
        wall.add(left, top + high * share, left + wide, top + high);
      } else wall.add(left, top, left + wide, top + high);
      left += wide;
    }
    top += Math.max(high, 1);
  }
  return [ground(canvas, shade(canvas.base, -0.32)), ...wall.nodes()];
};

/** Squared stones of several heights in mortar. */
export const ashlar: Pattern = (canvas) => {
  const { random } = canvas;
  const mortar = mix(shade(canvas.base, 0.05), '#b9b4aa', 0.65);
  const wall = new Wall(canvas, 0.2, 0.1);
  const unit = canvas.height / (canvas.isFine ? 8 : 5);
  const joint = Math.max(0.9, unit * 0.075);
  const columns = Math.ceil(canvas.width / unit) + 1;
  const rows = Math.ceil(canvas.height / unit);
  const taken = new Set<number>();
  // A grid filled with stones of one to four by one or two cells.
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      if (taken.has(row * 1000 + column)) continue;
      const [wanted, high] = random.pick([
        [2, 1],
        [3, 1],
        [2, 2],
        [3, 2],
        [4, 1],
        [2, 1],
        [1, 1],
      ] as const);
      let wide = 0;
      while (wide < wanted && column + wide < columns && !taken.has(row * 1000 + column + wide)) wide++;
      const tall = row + high <= rows && cellsFree(taken, row + 1, column, wide, high - 1) ? high : 1;
      for (let down = 0; down < tall; down++)
        for (let across = 0; across < wide; across++) taken.add((row + down) * 1000 + column + across);
      const [left, top] = [column * unit - unit * 0.4, row * unit];
      wall.add(left + joint / 2, top + joint / 2, left + wide * unit - joint / 2, top + tall * unit - joint / 2);
    }
  }
  return [ground(canvas, mortar), ...wall.nodes()];
};

function cellsFree(taken: ReadonlySet<number>, row: number, column: number, wide: number, high: number): boolean {
  for (let down = 0; down < high; down++)
    for (let across = 0; across < wide; across++) if (taken.has((row + down) * 1000 + column + across)) return false;
  return true;
}

/** Stones with uneven edges, a lit top and a shaded foot. Lights and shadows of all stones are one path each. */
class Wall {
  private readonly faces = new Gathered();
  private readonly lit: string[] = [];
  private readonly shaded: string[] = [];

  constructor(
    private readonly canvas: Canvas,
    private readonly rough: number,
    private readonly band: number,
  ) {}

  add(left: number, top: number, right: number, bottom: number): void {
    const { random, width, height, isFine } = this.canvas;
    const wobble = (bottom - top) * this.rough * 0.22;
    const gap = Math.max(0.6, (bottom - top) * 0.05);
    const jitter = (): number => random.between(0, wobble);
    const middle = random.between(0.3, 0.7);
    const corners: Corner[] = [
      [left + gap + jitter(), top + gap + jitter()],
      [left + (right - left) * middle, top + gap + jitter() * 0.6],
      [right - gap - jitter(), top + gap + jitter()],
      [right - gap - jitter() * 0.5, (top + bottom) / 2],
      [right - gap - jitter(), bottom - gap - jitter()],
      [left + (right - left) * (1 - middle), bottom - gap - jitter() * 0.6],
      [left + gap + jitter(), bottom - gap - jitter()],
    ];
    const face = clip(corners, width, height);
    if (face.length < 3) return;
    this.faces.add(pieceColor(this.canvas, 0.05), outlineData(face));
    const band = (bottom - top) * this.band;
    const [a, b, c, , d, e, f] = corners as [Corner, Corner, Corner, Corner, Corner, Corner, Corner];
    const down = ([x, y]: Corner, by: number): Corner => [x, y + by];
    const light = clip([a, b, c, down(c, band), down(b, band * 0.7), down(a, band)], width, height);
    if (light.length > 2) this.lit.push(outlineData(light));
    const foot = clip([f, e, d, down(d, -band), down(e, -band * 1.3), down(f, -band * 0.8)], width, height);
    if (isFine && foot.length > 2) this.shaded.push(outlineData(foot));
  }

  nodes(): SvgNode[] {
    const { base } = this.canvas;
    const lit = this.lit.length > 0 ? [path(this.lit.join(''), { fill: shade(base, 0.22), opacity: 0.3 })] : [];
    const shaded =
      this.shaded.length > 0 ? [path(this.shaded.join(''), { fill: shade(base, -0.3), opacity: 0.22 })] : [];
    return [...this.faces.nodes(), ...lit, ...shaded];
  }
}

/** Rounded field stones in mortar: cells around scattered centers, drawn in from their edges. */
export const cobble: Pattern = (canvas) => {
  const mortar = mix(shade(canvas.base, -0.1), '#8f8a80', 0.6);
  const nodes: SvgNode[] = [ground(canvas, mortar)];
  const lights: string[] = [];
  const size = Math.sqrt((canvas.width * canvas.height) / (canvas.isFine ? 36 : 18));
  for (const { center, corners } of cells(canvas, size)) {
    const color = pieceColor(canvas, 0.055);
    const drawn = corners.map(([x, y]): Corner => [
      center[0] + (x - center[0]) * 0.93,
      center[1] + (y - center[1]) * 0.93,
    ]);
    nodes.push(path(softOutline(drawn), { fill: color }));
    const light = drawn.map(([x, y]): Corner => [
      center[0] + (x - center[0]) * 0.68 - size * 0.05,
      center[1] + (y - center[1]) * 0.6 - size * 0.1,
    ]);
    lights.push(softOutline(clip(light, canvas.width, canvas.height)));
  }
  nodes.push(path(lights.join(''), { fill: shade(canvas.base, 0.2), opacity: 0.22 }));
  return nodes;
};

/** Cells nearest to jittered centers, each cut by the bisectors to its neighbours. */
function cells(canvas: Canvas, size: number): { center: Corner; corners: Corner[] }[] {
  const { random, width, height } = canvas;
  const centers: Corner[] = [];
  let row = 0;
  for (let y = size * 0.1; y < height + size * 0.4; y += size * 0.9) {
    for (let x = (row % 2) * size * 0.5 - size * 0.1; x < width + size * 0.4; x += size) {
      centers.push([x + random.between(-0.32, 0.32) * size, y + random.between(-0.3, 0.3) * size]);
    }
    row++;
  }
  return centers.flatMap((center) => {
    let corners: Corner[] = [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ];
    for (const other of centers) {
      if (other === center || Math.hypot(other[0] - center[0], other[1] - center[1]) > size * 3) continue;
      const middle: Corner = [(center[0] + other[0]) / 2, (center[1] + other[1]) / 2];
      corners = clipBy(
        corners,
        ([x, y]) => (x - middle[0]) * (center[0] - other[0]) + (y - middle[1]) * (center[1] - other[1]),
      );
    }
    corners = unrepeated(corners, size * 0.1);
    if (corners.length < 3) return [];
    const inside: Corner = [
      corners.reduce((sum, [x]) => sum + x, 0) / corners.length,
      corners.reduce((sum, [, y]) => sum + y, 0) / corners.length,
    ];
    return [{ center: inside, corners }];
  });
}

/** Corners without those that are almost on the one before. */
function unrepeated(corners: readonly Corner[], near: number): Corner[] {
  return corners.filter(([x, y], index) => {
    const [beforeX, beforeY] = corners[(index + corners.length - 1) % corners.length]!;
    return Math.hypot(x - beforeX, y - beforeY) > near;
  });
}
