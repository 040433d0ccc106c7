import { path, type SvgNode } from '../../base/svg/index.js';
import {
  block,
  blockData,
  clip,
  Gathered,
  ground,
  outlineData,
  pieceShades,
  type Canvas,
  type Corner,
  type Pattern,
} from './canvas.js';
import { isOther, lightness, mix, shade } from './color.js';

/** The last colour is the grout when it is another thing than the first; else it is a tone of the tile. */
function glazed(canvas: Canvas): { readonly tiles: Canvas; readonly grout: string } {
  const { colors } = canvas;
  const last = colors.at(-1)!;
  if (colors.length > 1 && isOther(canvas.base, last))
    return { tiles: { ...canvas, colors: colors.slice(0, -1) }, grout: last };
  return { tiles: canvas, grout: mix(shade(canvas.base, -0.12), '#a8a59d', 0.4) };
}

/** The repeat is a tile's width; its height and bond are those of the common size of that width: 4 x 4, 3 x 6, 3 x 9, 12 x 12, 12 x 24. */
export const tile: Pattern = (canvas) => {
  const { tiles, grout } = glazed(canvas);
  const inches = (canvas.repeat ?? 6 * canvas.inch) / canvas.inch;
  // Not more than some 150 tiles, so that the picture stays small.
  const wide = Math.max(canvas.repeat ?? 6 * canvas.inch, canvas.width / (inches <= 8 ? 9.5 : 12));
  const [ratio, offset] = bondOf(inches);
  const high = wide * ratio;
  const joint = Math.max(0.9, Math.min(canvas.inch * 0.19, wide * 0.05));
  const shades = pieceShades(tiles, 7, 0.02);
  const [faces, lights, shadows] = [new Gathered(), new Gathered(), new Gathered()];
  const edge = Math.max(0.6, Math.min(high * 0.05, 1.6));
  let row = 0;
  for (let top = -high * 0.35; top < canvas.height; top += high) {
    for (let left = -wide * (0.2 + ((row * offset) % 1)); left < canvas.width; left += wide) {
      const [right, bottom] = [left + wide - joint, top + high - joint];
      faces.add(canvas.random.pick(shades), blockData(canvas, left, top, right, bottom));
      lights.add(shade(tiles.base, 0.09), blockData(canvas, left, top, right, top + edge));
      shadows.add(shade(tiles.base, -0.12), blockData(canvas, left, bottom - edge, right, bottom));
    }
    row++;
  }
  return [ground(canvas, grout), ...faces.nodes(), ...lights.nodes(0.7), ...shadows.nodes(0.5)];
};

function bondOf(inches: number): readonly [ratio: number, offset: number] {
  if (inches < 5) return [1, 0];
  if (inches <= 8) return [1 / 2, 1 / 2];
  if (inches <= 10) return [1 / 3, 1 / 2];
  return inches <= 16 ? [1, 0] : [1 / 2, 1 / 3];
}

/** Six-sided tiles, point up. */
export const hex: Pattern = (canvas) => {
  const { tiles, grout } = glazed(canvas);
  const across = Math.max(canvas.repeat ?? 2 * canvas.inch, canvas.width / 15);
  const radius = across / Math.sqrt(3);
  const joint = Math.max(0.8, across * 0.045);
  const shades = pieceShades(tiles, 7, 0.024);
  const faces = new Gathered();
  let row = 0;
  for (let y = 0; y < canvas.height + radius; y += radius * 1.5) {
    for (let x = row % 2 === 0 ? 0 : across / 2; x < canvas.width + across / 2; x += across) {
      const inside = clip(sixSides(x, y, radius - joint / 2), canvas.width, canvas.height);
      if (inside.length > 2) faces.add(canvas.random.pick(shades), outlineData(inside));
    }
    row++;
  }
  return [ground(canvas, grout), ...faces.nodes()];
};

function sixSides(x: number, y: number, radius: number): Corner[] {
  return [30, 90, 150, 210, 270, 330].map((degrees): Corner => {
    const turn = (degrees * Math.PI) / 180;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
}

/** A pane: the lightest colour with slanted reflections and an edge. */
export const glass: Pattern = (canvas) => {
  const { width, height, colors } = canvas;
  const base = colors.reduce((pale, color) => (lightness(color) > lightness(pale) ? color : pale));
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
