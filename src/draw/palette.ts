import type { SvgNode } from '../base/svg/index.js';

/** Every colour of a drawing by its role. Values are anything a presentation attribute takes. */
export interface Palette {
  /** Outlines of what is built. */
  readonly ink: string;
  /** Dimension lines, extension lines, hatching. */
  readonly hair: string;
  readonly text: string;
  /** Second voice: sizes, notes. */
  readonly muted: string;
  /** Solid fill of cut walls. */
  readonly poche: string;
  /** Ground of the sheet, also behind text that stands on lines. */
  readonly paper: string;
  /** Light fill of features and finish regions, in two strengths. */
  readonly tone: string;
  readonly deep: string;
  readonly glass: string;
  /** Slope arrows, start lines, falls: what must not be missed. */
  readonly accent: string;
  /** What is late. */
  readonly alert: string;
}

export type Role = keyof Palette;

/** For PDF and files: literal colours, since print renderers know no variables. */
export const printPalette: Palette = {
  ink: '#1f2421',
  hair: '#6f7872',
  text: '#1f2421',
  muted: '#4f5852',
  poche: '#3b423e',
  paper: '#ffffff',
  tone: '#efece4',
  deep: '#d9d3c5',
  glass: '#dbe7ea',
  accent: '#9c3d17',
  alert: '#8a2d12',
};

/** For pages: custom properties with the print colours as fallback, so that one drawing serves light and dark. */
export const screenPalette: Palette = {
  ink: 'var(--draw-ink, #1f2421)',
  hair: 'var(--draw-hair, #6f7872)',
  text: 'var(--draw-text, #1f2421)',
  muted: 'var(--draw-muted, #4f5852)',
  poche: 'var(--draw-poche, #3b423e)',
  paper: 'var(--draw-paper, #ffffff)',
  tone: 'var(--draw-tone, #efece4)',
  deep: 'var(--draw-deep, #d9d3c5)',
  glass: 'var(--draw-glass, #dbe7ea)',
  accent: 'var(--draw-accent, #9c3d17)',
  alert: 'var(--draw-alert, #8a2d12)',
};

/** A node, and all in it, with the palette's colours in place of their roles. */
export function paint(node: SvgNode, palette: Palette): SvgNode {
  const { fill, stroke } = node.attributes;
  const attributes =
    fill === undefined && stroke === undefined
      ? node.attributes
      : {
          ...node.attributes,
          ...(fill !== undefined && { fill: colorOf(fill, palette) }),
          ...(stroke !== undefined && { stroke: colorOf(stroke, palette) }),
        };
  const children = node.children.map((child) => (typeof child === 'string' ? child : paint(child, palette)));
  return { name: node.name, attributes, children };
}

function colorOf(value: string | number, palette: Palette): string | number {
  return value in palette ? palette[value as Role] : value;
}
