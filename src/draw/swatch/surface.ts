import { PathBuilder, path, type SvgNode } from '../../base/svg/index.js';
import { block, clip, ground, piece, softOutline, tenth, type Canvas, type Corner, type Pattern } from './canvas.js';
import { isOther, lightness, shade } from './color.js';

/** Plaster by the size of its relief: none is smooth, under 1 1/2 inches a stipple, under 4 knocked-down islands, above that trowel
 *  sweeps. The second colour is the relief's. */
export const texture: Pattern = (canvas) => {
  const inches = (canvas.repeat ?? 0) / canvas.inch;
  if (canvas.repeat === undefined) {
    const second = canvas.colors[1];
    return second !== undefined && Math.abs(lightness(second) - lightness(canvas.base)) < 0.035
      ? smooth(canvas, second)
      : islands(canvas);
  }
  if (inches < 1.5) return stipple(canvas);
  return inches < 4 ? islands(canvas) : sweeps(canvas);
};

/** Broad passes of the knife, hardly to be seen. */
function smooth(canvas: Canvas, second: string): readonly SvgNode[] {
  const { random, width, height, base } = canvas;
  const nodes: SvgNode[] = [ground(canvas, base)];
  for (let index = 0; index < 5; index++) {
    const left = width * (index / 5 + random.between(-0.03, 0.03));
    const lean = width * random.between(0.03, 0.09);
    const corners: Corner[] = [
      [left + lean, 0],
      [left + lean + width * 0.11, 0],
      [left + width * 0.11, height],
      [left, height],
    ];
    nodes.push(...piece(canvas, corners, index % 2 === 0 ? second : shade(base, 0.008), 0.45));
  }
  return nodes;
}

/** Dots are lines of almost no length with round ends: a dozen signs each. */
function stipple(canvas: Canvas): readonly SvgNode[] {
  const { random, width, height, base } = canvas;
  const step = Math.sqrt((width * height) / (canvas.isFine ? 260 : 120));
  const drop = Math.max(0.4, step * 0.07);
  const widths = [0.42, 0.58, 0.74].map((share) => tenth(step * share));
  const dots = widths.map(() => ({ lights: '', shadows: '' }));
  for (let y = step / 2; y < height; y += step) {
    for (let x = step / 2; x < width; x += step) {
      const index = Math.floor(random.next() * widths.length);
      const reach = widths[index]! / 2 + drop + 0.1;
      const at = (value: number, limit: number): number =>
        tenth(Math.min(limit - reach, Math.max(reach, value + step * random.between(-0.4, 0.4))));
      const [cx, cy] = [at(x, width), at(y, height)];
      dots[index]!.lights += `M${cx} ${cy}h.1`;
      dots[index]!.shadows += `M${cx} ${tenth(cy + drop)}h.1`;
    }
  }
  const look = { fill: 'none', 'stroke-linecap': 'round' } as const;
  const shadow = shade(canvas.colors[1] ?? base, -0.06);
  return [
    ground(canvas, base),
    ...dots.map(({ shadows }, index) =>
      path(shadows, { ...look, stroke: shadow, 'stroke-width': widths[index], opacity: 0.8 }),
    ),
    ...dots.map(({ lights }, index) =>
      path(lights, { ...look, stroke: shade(base, 0.022), 'stroke-width': widths[index] }),
    ),
  ];
}

function sweeps(canvas: Canvas): readonly SvgNode[] {
  const { random, width, height, base } = canvas;
  const size = Math.max(canvas.repeat ?? width / 6, width / 9);
  const tone = canvas.colors[1] ?? shade(base, -0.04);
  const nodes: SvgNode[] = [ground(canvas, base)];
  for (let index = 0; index < (canvas.isFine ? 40 : 24); index++) {
    const [x, y] = [random.between(0, width), random.between(0, height)];
    const turn = random.between(-0.7, 0.7) + (index % 3 === 0 ? Math.PI / 2 : 0);
    const [along, across] = [size * random.between(1.3, 2.4), size * random.between(0.4, 0.7)];
    const place = (u: number, v: number): Corner => [
      x + u * Math.cos(turn) - v * Math.sin(turn),
      y + u * Math.sin(turn) + v * Math.cos(turn),
    ];
    const bow = across * random.between(0.3, 0.6);
    const corners = [
      place(-along / 2, 0),
      place(-along * 0.45, -bow),
      place(along * 0.42, -bow),
      place(along / 2, 0),
      place(along * 0.46, across - bow),
      place(-along * 0.42, across - bow),
    ];
    const inside = clip(corners, width, height);
    if (inside.length > 2)
      nodes.push(
        path(softOutline(inside), {
          fill: index % 2 === 0 ? tone : shade(base, 0.018),
          opacity: index % 2 === 0 ? 0.24 : 0.34,
        }),
      );
  }
  return nodes;
}

