import { PathBuilder, path, type SvgNode } from '../../base/svg/index.js';
import { block, ground, tenth, type Canvas, type Corner, type Pattern } from './canvas.js';
import { isWood, lightness, mix, shade } from './color.js';
import { grain } from './grain.js';

/** A trim moulding: its run in perspective of light, and its cut end. */
export const profile: Pattern = (canvas) => {
  const { width, height, base, thing } = canvas;
  if (thing.profile) return boardTrim(canvas, thing.profile === 'backband');
  const wall = mix(base, lightness(base) > 0.7 ? '#8f9a93' : '#efece4', 0.7);
  const nodes: SvgNode[] = [ground(canvas, wall)];
  const cut = width * 0.26;
  // Bands from top to foot: where each begins (share of the height) and how it takes the light.
  const bands: readonly (readonly [number, number])[] = [
    [0.2, 0.06],
    [0.24, -0.1],
    [0.28, 0.02],
    [0.34, 0.07],
    [0.39, -0.05],
    [0.43, 0],
    [0.74, 0.03],
    [0.8, -0.08],
  ];
  bands.forEach(([from, by], index) => {
    const to = bands[index + 1]?.[0] ?? 0.86;
    nodes.push(...block(canvas, cut, height * from, width, height * to, shade(base, by)));
  });
  if (isWood(base))
    nodes.push(...grain(canvas, { left: cut, right: width, top: height * 0.44, bottom: height * 0.73 }, base, 4));
  const depth = (share: number): number => cut * share;
  const outline = new PathBuilder(1)
    .moveTo(cut, height * 0.2)
    .lineTo(depth(0.72), height * 0.2)
    .quadTo(depth(0.6), height * 0.21, depth(0.6), height * 0.25);
  outline
    .lineTo(depth(0.66), height * 0.27)
    .quadTo(depth(0.38), height * 0.3, depth(0.42), height * 0.4)
    .lineTo(depth(0.46), height * 0.43);
  outline
    .lineTo(depth(0.4), height * 0.76)
    .quadTo(depth(0.3), height * 0.8, depth(0.3), height * 0.86)
    .lineTo(cut, height * 0.86)
    .close();
  const end = isWood(base) ? shade(mix(base, '#e3c79a', 0.35), -0.03) : shade(mix(base, '#d9bf94', 0.55), 0.02);
  nodes.push(
    path(outline.data, { fill: end, stroke: shade(end, -0.2), 'stroke-width': tenth(Math.max(0.7, width / 300)) }),
  );
  nodes.push(...block(canvas, 0, height * 0.86, width, height, shade(wall, -0.14)));
  return nodes;
};

/** Inches of trim that a card is high enough for, so that widths of like trim compare. */
const trimHigh = 9;
/** A backband is a strip around the board's outer edge. As drawn. */
const backband = { wide: 0.75, board: 0.75 };

