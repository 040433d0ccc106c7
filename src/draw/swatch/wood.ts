import type { SvgNode } from '../../base/svg/index.js';
import { block, ground, piece, pieceColor, type Canvas, type Corner, type Pattern } from './canvas.js';
import { shade } from './color.js';
import { grain, knot } from './grain.js';

/** Long boards with a shadow gap and a lit edge. */
export const boards: Pattern = (canvas) => {
  const face = Math.max(canvas.repeat ?? 5.5 * canvas.inch, canvas.height / 12);
  const gap = Math.max(0.8, Math.min(0.16 * canvas.inch, face * 0.06));
  const nodes: SvgNode[] = [ground(canvas, shade(canvas.base, -0.3))];
  const start = -face * canvas.random.between(0.15, 0.5);
  for (let top = start; top < canvas.height; top += face) {
    nodes.push(...oneBoard(canvas, 0, top, canvas.width, top + face - gap, 3));
  }
  return nodes;
};

/** Floor planks: tight joints, ends staggered. */
export const planks: Pattern = (canvas) => {
  const face = Math.max(canvas.repeat ?? 5 * canvas.inch, canvas.height / 9);
  const gap = Math.max(0.5, canvas.width / 500);
  const nodes: SvgNode[] = [ground(canvas, shade(canvas.base, -0.24))];
  const length = Math.max(canvas.width * 0.62, face * 5);
  let shift = canvas.random.between(0.1, 0.9);
  for (let top = -face * 0.3; top < canvas.height; top += face) {
    shift = (shift + canvas.random.between(0.3, 0.62)) % 1;
    for (let left = -length * shift; left < canvas.width; left += length) {
      nodes.push(...oneBoard(canvas, left, top, left + length - gap, top + face - gap, 2));
    }
  }
  return nodes;
};

function oneBoard(canvas: Canvas, left: number, top: number, right: number, bottom: number, amount: number): SvgNode[] {
  const color = pieceColor(canvas, 0.022);
  const nodes = block(canvas, left, top, right, bottom, color);
  if (nodes.length === 0) return [];
  nodes.push(...grain(canvas, { left, top, right, bottom }, color, canvas.isFine ? amount : 1));
  if (canvas.isFine && canvas.random.next() < 0.16) {
    const size = Math.min((bottom - top) * 0.14, 4.5);
    nodes.push(
      ...knot(
        canvas,
        canvas.random.between(Math.max(left, 0), Math.min(right, canvas.width)),
        canvas.random.between(top + size * 2, bottom - size * 2),
        size,
        color,
      ),
    );
  }
  const light = Math.max(0.5, canvas.width / 400);
  nodes.push(...block(canvas, left, top, right, top + light, shade(color, 0.07), 0.8));
  nodes.push(...block(canvas, left, bottom - light, right, bottom, shade(color, -0.1), 0.6));
  return nodes;
}

/** Blocks at 45 degrees, each end against the next block's side. */
export const herringbone: Pattern = (canvas) => {
  const breadth = Math.max(canvas.repeat ?? 3 * canvas.inch, canvas.width / 18);
  const long = 4;
  const gap = Math.max(0.5, breadth * 0.035);
  const nodes: SvgNode[] = [ground(canvas, shade(canvas.base, -0.24))];
  const turn = Math.SQRT1_2;
  const middle: Corner = [canvas.width / 2, canvas.height / 2];
  const place = ([x, y]: Corner): Corner => [middle[0] + (x - y) * turn, middle[1] + (x + y) * turn];
  const reach = Math.ceil(Math.hypot(canvas.width, canvas.height) / breadth) + long;
  // On a grid of breadths, cell (x, y) belongs to a lying block when (x - y) mod 2·long is under long, else to a standing one.
  for (let line = -reach; line <= reach; line++) {
    for (let turnNumber = -3; turnNumber <= 3; turnNumber++) {
      const lying = line + 2 * long * turnNumber;
      if (Math.abs(lying) <= reach)
        nodes.push(...oneBlock(canvas, place, lying * breadth, line * breadth, long * breadth, breadth, gap));
      const standing = line - 2 * long + 1 + 2 * long * turnNumber;
      if (Math.abs(standing) <= reach)
        nodes.push(...oneBlock(canvas, place, line * breadth, standing * breadth, breadth, long * breadth, gap));
    }
  }
  return nodes;
};

function oneBlock(
  canvas: Canvas,
  place: (corner: Corner) => Corner,
  x: number,
  y: number,
  width: number,
  height: number,
  gap: number,
): SvgNode[] {
  const corners: Corner[] = [
    [x, y],
    [x + width - gap, y],
    [x + width - gap, y + height - gap],
    [x, y + height - gap],
  ];
  const placed = corners.map(place);
  const color = shade(pieceColor(canvas, 0.03), width > height ? 0.012 : -0.012);
  const nodes = piece(canvas, placed, color);
  if (nodes.length === 0) return [];
  if (canvas.isFine) {
    const streak = (share: number): Corner[] => {
      const thin = Math.min(width, height) * 0.05;
      return width > height
        ? [
            [x, y + height * share],
            [x + width - gap, y + height * share],
            [x + width - gap, y + height * share + thin],
            [x, y + height * share + thin],
          ]
        : [
            [x + width * share, y],
            [x + width * share + thin, y],
            [x + width * share + thin, y + height - gap],
            [x + width * share, y + height - gap],
          ];
    };
    nodes.push(...piece(canvas, streak(canvas.random.between(0.2, 0.7)).map(place), shade(color, -0.1), 0.35));
  }
  return nodes;
}
