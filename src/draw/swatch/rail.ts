import { PathBuilder, circle, path, type SvgNode } from '../../base/svg/index.js';
import { block, ground, tenth, type Canvas, type Pattern } from './canvas.js';
import { isOther, isWarm, lightness, mix, shade } from './color.js';

/** The wall behind what is shown in front of one: light behind dark things, dusk behind pale ones. */
function backdrop(canvas: Canvas, color: string): SvgNode[] {
  const tone = lightness(color) > 0.72 ? mix(color, '#59625d', 0.72) : mix(color, '#f1eee6', 0.9);
  return [
    ground(canvas, tone),
    ...block(canvas, 0, canvas.height * 0.86, canvas.width, canvas.height, shade(tone, -0.06)),
  ];
}

/** Posts, a top rail and level cables. The first colour is the metal, the second the cap. */
export const cable: Pattern = (canvas) => {
  const { width, height, base } = canvas;
  const nodes = backdrop(canvas, base);
  const count = canvas.isFine ? 9 : 6;
  const thin = Math.max(0.7, height / 150);
  for (let index = 1; index <= count; index++) {
    const y = height * (0.17 + (0.7 * index) / (count + 0.6));
    nodes.push(...block(canvas, 0, y, width, y + thin, shade(base, 0.1)));
    nodes.push(...block(canvas, 0, y + thin, width, y + thin * 1.7, shade(base, -0.18), 0.8));
  }
  for (const share of [0.14, 0.78]) nodes.push(...post(canvas, width * share, height * 0.12, height * 0.95));
  nodes.push(...topRail(canvas));
  return nodes;
};

/** Upright pickets between a top rail and a foot rail. Wood named first, with another thing second, is newels and rail for metal bars. */
export const pickets: Pattern = (canvas) => {
  const { base, colors } = canvas;
  const other = colors.slice(1).find((color) => isOther(base, color));
  if (other !== undefined && isWarm(base) && !isWarm(other)) return picketsOf({ ...canvas, colors: [base] }, other);
  return picketsOf(canvas, base);
};

function picketsOf(canvas: Canvas, bar: string): readonly SvgNode[] {
  const { width, height, base } = canvas;
  const nodes = backdrop(canvas, base);
  const spacing = width / (canvas.isFine ? 15 : 10);
  const thick = spacing * 0.2;
  for (let x = spacing * 0.4; x < width; x += spacing) {
    nodes.push(...block(canvas, x, height * 0.15, x + thick, height * 0.88, bar));
    nodes.push(...block(canvas, x, height * 0.15, x + thick * 0.3, height * 0.88, shade(bar, 0.12)));
  }
  nodes.push(...block(canvas, 0, height * 0.84, width, height * 0.88, base));
  nodes.push(...block(canvas, 0, height * 0.84, width, height * 0.848, shade(base, 0.14)));
  for (const share of [0.02, 0.9]) nodes.push(...post(canvas, width * share, height * 0.12, height * 0.95));
  nodes.push(...topRail(canvas));
  return nodes;
}

function post(canvas: Canvas, left: number, top: number, bottom: number): SvgNode[] {
  const { base, width } = canvas;
  const wide = width * 0.042;
  return [
    ...block(canvas, left, top, left + wide, bottom, base),
    ...block(canvas, left, top, left + wide * 0.28, bottom, shade(base, 0.12)),
    ...block(canvas, left + wide * 0.74, top, left + wide, bottom, shade(base, -0.1)),
    ...block(canvas, left - wide * 0.5, bottom - wide * 0.3, left + wide * 1.5, bottom, shade(base, -0.05)),
  ];
}

function topRail(canvas: Canvas): SvgNode[] {
  const { width, height, base } = canvas;
  const cap = canvas.colors[1] ?? base;
  return [
    ...block(canvas, 0, height * 0.075, width, height * 0.16, cap),
    ...block(canvas, 0, height * 0.075, width, height * 0.092, shade(cap, 0.09)),
    ...block(canvas, 0, height * 0.145, width, height * 0.16, shade(cap, -0.14)),
  ];
}