/** A board at its own width and thickness, all to one scale: its run, and its cut end. */
function boardTrim(canvas: Canvas, hasBand: boolean): readonly SvgNode[] {
  const { width, height, base, thing, repeat = 0, inch } = canvas;
  const wall = mix(base, lightness(base) > 0.7 ? '#8f9a93' : '#efece4', 0.7);
  const [cut, foot] = [width * 0.26, height * 0.86];
  const told = thing.face ?? repeat / inch;
  const unit = Math.min(height / trimHigh, (foot * 0.96) / told);
  const [face, through] = [told * unit, Math.min(cut * 0.9, (thing.through ?? 0.75) * unit)];
  const top = foot - face;
  const band = hasBand ? backband.wide * unit : 0;
  const nodes = [ground(canvas, wall), ...block(canvas, cut, top, width, foot, base)];
  if (isWood(base)) nodes.push(...grain(canvas, { left: cut, right: width, top: top + band, bottom: foot }, base, 4));
  // An eased edge takes a little light, a backband throws a shadow.
  nodes.push(...block(canvas, cut, top, width, top + Math.max(0.8, 0.12 * unit), shade(base, 0.08)));
  if (hasBand) {
    nodes.push(...block(canvas, cut, top + 0.12 * unit, width, top + band, shade(base, 0.03)));
    nodes.push(...block(canvas, cut, top + band, width, top + band + 0.2 * unit, shade(base, -0.14)));
  }
  const board = hasBand ? Math.min(through, backband.board * unit) : through;
  const ease = Math.min(0.12 * unit, board / 3);
  const outline = new PathBuilder(1)
    .moveTo(cut, top)
    .lineTo(cut - through + ease, top)
    .quadTo(cut - through, top, cut - through, top + ease);
  if (hasBand) outline.lineTo(cut - through, top + band).lineTo(cut - board, top + band);
  outline
    .lineTo(cut - board, foot - ease)
    .quadTo(cut - board, foot, cut - board + ease, foot)
    .lineTo(cut, foot)
    .close();
  const end = isWood(base) ? shade(mix(base, '#e3c79a', 0.35), -0.03) : shade(mix(base, '#d9bf94', 0.55), 0.02);
  const look = { fill: end, stroke: shade(end, -0.2), 'stroke-width': tenth(Math.max(0.7, width / 300)) };
  return [...nodes, path(outline.data, look), ...block(canvas, 0, foot, width, height, shade(wall, -0.14))];
}

/** Inches of timber that a card is high enough for. */
const timberHigh = 18;

/** A dressed timber: its long face and, nearer, its end with rings. */
export const timber: Pattern = (canvas) => {
  const { width, height, base, random } = canvas;
  const nodes: SvgNode[] = [ground(canvas, mix(base, '#efece4', 0.86))];
  const [wide, deep] = canvas.thing.section ?? [9.5, 11.16];
  const bottom = height * 0.82;
  const unit = Math.min(height / timberHigh, (bottom * 0.96) / deep, (width * 0.6) / wide);
  const top = bottom - deep * unit;
  const end = wide * unit;
  const left = width * 0.06;
  const back = height * 0.07;
  nodes.push(
    path(
      new PathBuilder(1).polygon([
        [left + end, top],
        [width, top - back],
        [width, bottom - back],
        [left + end, bottom],
      ]).data,
      { fill: base },
    ),
  );
  const lines = new PathBuilder(1);
  for (let index = 0; index < (canvas.isFine ? 9 : 4); index++) {
    const share = random.between(0.06, 0.94);
    const y = top + (bottom - top) * share;
    lines
      .moveTo(left + end, y)
      .curveTo(
        width * 0.55,
        y - back * 0.2 + random.between(-4, 4) * (height / 200),
        width * 0.75,
        y - back * 0.7 + random.between(-4, 4) * (height / 200),
        width,
        Math.min(bottom - back, Math.max(top - back, y - back)),
      );
  }
  nodes.push(
    path(lines.data, {
      fill: 'none',
      stroke: canvas.colors[1] ?? shade(base, -0.13),
      'stroke-width': tenth(Math.max(0.6, width / 380)),
      opacity: 0.55,
    }),
  );
  nodes.push(
    path(
      new PathBuilder(1).polygon([
        [left + end, top],
        [width, top - back],
        [width, top - back + height * 0.03],
        [left + end, top + height * 0.035],
      ]).data,
      { fill: shade(base, 0.07), opacity: 0.7 },
    ),
  );
  nodes.push(
    path(
      new PathBuilder(1).polygon([
        [left + end, bottom],
        [width, bottom - back],
        [width, bottom - back - height * 0.06],
        [left + end, bottom - height * 0.06],
      ]).data,
      { fill: shade(base, -0.11), opacity: 0.6 },
    ),
  );
  const endColor = shade(mix(base, '#e0bd8a', 0.3), 0.02);
  nodes.push(...block(canvas, left, top, left + end, bottom, endColor));
  nodes.push(...rings(left, top, end, bottom - top, endColor, canvas));
  nodes.push(
    path(
      new PathBuilder(1).polygon([
        [left, top],
        [left + end, top],
        [left + end, bottom],
        [left, bottom],
      ]).data,
      { fill: 'none', stroke: shade(base, -0.22), 'stroke-width': tenth(Math.max(0.7, width / 320)) },
    ),
  );
  return nodes;
};

