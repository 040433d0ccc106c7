import { h, type VNode } from 'preact';
import { numberText, type SvgNode } from '../../base/svg/index.js';

/** SVG data as elements of the page; text in it is escaped like all text. */
export function Svg({ node, style }: { node: SvgNode; style?: string }): VNode<object> {
  return h<object>(
    node.name,
    { ...shortNumbers(node.attributes), ...(style !== undefined && { style }) },
    node.children.map((child) => (typeof child === 'string' ? child : <Svg node={child} />)),
  );
}

function shortNumbers(attributes: SvgNode['attributes']): Record<string, string> {
  return Object.fromEntries(
    Object.entries(attributes).map(([name, value]) => [name, typeof value === 'number' ? numberText(value) : value]),
  );
}
