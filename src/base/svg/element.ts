import type { SvgNode } from './node.js';

/** Attribute values as callers have them; `undefined` leaves the attribute out. */
type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element of any name. Attributes keep the order in which they are given. */
export function element(
  name: string,
  attributes: Attributes = {},
  ...children: readonly (SvgNode | string)[]
): SvgNode {
  const kept: Record<string, string | number> = {};
  for (const [key, value] of Object.entries(attributes)) if (value !== undefined) kept[key] = value;
  return { name, attributes: kept, children };
}

export function group(attributes: Attributes, children: readonly SvgNode[]): SvgNode {
  return element('g', attributes, ...children);
}

export function line(x1: number, y1: number, x2: number, y2: number, attributes: Attributes = {}): SvgNode {
  return element('line', { x1, y1, x2, y2, ...attributes });
}

export function rect(x: number, y: number, width: number, height: number, attributes: Attributes = {}): SvgNode {
  return element('rect', { x, y, width, height, ...attributes });
}

export function circle(cx: number, cy: number, r: number, attributes: Attributes = {}): SvgNode {
  return element('circle', { cx, cy, r, ...attributes });
}

/** A path from its data, usually `new PathBuilder()…data`. */
export function path(d: string, attributes: Attributes = {}): SvgNode {
  return element('path', { d, ...attributes });
}

/** One line of text, anchored at its baseline. */
export function text(x: number, y: number, content: string, attributes: Attributes = {}): SvgNode {
  return element('text', { x, y, ...attributes }, content);
}
