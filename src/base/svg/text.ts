import { numberText } from './number.js';
import type { SvgNode } from './node.js';

/** The node as SVG text on one line, escaped. Numbers are written with at most two decimals. The root is
 *  written as given: a caller that makes a file adds `xmlns` to it. Control characters that XML forbids are dropped. */
export function svgText(node: SvgNode): string {
  const attributes = Object.entries(node.attributes)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? numberText(value) : escape(value)}"`)
    .join('');
  if (node.children.length === 0) return `<${node.name}${attributes}/>`;
  const inside = node.children.map((child) => (typeof child === 'string' ? escape(child) : svgText(child))).join('');
  return `<${node.name}${attributes}>${inside}</${node.name}>`;
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** A text as HTML and SVG hold it, in an attribute too. */
export function escape(text: string): string {
  // The characters that XML 1.0 does not allow.
  return text
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replace(/[&<>"']/g, (sign) => entities[sign] ?? sign);
}