/** A lever on a round rose. */
export const lever: Pattern = (canvas) => {
  const { width, height, base } = canvas;
  const nodes = hardwareDoor(canvas);
  const [x, y] = [width * 0.3, height * 0.5];
  const unit = height * 0.01;
  nodes.push(...rose(canvas, x, y, 21 * unit));
  const arm = (top: number, bottom: number, reach: number): string =>
    new PathBuilder(1)
      .moveTo(x, y + top * unit)
      .lineTo(x + (reach - 12) * unit, y + top * unit)
      .quadTo(x + reach * unit, y + top * unit, x + reach * unit, y + (bottom + 3) * unit)
      .lineTo(x + (reach - 4) * unit, y + (bottom + 3) * unit)
      .quadTo(x + (reach - 6) * unit, y + bottom * unit, x + (reach - 16) * unit, y + bottom * unit)
      .lineTo(x, y + bottom * unit)
      .close().data;
  const reach = Math.min(88, ((width - x) / unit) * 0.9);
  nodes.push(path(arm(-1, 14, reach), { fill: '#1d1d1b', opacity: 0.16 }));
  nodes.push(path(arm(-7, 8, reach), { fill: base }));
  nodes.push(
    path(new PathBuilder(1).moveTo(x, y - 5 * unit).lineTo(x + (reach - 14) * unit, y - 5 * unit).data, {
      fill: 'none',
      stroke: shade(base, 0.2),
      'stroke-width': tenth(2.2 * unit),
      'stroke-linecap': 'round',
    }),
  );
  nodes.push(
    path(new PathBuilder(1).moveTo(x, y + 6.5 * unit).lineTo(x + (reach - 18) * unit, y + 6.5 * unit).data, {
      fill: 'none',
      stroke: shade(base, -0.14),
      'stroke-width': tenth(2 * unit),
      'stroke-linecap': 'round',
    }),
  );
  nodes.push(
    circle(tenth(x), tenth(y), tenth(9 * unit), { fill: shade(base, -0.03) }),
    circle(tenth(x - unit), tenth(y - unit), tenth(5.5 * unit), { fill: shade(base, 0.08) }),
  );
  return nodes;
};

/** A knob on a round rose. */
export const knob: Pattern = (canvas) => {
  const { width, height, base } = canvas;
  const nodes = hardwareDoor(canvas);
  const [x, y] = [width * 0.5, height * 0.5];
  const unit = height * 0.01;
  nodes.push(...rose(canvas, x, y, 30 * unit));
  nodes.push(circle(tenth(x + 2 * unit), tenth(y + 4 * unit), tenth(21 * unit), { fill: '#1d1d1b', opacity: 0.2 }));
  [
    [0, 0, 20, 0],
    [-1, -1.2, 17, 0.05],
    [-2.4, -3, 12.5, 0.1],
    [-4, -5, 7.5, 0.16],
    [-5.4, -6.6, 3.4, 0.26],
  ].forEach(([dx, dy, radius, by]) => {
    nodes.push(
      circle(tenth(x + dx! * unit), tenth(y + dy! * unit), tenth(radius! * unit), { fill: shade(base, by! - 0.06) }),
    );
  });
  return nodes;
};

function rose({ base }: Canvas, x: number, y: number, radius: number): SvgNode[] {
  return [
    circle(tenth(x + radius * 0.06), tenth(y + radius * 0.12), tenth(radius), { fill: '#1d1d1b', opacity: 0.18 }),
    circle(tenth(x), tenth(y), tenth(radius), { fill: shade(base, -0.05) }),
    circle(tenth(x - radius * 0.03), tenth(y - radius * 0.05), tenth(radius * 0.9), { fill: shade(base, 0.03) }),
  ];
}

/** A door face behind hardware, in the second colour or one that sets the metal off. */
function hardwareDoor(canvas: Canvas): SvgNode[] {
  const { width, height, base } = canvas;
  const door = canvas.colors.find((color) => isOther(base, color)) ?? (lightness(base) > 0.6 ? '#59615c' : '#e9e5db');
  return [
    ground(canvas, door),
    ...block(canvas, width * 0.9, 0, width * 0.908, height, shade(door, -0.12)),
    ...block(canvas, width * 0.908, 0, width, height, shade(door, -0.035)),
  ];
}
