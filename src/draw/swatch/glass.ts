import { path, type SvgNode } from '../../base/svg/index.js';
import { block, clip, ground, outlineData, type Corner, type Pattern } from './canvas.js';
import { isOther, lightness, shade } from './color.js';

/** Of a pane and its frame, the pane's: the lightest. */
export function paneColor(colors: readonly string[]): string {
  return colors.reduce((pale, color) => (lightness(color) > lightness(pale) ? color : pale));
}

/** A pane with slanted reflections and an edge. They belong to the pane, not to the glass, so that nothing of it repeats. */
export const glass: Pattern = (canvas) => {
  const { width, height, colors } = canvas;
  const base = paneColor(colors);
  const nodes: SvgNode[] = [ground(canvas, base)];
  const slant = height * 0.6;
  for (const [at, wide, opacity] of [
    [0.08, 0.16, 0.5],
    [0.3, 0.05, 0.4],
    [0.62, 0.2, 0.35],
    [0.88, 0.04, 0.3],
  ] as const) {
    const left = width * at;
    const stripe: Corner[] = [
      [left + slant, 0],
      [left + slant + width * wide, 0],
      [left + width * wide, height],
      [left, height],
    ];
    const inside = clip(stripe, width, height);
    if (inside.length > 2) nodes.push(path(outlineData(inside), { fill: shade(base, 0.09), opacity }));
  }
  const edge = Math.max(1.5, height * 0.035);
  nodes.push(...block(canvas, 0, 0, width, edge, shade(base, -0.12), 0.8));
  nodes.push(...block(canvas, 0, height - edge, width, height, shade(base, -0.2), 0.8));
  const frame = canvas.colors.find((color) => isOther(base, color));
  if (frame !== undefined) {
    nodes.push(...block(canvas, 0, height - edge * 2.6, width, height, frame));
    nodes.push(...block(canvas, 0, height - edge * 2.6, width, height - edge * 2.2, shade(frame, 0.12)));
  }
  return nodes;
};
