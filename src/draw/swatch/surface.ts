import { PathBuilder, path, type SvgNode } from '../../base/svg/index.js';
import { block, ground, piece, type Canvas, type Corner, type Pattern } from './canvas.js';
import { isOther, shade } from './color.js';

/** Broad passes of the knife, hardly to be seen: near by only, so that smooth plaster has no repeat. */
export const smooth: Pattern = (canvas) => {
  const { random, width, height, base } = canvas;
  const second = canvas.colors[1] ?? shade(base, -0.012);
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
};

/** A window of two panes that the paint throws back: the glossier, the lighter, and the sharper its edges. A flat paint shows none. */
function windowIn(canvas: Canvas): readonly SvgNode[] {
  const { width, height, base, gloss = 0 } = canvas;
  if (gloss < 0.04) return [];
  const light = shade(base, 0.1 + gloss * 0.4);
  const blur = 0.12 * (1 - gloss);
  const pane = (from: number, to: number, by: number): SvgNode[] => {
    const [left, right] = [(from - by) * width, (to + by) * width];
    const [top, bottom] = [(0.14 - by) * height, (0.72 + by) * height];
    const lean = 0.16 * width;
    const corners: Corner[] = [
      [left + lean, top],
      [right + lean, top],
      [right, bottom],
      [left, bottom],
    ];
    return piece(canvas, corners, light, 0.04 + gloss * 0.55);
  };
  // Three over each other, each closer, are an edge as soft as the light that is scattered.
  return [blur, blur / 2, 0].flatMap((by) => [...pane(0.2, 0.38, by), ...pane(0.43, 0.61, by)]);
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
  nodes.push(...wash(0.3, 0.75, 0.012), ...wash(0.75, 1, -0.014), ...windowIn(canvas));
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
