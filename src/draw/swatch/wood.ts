import type { SvgNode } from '../../base/svg/index.js';
import { block, ground, type Canvas, type Pattern } from './canvas.js';
import { boardShades, jointOf } from './boards.js';
import { shade } from './color.js';
import { grain, knot } from './grain.js';
import { toneBy } from './stuff.js';

// Near by, wood is its grain, and no board's is another's: so the pictures of boards and planks are drawn as wide as they are, and
// share with the room's only the tones of pieces and the ink of joints.

/** Long boards with a shadow gap and a lit edge. */
export const boards: Pattern = (canvas) => {
  const face = Math.max(canvas.repeat ?? 5.5 * canvas.inch, canvas.height / 12);
  const gap = Math.max(0.8, Math.min(0.16 * canvas.inch, face * 0.06));
  const nodes: SvgNode[] = [ground(canvas, jointOf(canvas.base))];
  const nextTone = toneBy(canvas.random, boardShades(canvas));
  const start = -face * canvas.random.between(0.15, 0.5);
  for (let top = start; top < canvas.height; top += face) {
    nodes.push(...oneBoard(canvas, nextTone(), 0, top, canvas.width, top + face - gap, 3));
  }
  return nodes;
};

/** Floor planks: tight joints, ends staggered. */
export const planks: Pattern = (canvas) => {
  const face = Math.max(canvas.repeat ?? 5 * canvas.inch, canvas.height / 9);
  const gap = Math.max(0.5, canvas.width / 500);
  const nodes: SvgNode[] = [ground(canvas, jointOf(canvas.base))];
  const nextTone = toneBy(canvas.random, boardShades(canvas));
  const length = Math.max(canvas.width * 0.62, face * 5);
  let shift = canvas.random.between(0.1, 0.9);
  for (let top = -face * 0.3; top < canvas.height; top += face) {
    shift = (shift + canvas.random.between(0.3, 0.62)) % 1;
    for (let left = -length * shift; left < canvas.width; left += length) {
      nodes.push(...oneBoard(canvas, nextTone(), left, top, left + length - gap, top + face - gap, 2));
    }
  }
  return nodes;
};

function oneBoard(
  canvas: Canvas,
  color: string,
  left: number,
  top: number,
  right: number,
  bottom: number,
  amount: number,
): SvgNode[] {
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
