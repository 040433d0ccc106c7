import { PathBuilder, path, type SvgNode } from '../../base/svg/index.js';
import { block, ground, tenth, type Canvas, type Pattern } from './canvas.js';
import { shade } from './color.js';

const studColor = '#c9a877';

/** Wavy fibres of a batt between the faces of two studs. */
export const batt: Pattern = (canvas) => {
  const { random, width, height, base } = canvas;
  const stud = width * 0.07;
  const tone = canvas.colors[1] ?? shade(base, -0.13);
  const nodes: SvgNode[] = [ground(canvas, base)];
  const puffs = canvas.isFine ? 9 : 6;
  const wide = (width - 2 * stud) / puffs;
  for (let index = 0; index < puffs; index++) {
    const left = stud + index * wide;
    nodes.push(...block(canvas, left, 0, left + wide * 0.3, height, shade(base, -0.035), 0.6));
    nodes.push(...block(canvas, left + wide * 0.5, 0, left + wide * 0.8, height, shade(base, 0.03), 0.6));
  }
  const fibres = (count: number): string => {
    const builder = new PathBuilder(1);
    for (let index = 0; index < count; index++) {
      const x = random.between(stud + 4, width - stud - 14);
      const y = random.between(3, height - 9);
      const reach = random.between(5, 10);
      builder
        .moveTo(x, y)
        .quadTo(
          Math.min(x + reach * 0.5, width),
          Math.max(0, y - random.between(-3, 3)),
          x + reach,
          Math.min(height, y + random.between(-2, 5)),
        );
    }
    return builder.data;
  };
  const line = Math.max(0.5, width / 420);
  nodes.push(path(fibres(canvas.isFine ? 90 : 26), { fill: 'none', stroke: tone, 'stroke-width': line, opacity: 0.7 }));
  nodes.push(
    path(fibres(canvas.isFine ? 90 : 26), {
      fill: 'none',
      stroke: shade(base, 0.09),
      'stroke-width': line,
      opacity: 0.8,
    }),
  );
  nodes.push(
    ...block(canvas, 0, 0, stud, height, studColor),
    ...block(canvas, width - stud, 0, width, height, studColor),
  );
  nodes.push(...block(canvas, stud - line, 0, stud + line * 2, height, shade(base, -0.25), 0.5));
  nodes.push(...block(canvas, width - stud - line * 2, 0, width - stud + line, height, shade(base, -0.25), 0.5));
  return nodes;
};

/** Foam: fine cells; with a second colour, its facer. */
export const foam: Pattern = (canvas) => {
  const { random, width, height, base } = canvas;
  const nodes: SvgNode[] = [ground(canvas, base)];
  const bubbles = (count: number, low: number, high: number): string =>
    Array.from({ length: count }, () => {
      const radius = tenth(random.between(low, high) * (width / 320));
      const x = tenth(random.between(radius, width - radius));
      const y = tenth(random.between(radius, height - radius));
      return `M${tenth(x - radius)} ${y}a${radius} ${radius} 0 1 1 ${tenth(2 * radius)} 0a${radius} ${radius} 0 1 1 ${tenth(-2 * radius)} 0Z`;
    }).join('');
  const many = canvas.isFine ? 62 : 26;
  nodes.push(path(bubbles(many, 1.2, 4.5), { fill: shade(base, -0.05), opacity: 0.7 }));
  nodes.push(path(bubbles(many, 0.8, 3), { fill: shade(base, 0.045), opacity: 0.9 }));
  const facer = canvas.colors[1];
  if (facer !== undefined) {
    const band = height * 0.11;
    nodes.push(
      ...block(canvas, 0, 0, width, band, facer),
      ...block(canvas, 0, band * 0.8, width, band, shade(facer, -0.1)),
    );
  }
  return nodes;
};

/** A build-up cut through: each colour a layer, the finish on the right. */
export const layers: Pattern = (canvas) => {
  const { random, width, height } = canvas;
  const colors =
    canvas.colors.length > 1 ? canvas.colors : [shade(canvas.base, -0.1), canvas.base, shade(canvas.base, 0.08)];
  const shares = colors.map((_, index) => [1.5, 0.9, 1.2, 0.7][index % 4]!);
  const sum = shares.reduce((total, share) => total + share, 0);
  const nodes: SvgNode[] = [];
  let left = 0;
  colors.forEach((color, index) => {
    const right = left + (width * shares[index]!) / sum;
    nodes.push(...block(canvas, left, 0, right, height, color));
    nodes.push(...hatched(canvas, left, right, color, index % 3, random.between(0.2, 0.8)));
    nodes.push(...block(canvas, right - Math.max(1, width / 200), 0, right, height, shade(color, -0.22), 0.8));
    left = right;
  });
  return nodes;
};

/** Slants, waves or dots tell one layer from the next where colours are close. */
function hatched(
  { width, height, isFine }: Canvas,
  left: number,
  right: number,
  color: string,
  kind: number,
  phase: number,
): SvgNode[] {
  const builder = new PathBuilder(1);
  const wide = right - left;
  const step = Math.max(isFine ? 11 : 9, height / 18);
  for (let y = step * phase; y + step < height; y += step) {
    if (kind === 0) builder.moveTo(left + wide * 0.12, y + step * 0.8).lineTo(right - wide * 0.12, y);
    else if (kind === 1)
      builder
        .moveTo(left + wide * 0.15, y)
        .curveTo(
          left + wide * 0.5,
          y + step,
          left + wide * 0.5,
          y - step * Math.min(0.9, phase),
          right - wide * 0.15,
          y,
        );
    else
      builder
        .moveTo(left + wide * 0.3, y)
        .lineTo(left + wide * 0.36, y)
        .moveTo(right - wide * 0.34, y + step / 2)
        .lineTo(right - wide * 0.28, y + step / 2);
  }
  if (builder.data === '') return [];
  return [
    path(builder.data, {
      fill: 'none',
      stroke: shade(color, -0.13),
      'stroke-width': Math.max(0.6, width / 360),
      opacity: 0.6,
    }),
  ];
}
