import { PathBuilder, element, path, type SvgNode } from '../../base/svg/index.js';
import { paint, type Palette, type Role } from '../palette.js';
import { pens } from '../pen.js';

/** How a room's floor is marked: each by its colour and by its pattern, so that neither is needed to read the other. */
export const shades = ['here', 'open', 'due-soon', 'late', 'changed', 'trade'] as const;
export type Shade = (typeof shades)[number];

interface Look {
  readonly ground: Role;
  readonly color: Role;
  /** Side of the square that repeats, in points, and how far it is turned, in degrees. */
  readonly every: number;
  readonly turn: number;
  readonly strokes: string;
  readonly width: number;
}

const looks: Readonly<Record<Shade, Look>> = {
  here: { ground: 'accent', color: 'accent', every: 4, turn: 0, strokes: 'M0 2H4', width: 1 },
  open: { ground: 'paper', color: 'hair', every: 4, turn: 45, strokes: 'M1.6 2H2.4', width: 0.8 },
  'due-soon': { ground: 'paper', color: 'alert', every: 6, turn: -45, strokes: 'M0 3H6', width: 0.6 },
  late: { ground: 'tone', color: 'alert', every: 4, turn: -45, strokes: 'M0 2H4', width: 1.4 },
  changed: { ground: 'tone', color: 'ink', every: 4.5, turn: 0, strokes: 'M1.6 2.25H2.9', width: 1.3 },
  trade: { ground: 'deep', color: 'accent', every: 5, turn: 0, strokes: 'M0 2.5H5', width: 0.6 },
};

/** The pattern of a shade, for the `<defs>` of a drawing. */
export function shadePattern(shade: Shade, id: string, palette: Palette): SvgNode {
  const { ground, color, every, turn, strokes, width } = looks[shade];
  const square = new PathBuilder().polygon([
    [0, 0],
    [every, 0],
    [every, every],
    [0, every],
  ]).data;
  const pattern = element(
    'pattern',
    {
      id: patternId(shade, id),
      patternUnits: 'userSpaceOnUse',
      width: every,
      height: every,
      patternTransform: turn === 0 ? undefined : `rotate(${turn})`,
    },
    path(square, { fill: ground }),
    path(strokes, { fill: 'none', stroke: color, 'stroke-width': width }),
  );
  return paint(pattern, palette);
}

export function shadeFill(shade: Shade, id: string): string {
  return `url(#${patternId(shade, id)})`;
}

function patternId(shade: Shade, id: string): string {
  return `${id}-${shade}`;
}

/** A sample of a shade for a legend, 22 by 12 points. */
export function drawShade(shade: Shade, { id, palette }: { readonly id: string; readonly palette: Palette }): SvgNode {
  const box = new PathBuilder().polygon([
    [0.5, 0.5],
    [21.5, 0.5],
    [21.5, 11.5],
    [0.5, 11.5],
  ]).data;
  return element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width: '22pt', height: '12pt', viewBox: '0 0 22 12', 'aria-hidden': 'true' },
    element('defs', {}, shadePattern(shade, id, palette)),
    path(box, { fill: shadeFill(shade, id), stroke: palette.ink, 'stroke-width': pens.fine }),
  );
}