/** Growth rings about a pith that lies below the end, cut at its sides; one check running in. */
function rings(left: number, top: number, wide: number, high: number, color: string, canvas: Canvas): SvgNode[] {
  const pith: Corner = [left + wide * 0.46, top + high * 0.62];
  const builder = new PathBuilder(1);
  const count = canvas.isFine ? 13 : 6;
  for (let ring = 1; ring <= count; ring++) {
    const radius = (Math.hypot(wide, high) * 0.72 * ring) / count;
    let isDrawing = false;
    for (let step = 0; step <= 24; step++) {
      const turn = (step / 24) * Math.PI * 2;
      const [x, y] = [pith[0] + radius * Math.cos(turn) * 0.92, pith[1] + radius * Math.sin(turn)];
      const isIn = x > left + 0.6 && x < left + wide - 0.6 && y > top + 0.6 && y < top + high - 0.6;
      if (isIn && isDrawing) builder.lineTo(x, y);
      else if (isIn) builder.moveTo(x, y);
      isDrawing = isIn;
    }
  }
  const check = new PathBuilder(1)
    .moveTo(...pith)
    .lineTo(pith[0] + wide * 0.2, pith[1] - high * 0.24)
    .lineTo(pith[0] + wide * 0.34, pith[1] - high * 0.5).data;
  return [
    path(builder.data, {
      fill: 'none',
      stroke: shade(color, -0.14),
      'stroke-width': tenth(Math.max(0.6, canvas.width / 400)),
      opacity: 0.7,
      'stroke-linejoin': 'round',
    }),
    path(check, {
      fill: 'none',
      stroke: shade(color, -0.34),
      'stroke-width': tenth(Math.max(0.8, canvas.width / 300)),
      opacity: 0.7,
    }),
  ];
}

/** Three treads seen from the front: tread in the first colour, riser in the second. */
export const stair: Pattern = (canvas) => {
  const { width, height, base } = canvas;
  const riser = canvas.colors[1] ?? shade(base, 0.14);
  const nodes: SvgNode[] = [
    ground(canvas, lightness(riser) > 0.7 ? mix(riser, '#7f8a84', 0.45) : mix(riser, '#efece4', 0.8)),
  ];
  const steps = 3;
  const high = height / (steps + 0.35);
  const inset = width * 0.06;
  for (let step = 0; step < steps; step++) {
    // From the top step down, so that the nearer one covers.
    const index = steps - 1 - step;
    const bottom = height - index * high;
    const spread = index * inset * 0.55;
    const [left, right] = [inset * 0.6 + spread, width - inset * 0.6 - spread];
    const top = bottom - high;
    const tread = high * 0.42;
    nodes.push(...block(canvas, left + inset * 0.3, top + tread, right - inset * 0.3, bottom, riser));
    nodes.push(
      ...block(
        canvas,
        left + inset * 0.3,
        top + tread,
        right - inset * 0.3,
        top + tread + high * 0.09,
        shade(riser, -0.16),
        0.7,
      ),
    );
    const color = shade(base, canvas.random.between(-0.012, 0.012));
    const corners: Corner[] = [
      [left + inset * 0.55, top],
      [right - inset * 0.55, top],
      [right, top + tread * 0.68],
      [left, top + tread * 0.68],
    ];
    nodes.push(path(new PathBuilder(1).polygon(corners).data, { fill: color }));
    nodes.push(
      ...grain(
        canvas,
        { left: left + inset * 0.6, right: right - inset * 0.6, top, bottom: top + tread * 0.66 },
        color,
        canvas.isFine ? 3 : 1,
      ),
    );
    nodes.push(...block(canvas, left, top + tread * 0.68, right, top + tread, shade(color, -0.07)));
    nodes.push(...block(canvas, left, top + tread * 0.66, right, top + tread * 0.74, shade(color, 0.08), 0.8));
  }
  return nodes;
};
