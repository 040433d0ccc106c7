import { element, path, type SvgNode } from '../../base/svg/index.js';
import type { DrawOptions, Drawing } from '../drawing.js';
import type { Sheet } from '../sheet.js';
import { shadeFill, shadePattern, shades, type Shade } from './shade.js';

/** Where a floor leads, and what is said of it there. */
export interface FloorLink {
  readonly href: string;
  readonly words: string;
}

/** What one thing that is asked of the rooms marks of them. */
export interface ShadeLayer {
  /** For pages that show one layer at a time. */
  readonly className?: string;
  readonly rooms: ReadonlyMap<string, Shade>;
}

export interface FloorOptions extends Pick<DrawOptions, 'id' | 'palette'> {
  readonly layers: readonly ShadeLayer[];
  readonly linkOf?: (room: string) => FloorLink | undefined;
}

/** On a sheet, which is kept for all that show it, a floor is a group with its room's slug. */
const floorOf = 'data-floor';

export function placeFloor(sheet: Sheet, room: string, d: string): void {
  const floor = path(d, { fill: 'paper', 'fill-rule': 'evenodd' });
  sheet.place('fill', element('g', { [floorOf]: room }, floor), []);
}

/** The drawing with its floors marked and leading to their rooms. */
export function withFloors(drawing: Drawing, options: FloorOptions): Drawing {
  const { id, palette, layers, linkOf } = options;
  const used = new Set(layers.flatMap(({ rooms }) => [...rooms.values()]));
  const patterns = shades.filter((shade) => used.has(shade)).map((shade) => shadePattern(shade, id, palette));
  const { name, attributes, children } = drawing.svg;
  const drawn = children.map((child) => (typeof child === 'string' ? child : floorsIn(child, options)));
  const [title, description, ...rest] = drawn as [SvgNode, SvgNode, ...SvgNode[]];
  // What holds links is no image: who does not see it goes through them.
  const shown = linkOf ? { ...attributes, role: 'group' } : attributes;
  const defs = patterns.length > 0 ? [element('defs', {}, ...patterns)] : [];
  return {
    ...drawing,
    svg: { name, attributes: shown, children: [title, description, ...defs, ...rest] },
  };
}

function floorsIn(node: SvgNode, options: FloorOptions): SvgNode {
  const { [floorOf]: room, ...attributes } = node.attributes;
  if (room === undefined) {
    if (node.name !== 'g') return node;
    return {
      ...node,
      children: node.children.map((child) => (typeof child === 'string' ? child : floorsIn(child, options))),
    };
  }
  const [floor] = node.children as readonly SvgNode[];
  if (!floor) return node;
  return floorNode(String(room), floor, attributes, options);
}

function floorNode(
  room: string,
  floor: SvgNode,
  attributes: SvgNode['attributes'],
  { id, layers, linkOf }: FloorOptions,
): SvgNode {
  // Layers that shade the room alike are one path with the classes of all: which of them is shown, the page's style says.
  const classes = new Map<Shade, Set<string>>();
  for (const { className = '', rooms } of layers) {
    const shade = rooms.get(room);
    if (shade === undefined) continue;
    const held = classes.get(shade) ?? new Set();
    for (const word of className.split(' ')) held.add(word);
    classes.set(shade, held);
  }
  const marked = Array.from(classes, ([shade, words]) =>
    element('path', { ...floor.attributes, fill: shadeFill(shade, id), class: [...words].join(' ') || undefined }),
  );
  const link = linkOf?.(room);
  if (!link) return { name: 'g', attributes, children: [floor, ...marked] };
  const { href, words } = link;
  return element('a', { href, 'aria-label': words }, element('title', {}, words), floor, ...marked);
}
