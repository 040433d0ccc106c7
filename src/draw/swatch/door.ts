import type { SvgNode } from '../../base/svg/index.js';
import { block, ground, piece, type Canvas, type Pattern } from './canvas.js';
import { isOther, isWood, lightness, mix, shade } from './color.js';
import { grain } from './grain.js';

/** A door in its frame, seen whole; panels in stiles and rails. */
export const panelDoor: Pattern = (canvas) => {
  const { leaf, nodes } = doorLeaf(canvas);
  const wide = leaf.right - leaf.left;
  const high = leaf.bottom - leaf.top;
  const stile = wide * 0.17;
  const heights = shares(canvas.thing);
  const rail = high * 0.075;
  const space = high - rail * (heights.length + 1) - rail * 0.8;
  let top = leaf.top + rail;
  for (const [index, share] of heights.entries()) {
    const bottom = top + space * share;
    const isGlass = canvas.thing.hasGlassAbove === true && index === 0;
    nodes.push(...(isGlass ? pane : panel)(canvas, leaf.left + stile, top, leaf.right - stile, bottom));
    top = bottom + rail;
  }
  return [...nodes, ...handle(canvas, leaf)];
};

/** Of the height between the rails, from the top: two panels where the record tells nothing, and glass over the panels that it counts. */
function shares({ panels = 2, hasGlassAbove }: Canvas['thing']): readonly number[] {
  if (hasGlassAbove) return [0.68, ...Array.from({ length: panels }, () => 0.32 / panels)];
  return panels === 2 ? [0.4, 0.6] : Array.from({ length: panels }, () => 1 / panels);
}

function pane(canvas: Canvas, left: number, top: number, right: number, bottom: number): SvgNode[] {
  const edge = Math.max(1, (right - left) * 0.05);
  const color = canvas.glass ?? '#cfdadb';
  return [
    ...block(canvas, left, top, right, bottom, shade(canvas.base, -0.16)),
    ...block(canvas, left + edge, top + edge, right - edge, bottom - edge, color),
    ...piece(
      canvas,
      [
        [left + edge, bottom - edge],
        [left + edge + (right - left) * 0.3, top + edge],
        [left + edge + (right - left) * 0.5, top + edge],
        [left + edge + (right - left) * 0.2, bottom - edge],
      ],
      shade(color, 0.06),
    ),
  ];
}

/** A flush door with the grain running up. */
export const slabDoor: Pattern = (canvas) => {
  const { leaf, nodes } = doorLeaf(canvas);
  if (isWood(canvas.base)) {
    const leaves = 4;
    const wide = (leaf.right - leaf.left) / leaves;
    for (let index = 0; index < leaves; index++) {
      const [left, right] = [leaf.left + index * wide, leaf.left + (index + 1) * wide];
      const color = shade(canvas.base, canvas.random.between(-0.014, 0.014));
      nodes.push(...block(canvas, left, leaf.top, right, leaf.bottom, color));
      nodes.push(
        ...grain(
          canvas,
          { left, right, top: leaf.top, bottom: leaf.bottom, isUpright: true },
          color,
          canvas.isFine ? 3 : 1,
        ),
      );
    }
  } else
    nodes.push(
      ...block(
        canvas,
        leaf.left,
        leaf.top,
        leaf.left + (leaf.right - leaf.left) * 0.4,
        leaf.bottom,
        shade(canvas.base, 0.015),
        0.7,
      ),
    );
  return [...nodes, ...handle(canvas, leaf)];
};

interface Leaf {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function doorLeaf(canvas: Canvas): { leaf: Leaf; nodes: SvgNode[] } {
  const { width, height, base } = canvas;
  const wall = lightness(base) > 0.75 ? mix(base, '#b9b3a6', 0.6) : mix(base, '#efece4', 0.85);
  // Nearer than the whole door: in a wide picture it runs out at the foot.
  const wide = Math.min(width * 0.44, height * 0.72);
  const high = wide * 2.15;
  const leaf = {
    left: (width - wide) / 2,
    right: (width + wide) / 2,
    top: height * 0.13,
    bottom: height * 0.13 + high,
  };
  const trim = shade(wall, 0.07);
  const band = wide * 0.13;
  const nodes = [
    ground(canvas, wall),
    ...block(canvas, 0, leaf.bottom, width, height, shade(wall, -0.2)),
    ...block(
      canvas,
      leaf.left - band - 1,
      leaf.top - band - 1,
      leaf.right + band + 1.5,
      leaf.bottom,
      shade(wall, -0.09),
    ),
    ...block(canvas, leaf.left - band, leaf.top - band, leaf.right + band, leaf.bottom, trim),
    ...block(canvas, leaf.left - 1.2, leaf.top - 1.2, leaf.right + 1.2, leaf.bottom, shade(base, -0.3)),
    ...block(canvas, leaf.left, leaf.top, leaf.right, leaf.bottom, base),
  ];
  return { leaf, nodes };
}

function panel(canvas: Canvas, left: number, top: number, right: number, bottom: number): SvgNode[] {
  const { base } = canvas;
  const bevel = Math.max(1, (right - left) * 0.055);
  const dark = shade(base, -0.11);
  const light = shade(base, 0.07);
  const nodes = block(canvas, left, top, right, bottom, shade(base, -0.025));
  nodes.push(
    ...piece(
      canvas,
      [
        [left, top],
        [right, top],
        [right - bevel, top + bevel],
        [left + bevel, top + bevel],
      ],
      dark,
    ),
  );
  nodes.push(
    ...piece(
      canvas,
      [
        [left, top],
        [left + bevel, top + bevel],
        [left + bevel, bottom - bevel],
        [left, bottom],
      ],
      shade(base, -0.07),
    ),
  );
  nodes.push(
    ...piece(
      canvas,
      [
        [left, bottom],
        [left + bevel, bottom - bevel],
        [right - bevel, bottom - bevel],
        [right, bottom],
      ],
      light,
    ),
  );
  nodes.push(
    ...piece(
      canvas,
      [
        [right, top],
        [right, bottom],
        [right - bevel, bottom - bevel],
        [right - bevel, top + bevel],
      ],
      shade(base, 0.035),
    ),
  );
  if (isWood(base))
    nodes.push(
      ...grain(
        canvas,
        { left: left + bevel, right: right - bevel, top: top + bevel, bottom: bottom - bevel, isUpright: true },
        base,
        canvas.isFine ? 3 : 1,
      ),
    );
  return nodes;
}

function handle(canvas: Canvas, leaf: Leaf): SvgNode[] {
  const metal =
    canvas.colors.find((color) => color !== canvas.glass && isOther(canvas.base, color)) ??
    (lightness(canvas.base) < 0.5 ? '#b9b4a6' : '#2e312f');
  const unit = (leaf.bottom - leaf.top) / 100;
  const x = leaf.right - 5 * unit;
  const y = leaf.top + 50 * unit;
  return [
    ...block(canvas, x - unit, y - 3 * unit, x + unit, y + 3 * unit, metal),
    ...block(canvas, x - 5 * unit, y - 0.6 * unit, x + unit, y + 0.8 * unit, metal),
  ];
}
