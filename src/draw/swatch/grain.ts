import { PathBuilder, path, type SvgNode } from '../../base/svg/index.js';
import type { Canvas, Corner } from './canvas.js';
import { shade } from './color.js';

/** A board to grain: a rectangle, and whether its length runs up. */
interface Board {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly isUpright?: boolean;
}

/** A few quiet lines along a board; now and then the arches of a flat-sawn face. One path for each board. */
export function grain(canvas: Canvas, board: Board, color: string, amount = 3): SvgNode[] {
  const { random } = canvas;
  const inside = {
    left: Math.max(0, board.left),
    right: Math.min(canvas.width, board.right),
    top: Math.max(0, board.top),
    bottom: Math.min(canvas.height, board.bottom),
  };
  const isUpright = board.isUpright === true;
  const length = isUpright ? inside.bottom - inside.top : inside.right - inside.left;
  const breadth = isUpright ? inside.right - inside.left : inside.bottom - inside.top;
  if (length < 6 || breadth < 3) return [];
  // Along and across the board, turned onto the picture.
  const at = (along: number, across: number): Corner =>
    isUpright ? [inside.left + across, inside.top + along] : [inside.left + along, inside.top + across];
  const builder = new PathBuilder(1);
  const isArched = breadth > 10 && random.next() < 0.4;
  if (isArched) arches(builder, at, length, breadth, canvas);
  for (let index = 0; index < (isArched ? Math.max(1, amount - 2) : amount); index++) {
    const across = isArched ? random.pick([0.1, 0.9]) * breadth : breadth * random.between(0.12, 0.88);
    const sway = breadth * 0.09;
    const near = (share: number): number =>
      Math.min(breadth * 0.96, Math.max(breadth * 0.04, across + random.between(-sway, sway) * share));
    builder.moveTo(...at(0, near(1)));
    builder.curveTo(...at(length * 0.3, near(1.4)), ...at(length * 0.65, near(1.4)), ...at(length, near(1)));
  }
  return [
    path(builder.data, {
      fill: 'none',
      stroke: shade(color, -0.13),
      'stroke-width': Math.max(0.5, canvas.width / 420),
      opacity: 0.5,
    }),
  ];
}

function arches(
  builder: PathBuilder,
  at: (along: number, across: number) => Corner,
  length: number,
  breadth: number,
  { random }: Canvas,
): void {
  const isFromEnd = random.next() < 0.5;
  const flip = (along: number): number => (isFromEnd ? length - along : along);
  const middle = breadth * random.between(0.42, 0.58);
  const reach = length * random.between(0.45, 0.9);
  const count = breadth > 24 ? 4 : 3;
  for (let index = 0; index < count; index++) {
    const share = 1 - index / (count + 0.4);
    const half = Math.min(middle, breadth - middle) * 0.78 * share;
    const tip = reach * (0.45 + 0.55 * share);
    builder.moveTo(...at(flip(0), middle - half));
    builder.curveTo(
      ...at(flip(tip * 0.55), middle - half),
      ...at(flip(tip * 0.97), middle - half * 0.35),
      ...at(flip(tip), middle),
    );
    builder.curveTo(
      ...at(flip(tip * 0.97), middle + half * 0.35),
      ...at(flip(tip * 0.55), middle + half),
      ...at(flip(0), middle + half),
    );
  }
}

/** A small knot: two rings. */
export function knot(canvas: Canvas, x: number, y: number, size: number, color: string): SvgNode[] {
  if (x - size < 0 || y - size < 0 || x + size > canvas.width || y + size > canvas.height) return [];
  const ring = (scale: number): string => {
    const [a, b] = [size * scale, size * 0.62 * scale];
    return `M${n(x - a)} ${n(y)}A${n(a)} ${n(b)} 0 0 1 ${n(x + a)} ${n(y)}A${n(a)} ${n(b)} 0 0 1 ${n(x - a)} ${n(y)}Z`;
  };
  return [
    path(ring(1), { fill: shade(color, -0.08), opacity: 0.7 }),
    path(ring(0.55), { fill: shade(color, -0.22), opacity: 0.8 }),
  ];
}

function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}
