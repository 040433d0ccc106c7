import { element, group, numberText, shortPath, type SvgNode } from '../base/svg/index.js';
import { extentOf, extentsMeet, type Extent } from './convex.js';

/** What is given to a whole drawing so that its layers need not say it. */
export const givenLook = { 'stroke-linejoin': 'round' } as const;

/** Layers of a drawing in fewer letters and fewer nodes, for pages: what looks alike is said once, lines of one look are one
 *  path, and words, on which nothing is ever drawn, come last. All is where it was, within a twentieth of a point. */
export function compacted(layers: readonly SvgNode[]): readonly SvgNode[] {
  return layers.flatMap((layer) => {
    const look = withoutUsual(layer.attributes, givenLook);
    const nodes = layer.children
      .flatMap((child) => (typeof child === 'string' ? [] : [child]))
      .map((node) => ({ ...node, attributes: withoutUsual(node.attributes, layer.attributes) }));
    const figures = runsOf(nodes.filter(({ name }) => name !== 'text')).map(written);
    const texts = byLook(nodes.filter(({ name }) => name === 'text').map(turnedText)).map(grouped);
    return Object.keys(look).length === 0 ? [...figures, ...texts] : [group(look, [...figures, ...texts])];
  });
}

/** What of a node is where it is, and not how it looks. */
const places: ReadonlySet<string> = new Set('d x y x1 y1 x2 y2 width height cx cy r'.split(' '));

function partOf({ attributes }: SvgNode, isPlace: boolean): SvgNode['attributes'] {
  return Object.fromEntries(Object.entries(attributes).filter(([key]) => places.has(key) === isPlace));
}

/** Without what is so anyhow. One outline is filled alike by either rule. */
function withoutUsual(attributes: SvgNode['attributes'], given: SvgNode['attributes']): SvgNode['attributes'] {
  const isOneOutline = pathOf(attributes).lastIndexOf('M') === 0;
  return Object.fromEntries(
    Object.entries(attributes).filter(
      ([key, value]) =>
        given[key] !== value &&
        !(key === 'stroke-linecap' && value === 'butt') &&
        !(key === 'fill-rule' && isOneOutline),
    ),
  );
}

function pathOf({ d = '' }: SvgNode['attributes']): string {
  return String(d);
}

/** Figures of one look that are painted one after the other, or could be. */
interface Run {
  readonly look: string;
  readonly nodes: SvgNode[];
  readonly extents: Extent[];
  /** Nothing in it covers what is beneath. */
  readonly isLines: boolean;
}

/** Moves each figure to those of its look, unless something that lies on it, or under it, is painted between. */
function runsOf(nodes: readonly SvgNode[]): readonly Run[] {
  const runs: Run[] = [];
  for (const node of nodes) {
    const look = `${node.name === 'g' ? runs.length : ''}${JSON.stringify(partOf(node, false))}`;
    const { fill } = node.attributes;
    const isLines = fill === 'none';
    const extent = extentOfNode(node);
    const last = runs.findLastIndex(
      (run) =>
        run.look === look || (!(isLines && run.isLines) && run.extents.some((one) => extentsMeet(one, extent, 1))),
    );
    const before = runs[last];
    if (before?.look === look) {
      before.nodes.push(node);
      before.extents.push(extent);
    } else runs.push({ look, nodes: [node], extents: [extent], isLines });
  }
  return runs;
}

/** Of a path the box around its corners and the middles of its curves; of an arc the whole circle could reach further by its radius. */
function extentOfNode({ name, attributes }: SvgNode): Extent {
  const at = (key: string): number => Number(attributes[key] ?? 0);
  if (name === 'path') return extentOfPath(pathOf(attributes));
  if (name === 'line')
    return extentOf([
      [at('x1'), at('y1')],
      [at('x2'), at('y2')],
    ]);
  if (name === 'rect')
    return extentOf([
      [at('x'), at('y')],
      [at('x') + at('width'), at('y') + at('height')],
    ]);
  if (name === 'circle')
    return extentOf([
      [at('cx') - at('r'), at('cy') - at('r')],
      [at('cx') + at('r'), at('cy') + at('r')],
    ]);
  return { left: -Infinity, right: Infinity, top: -Infinity, bottom: Infinity };
}

function extentOfPath(d: string): Extent {
  const corners = [...d.matchAll(/([MLQCA])([^MLQCAZ]*)/g)].flatMap(([, command, list = '']) => {
    const values = (list.match(/-?[\d.]+/g) ?? []).map(Number);
    if (command !== 'A') return pairs(values);
    const [radius = 0, , , , , x = 0, y = 0] = values;
    return [
      [x - 2 * radius, y - 2 * radius],
      [x + 2 * radius, y + 2 * radius],
    ] as const;
  });
  return extentOf(corners);
}

function pairs(values: readonly number[]): (readonly [number, number])[] {
  return Array.from({ length: values.length / 2 }, (_, index) => [values[2 * index] ?? 0, values[2 * index + 1] ?? 0]);
}

/** Lines of one look, and grounds of one colour, are one path; other figures are a group with their look. */
function written({ nodes }: Run): SvgNode {
  const [first] = nodes as [SvgNode];
  const { fill, stroke, 'stroke-dasharray': dash, 'fill-rule': rule } = first.attributes;
  // Not everybody begins dashes anew with each line of a path.
  const isOnePath = (fill === 'none' && dash === undefined) || stroke === undefined;
  if (first.name !== 'path' || !isOnePath || rule !== undefined) return grouped(nodes.map(shortened));
  const d = nodes.map(({ attributes }) => pathOf(attributes)).join('');
  return shortened({ ...first, attributes: { ...first.attributes, d } });
}

function grouped(nodes: readonly SvgNode[]): SvgNode {
  const [first] = nodes as [SvgNode];
  if (nodes.length === 1) return first;
  return group(
    partOf(first, false),
    nodes.map((node) => element(node.name, partOf(node, true), ...node.children)),
  );
}

function shortened(node: SvgNode): SvgNode {
  const attributes = Object.fromEntries(
    Object.entries(node.attributes).map(([key, value]) => [
      key,
      key === 'd' ? shortPath(String(value), 1) : places.has(key) ? tenth(Number(value)) : value,
    ]),
  );
  return {
    ...node,
    attributes,
    children: node.children.map((child) => (typeof child === 'string' ? child : shortened(child))),
  };
}

function byLook(texts: readonly SvgNode[]): readonly (readonly SvgNode[])[] {
  const groups = new Map<string, SvgNode[]>();
  for (const text of texts) {
    const key = JSON.stringify(partOf(text, false));
    groups.set(key, [...(groups.get(key) ?? []), text]);
  }
  return [...groups.values()];
}

/** What reads from the right, as most of what is turned does, turned about one point, so that it is one look. */
function turnedText(text: SvgNode): SvgNode {
  const { x = 0, y = 0, transform, ...look } = text.attributes;
  const isFromRight = typeof transform === 'string' && transform.startsWith('rotate(-90 ');
  const [right, down] = isFromRight ? [-Number(y), Number(x)] : [Number(x), Number(y)];
  const turn = isFromRight ? 'rotate(-90)' : transform;
  const attributes = { x: tenth(right), y: tenth(down), ...look, ...(turn !== undefined && { transform: turn }) };
  return { ...text, attributes };
}

function tenth(value: number): string {
  return numberText(value, 1);
}
