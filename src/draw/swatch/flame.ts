import { PathBuilder, path, type SvgNode } from '../../base/svg/index.js';
import { block, ground, tenth, type Canvas, type Pattern } from './canvas.js';
import { isWarm, mix, shade } from './color.js';

/** Inches that a card holds of an opening. */
const [openingWide, openingHigh] = [64, 46];

/** A firebox: the unit's colour around a dark opening, logs and three tongues. */
export const flame: Pattern = (canvas) => {
  const { width, height, thing } = canvas;
  // Records name the fire first or the frame first.
  const warm = canvas.colors.find(isWarm) ?? '#d9722e';
  const base = canvas.colors.find((color) => !isWarm(color)) ?? '#3a3d3c';
  const dark = mix(shade(base, -0.35), '#191512', 0.7);
  const frame = height * 0.1;
  const nodes: SvgNode[] = [ground(canvas, base)];
  nodes.push(...block(canvas, 0, 0, width, height * 0.02, shade(base, 0.1)));
  // Openings to one scale, so that they compare.
  const [told = 0, toldHigh = 0] = thing.opening ?? [];
  const unit = Math.min((width * 0.86) / Math.max(told, openingWide), (height * 0.8) / Math.max(toldHigh, openingHigh));
  const [wide, high] = thing.opening?.map((inches) => inches * unit) ?? [width - frame * 2.8, height - frame * 2.2];
  const bottom = Math.min(height - frame * 1.2, height / 2 + high! / 2);
  const [left, right, top] = [(width - wide!) / 2, (width + wide!) / 2, bottom - high!];
  nodes.push(...block(canvas, left - 2, top - 2, right + 2, bottom + 2, shade(base, -0.16)));
  nodes.push(...block(canvas, left, top, right, bottom, dark));
  nodes.push(...block(canvas, left, bottom - height * 0.12, right, bottom, shade(dark, 0.035)));
  // Light on the back of the firebox.
  for (const share of [0.9, 0.65, 0.42]) {
    const half = ((right - left) / 2) * share * 0.9;
    const middle = (left + right) / 2;
    const rise = (bottom - top) * share * 0.92;
    const glow = new PathBuilder(1)
      .moveTo(middle - half, bottom)
      .curveTo(middle - half, bottom - rise, middle + half, bottom - rise, middle + half, bottom)
      .close().data;
    nodes.push(path(glow, { fill: warm, opacity: 0.09 }));
  }
  const places: readonly (readonly [number, number, number])[] = [
    [0.3, 0.5, 0.11],
    [0.43, 0.72, 0.13],
    [0.56, 0.86, 0.14],
    [0.68, 0.64, 0.12],
    [0.77, 0.42, 0.09],
  ];
  for (const [at, rise, breadth] of places)
    nodes.push(
      ...tongue(
        canvas,
        {
          x: left + (right - left) * at,
          foot: bottom - height * 0.1,
          rise: (bottom - top) * rise * 0.82,
          half: (right - left) * breadth * 0.5,
        },
        warm,
      ),
    );
  if (thing.burns === 'gas')
    // A burner, and the frame of the glass before it.
    return [
      ...nodes,
      ...block(
        canvas,
        left + wide! * 0.08,
        bottom - height * 0.05,
        right - wide! * 0.08,
        bottom - height * 0.025,
        mix(warm, dark, 0.4),
      ),
      ...[0, 1].flatMap((side) => {
        const x = side === 0 ? left : right - wide! * 0.025;
        return block(canvas, x, top, x + wide! * 0.025, bottom, shade(base, 0.16));
      }),
    ];
  const log = mix('#3a2a20', dark, 0.3);
  for (const [from, to, y, thick] of [
    [0.2, 0.82, 0.1, 0.085],
    [0.28, 0.74, 0.165, 0.07],
  ] as const) {
    const [x1, x2, cy] = [left + (right - left) * from, left + (right - left) * to, bottom - height * y];
    const half = (height * thick) / 2;
    nodes.push(
      path(
        new PathBuilder(1)
          .moveTo(x1, cy - half)
          .lineTo(x2, cy - half)
          .quadTo(x2 + half, cy, x2, cy + half)
          .lineTo(x1, cy + half)
          .quadTo(x1 - half, cy, x1, cy - half)
          .close().data,
        { fill: log },
      ),
    );
    nodes.push(
      path(new PathBuilder(1).moveTo(x1, cy - half * 0.6).lineTo(x2, cy - half * 0.6).data, {
        fill: 'none',
        stroke: warm,
        'stroke-width': tenth(Math.max(0.6, height / 160)),
        opacity: 0.45,
      }),
    );
  }
  return nodes;
};

function tongue(
  { random }: Canvas,
  at: { x: number; foot: number; rise: number; half: number },
  color: string,
): SvgNode[] {
  const lean = random.between(-0.5, 0.5) * at.half;
  const shape = (scale: number, lift: number): string => {
    const [half, rise, foot] = [at.half * scale, at.rise * scale * lift, at.foot];
    return new PathBuilder(1)
      .moveTo(at.x, foot)
      .curveTo(at.x - half * 1.5, foot - rise * 0.2, at.x - half * 0.9, foot - rise * 0.55, at.x + lean, foot - rise)
      .curveTo(at.x + half * 0.5, foot - rise * 0.6, at.x + half * 1.6, foot - rise * 0.25, at.x, foot)
      .close().data;
  };
  return [
    path(shape(1, 1), { fill: color, opacity: 0.85 }),
    path(shape(0.66, 0.98), { fill: mix(color, '#f6c453', 0.6), opacity: 0.9 }),
    path(shape(0.36, 0.95), { fill: mix(color, '#fff0b8', 0.85), opacity: 0.95 }),
  ];
}