/** Soft islands, each with its shadow. */
function islands(canvas: Canvas): readonly SvgNode[] {
  const { random, width, height, base } = canvas;
  const nodes: SvgNode[] = [ground(canvas, shade(base, -0.012))];
  const count = canvas.isFine ? 60 : 30;
  const size = Math.sqrt((width * height) / count);
  const shadows: string[] = [];
  const faces: string[] = [];
  const columns = Math.ceil(width / size);
  for (let index = 0; index < count; index++) {
    const center: Corner = [
      ((index % columns) + random.between(0.15, 0.85)) * size,
      (Math.floor(index / columns) + random.between(0.15, 0.85)) * size,
    ];
    const radius = size * random.between(0.2, 0.52);
    const turn = random.between(0, Math.PI);
    const corners = [0, 1, 2, 3, 4].map((step): Corner => {
      const angle = turn + (step * Math.PI * 2) / 5;
      const reach = radius * random.between(0.7, 1.15);
      return [
        inside(center[0] + reach * Math.cos(angle) * 1.15, width),
        inside(center[1] + reach * Math.sin(angle) * 0.85, height),
      ];
    });
    const drop = Math.max(0.5, size * 0.045);
    shadows.push(softOutline(corners.map(([x, y]): Corner => [inside(x + drop, width), inside(y + drop, height)])));
    faces.push(softOutline(corners));
  }
  nodes.push(path(shadows.join(''), { fill: shade(base, -0.07), opacity: 0.75 }));
  nodes.push(path(faces.join(''), { fill: shade(base, 0.022) }));
  return nodes;
}

function inside(value: number, limit: number): number {
  return Math.min(limit, Math.max(0, value));
}

/** Paint or plaster in a raking light: three very quiet bands. */
export const solid: Pattern = (canvas) => {
  const { width, height, base, colors } = canvas;
  const nodes: SvgNode[] = [ground(canvas, base)];
  const wash = (from: number, to: number, by: number): SvgNode[] => {
    const corners: Corner[] = [
      [width * from, 0],
      [width * to, 0],
      [Math.max(0, width * (to - 0.3)), height],
      [Math.max(0, width * (from - 0.3)), height],
    ];
    return [path(new PathBuilder(1).polygon(corners).data, { fill: shade(base, by), opacity: 0.5 })];
  };
  nodes.push(...wash(0.3, 0.75, 0.012), ...wash(0.75, 1, -0.014));
  // A second colour of its own is the trim that goes with it.
  if (colors.length > 1 && isOther(base, colors[1]!)) {
    const band = height * 0.16;
    const trim = colors[1]!;
    nodes.push(...block(canvas, 0, height - band, width, height, trim));
    nodes.push(
      ...block(canvas, 0, height - band, width, height - band + Math.max(0.8, band * 0.07), shade(trim, 0.06)),
    );
    nodes.push(
      ...block(canvas, 0, height - band - Math.max(0.8, band * 0.06), width, height - band, shade(base, -0.1), 0.6),
    );
  }
  return nodes;
};

/** Brushed sheet: fine lines along, a broad reflection, a folded seam where a repeat is given. */
export const metal: Pattern = (canvas) => {
  const { random, width, height, base, repeat } = canvas;
  const nodes: SvgNode[] = [ground(canvas, base)];
  [
    [0, 0.3, -0.05],
    [0.12, 0.22, -0.025],
    [0.38, 0.5, 0.05],
    [0.42, 0.46, 0.05],
    [0.7, 1, -0.035],
    [0.86, 1, -0.03],
  ].forEach(([from, to, by]) => {
    nodes.push(...block(canvas, 0, height * from!, width, height * to!, shade(base, by!), 0.55));
  });
  if (canvas.isFine) {
    const strokes = (count: number): string => {
      const builder = new PathBuilder(1);
      for (let index = 0; index < count; index++) {
        const y = random.between(1, height - 1);
        const x = random.between(0, width * 0.6);
        builder.moveTo(x, y).lineTo(Math.min(width, x + width * random.between(0.2, 0.6)), y);
      }
      return builder.data;
    };
    nodes.push(path(strokes(46), { fill: 'none', stroke: shade(base, 0.1), 'stroke-width': 0.5, opacity: 0.4 }));
    nodes.push(path(strokes(46), { fill: 'none', stroke: shade(base, -0.12), 'stroke-width': 0.5, opacity: 0.35 }));
  }
  if (repeat !== undefined) {
    for (let x = repeat * 0.6; x < width; x += repeat) {
      const seam = Math.max(1.2, canvas.inch);
      nodes.push(...block(canvas, x, 0, x + seam * 0.35, height, shade(base, 0.12)));
      nodes.push(...block(canvas, x + seam * 0.35, 0, x + seam * 0.8, height, shade(base, -0.07)));
      nodes.push(...block(canvas, x + seam * 0.8, 0, x + seam * 1.4, height, shade(base, -0.18), 0.7));
    }
  }
  return nodes;
};
