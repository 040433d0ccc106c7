import { overlaps, turnedBox, type Convex } from '../../src/draw/convex.js';
import { textWidth } from '../../src/draw/text-width.js';
import { pens } from '../../src/draw/pen.js';
import type { SvgNode } from '../../src/base/svg/index.js';

/** A line of text in a drawing, with the figure it takes. */
export interface ReadText {
  readonly content: string;
  readonly size: number;
  readonly box: Convex;
}

export function nodesOf(root: SvgNode): SvgNode[] {
  return [root, ...root.children.flatMap((child) => (typeof child === 'string' ? [] : nodesOf(child)))];
}

export function textsOf(root: SvgNode): ReadText[] {
  return nodesOf(root)
    .filter(({ name }) => name === 'text')
    .map((node) => {
      const { attributes } = node;
      const content = node.children.join('');
      const size = Number(attributes['font-size']);
      const width = textWidth(content, size, attributes['font-weight'] === 600 ? 600 : 400);
      const anchor = attributes['text-anchor'];
      const left = anchor === 'middle' ? -width / 2 : anchor === 'end' ? -width : 0;
      const turn = /rotate\((-?[\d.]+)/.exec(String(attributes['transform'] ?? ''))?.[1] ?? '0';
      // Capitals and figures are seven tenths of the size high; nothing on a drawing hangs far below the line.
      const box = turnedBox(
        [Number(attributes['x']), Number(attributes['y'])],
        left,
        -0.7 * size,
        width,
        0.72 * size,
        Number(turn),
      );
      return { content, size, box };
    });
}

/** Pairs of texts that lie on one another. */
export function collisions(root: SvgNode): string[] {
  const texts = textsOf(root);
  return texts.flatMap((text, index) =>
    texts
      .slice(index + 1)
      .filter((other) => overlaps(text.box, other.box))
      .map((other) => `'${text.content}' on '${other.content}'`),
  );
}

/** Straight strokes of a node. */
export function linesOf({ name, attributes }: SvgNode): Convex[] {
  if (attributes['stroke'] === undefined || attributes['stroke'] === 'none') return [];
  if (name === 'line')
    return [
      [
        [Number(attributes['x1']), Number(attributes['y1'])],
        [Number(attributes['x2']), Number(attributes['y2'])],
      ],
    ];
  if (name !== 'path' || String(attributes['d']).includes('A')) return [];
  return String(attributes['d'])
    .split(/(?=M)/)
    .flatMap((part) => {
      const corners = pathCorners(part);
      const closed = part.endsWith('Z') ? [...corners, corners[0]!] : corners;
      return closed.slice(1).map((corner, index): Convex => [closed[index]!, corner]);
    });
}

/** Sizes of openings that lie over a line as heavy as the edge of an opening, grounded or not, or two in one pane. */
export function misplacedSizes(root: SvgNode, glass: string): string[] {
  const all = nodesOf(root);
  const edges = all.filter(({ attributes }) => Number(attributes['stroke-width']) >= pens.object).flatMap(linesOf);
  const sizes = textsOf(root).filter(({ content }) => / × | round$/u.test(content));
  const crossed = sizes.filter(({ box }) => edges.some((edge) => overlaps(box, edge)));
  const panes = all.filter(({ attributes }) => attributes['fill'] === glass).map(cornersOf);
  const shared = panes.flatMap((pane) => {
    const within = sizes.filter(({ box }) => overlaps(box, pane));
    return within.length > 1 ? within : [];
  });
  return [...crossed, ...shared].map(({ content }) => content);
}

/** Texts that a line runs through. A filled shape just before a text hides what is behind it. */
export function struckThrough(root: SvgNode): string[] {
  const all = nodesOf(root);
  const lines = all.flatMap(linesOf);
  const texts = textsOf(root);
  const nodes = all.filter(({ name }) => name === 'text');
  return nodes.flatMap((node, index) => {
    const before = all[all.indexOf(node) - 1];
    const isGrounded =
      before !== undefined &&
      before.name !== 'text' &&
      before.attributes['fill'] !== undefined &&
      before.attributes['fill'] !== 'none';
    if (isGrounded) return [];
    const { box, content } = texts[index]!;
    return lines.some((stretch) => overlaps(box, stretch)) ? [content] : [];
  });
}

/** Places that lie outside of the view box, of text boxes, path corners and shapes. */
export function outside(root: SvgNode, slack = 0.6): string[] {
  const [left, top, width, height] = String(root.attributes['viewBox']).split(' ').map(Number) as [
    number,
    number,
    number,
    number,
  ];
  const isOut = ([x, y]: readonly [number, number]): boolean =>
    !(x >= left - slack && x <= left + width + slack && y >= top - slack && y <= top + height + slack);
  const texts = textsOf(root)
    .filter(({ box }) => box.some(isOut))
    .map(({ content }) => content);
  const shapes = nodesOf(root)
    .filter((node) => cornersOf(node).some(isOut))
    .map((node) => `${node.name} ${JSON.stringify(node.attributes).slice(0, 160)}`);
  return [...texts, ...shapes];
}

export function cornersOf({ name, attributes }: SvgNode): [number, number][] {
  const value = (key: string): number => Number(attributes[key]);
  if (name === 'path') return pathCorners(String(attributes['d']));
  if (name === 'line')
    return [
      [value('x1'), value('y1')],
      [value('x2'), value('y2')],
    ];
  if (name === 'rect')
    return [
      [value('x'), value('y')],
      [value('x') + value('width'), value('y') + value('height')],
    ];
  if (name === 'circle')
    return [
      [value('cx') - value('r'), value('cy') - value('r')],
      [value('cx') + value('r'), value('cy') + value('r')],
    ];
  return [];
}

/** Ends of all steps of a path, with handles of curves: they bound it. Arcs count by their ends. */
export function pathCorners(d: string): [number, number][] {
  const corners: [number, number][] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  for (const [, command = '', rest = ''] of d.matchAll(/([MLQCAZHVmlqcazhv])([^MLQCAZHVmlqcazhv]*)/g)) {
    const numbers = (rest.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    const isRelative = command === command.toLowerCase();
    const [fromX, fromY] = isRelative ? [x, y] : [0, 0];
    switch (command.toUpperCase()) {
      case 'Z':
        [x, y] = [startX, startY];
        break;
      case 'H':
        x = fromX + numbers[0]!;
        corners.push([x, y]);
        break;
      case 'V':
        y = fromY + numbers[0]!;
        corners.push([x, y]);
        break;
      case 'A':
        for (let index = 0; index < numbers.length; index += 7) {
          [x, y] = [(isRelative ? x : 0) + numbers[index + 5]!, (isRelative ? y : 0) + numbers[index + 6]!];
          corners.push([x, y]);
        }
        break;
      default: {
        const step = { M: 2, L: 2, Q: 4, C: 6 }[command.toUpperCase()] ?? 2;
        for (let index = 0; index + step <= numbers.length; index += step) {
          const [baseX, baseY] = isRelative ? [x, y] : [0, 0];
          for (let pair = 0; pair < step; pair += 2)
            corners.push([baseX + numbers[index + pair]!, baseY + numbers[index + pair + 1]!]);
          [x, y] = corners.at(-1)!;
          // Further pairs after M are lines.
          if (command.toUpperCase() === 'M' && index === 0) [startX, startY] = [x, y];
        }
      }
    }
  }
  return corners;
}

/** Numbers that are not finite, in any attribute. */
export function unfinite(root: SvgNode): string[] {
  return nodesOf(root).flatMap(({ name, attributes }) =>
    Object.entries(attributes)
      .filter(([, value]) => /NaN|Infinity|undefined/.test(String(value)))
      .map(([key, value]) => `${name} ${key}=${value}`),
  );
}
