import type { Swatch } from '../../core/model/index.js';
import { element, rect, type SvgNode } from '../../base/svg/index.js';
import type { Canvas, Pattern } from './canvas.js';
import { panelDoor, slabDoor } from './door.js';
import { flame } from './flame.js';
import { batt, foam, layers } from './insulation.js';
import { profile, stair, timber } from './joinery.js';
import { cable, knob, lever, pickets } from './rail.js';
import { seeded } from './random.js';
import { ashlar, cobble, ledge } from './stone.js';
import { metal, solid, texture } from './surface.js';
import { glass, hex, tile } from './tile.js';
import { untoldSwatch } from './untold.js';
import { boards, herringbone, planks } from './wood.js';

interface SwatchOptions {
  /** In pixels; the picture has this size and this view box. */
  readonly width: number;
  readonly height: number;
  /** The same seed gives the same picture: an option's id. */
  readonly seed: string;
  /** What it shows, for those who do not see it. */
  readonly title: string;
}

const patterns: Readonly<Record<Swatch['pattern'], Pattern>> = {
  boards,
  planks,
  herringbone,
  ashlar,
  ledge,
  cobble,
  tile,
  hex,
  texture,
  solid,
  metal,
  cable,
  pickets,
  glass,
  batt,
  foam,
  layers,
  'panel-door': panelDoor,
  'slab-door': slabDoor,
  lever,
  knob,
  profile,
  timber,
  flame,
  stair,
};

const nanometresPerInch = 25_400_000;
const anyColor = '#b8b2a6';

/** A drawn swatch of a material, or of one that its record does not describe yet. Only shapes with literal colours: no ids, gradients, clips
 *  or filters, so that many may stand on a page and print renderers draw the same picture. */
export function drawSwatch(swatch: Swatch | undefined, { width, height, seed, title }: SwatchOptions): SvgNode {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-label': title,
      'data-pattern': swatch?.pattern ?? 'untold',
    },
    element('title', {}, title),
    ...(swatch
      ? patterns[swatch.pattern](canvasOf(swatch, { width, height, seed }))
      : untoldSwatch(title, { width, height })),
    rect(0.5, 0.5, width - 1, height - 1, { fill: 'none', stroke: '#1f2421', 'stroke-opacity': 0.22 }),
  );
}

function canvasOf(swatch: Swatch, { width, height, seed }: Omit<SwatchOptions, 'title'>): Canvas {
  const colors = swatch.colors.map(sixDigits).filter((color) => color !== undefined);
  const base = colors[0] ?? anyColor;
  const repeatInches = swatch.repeat === undefined ? undefined : swatch.repeat / nanometresPerInch;
  const inch = width / viewInches(repeatInches);
  return {
    width,
    height,
    inch,
    random: seeded(`${swatch.pattern} ${seed}`),
    colors: colors.length > 0 ? colors : [base],
    base,
    isFine: width >= 160,
    ...(repeatInches === undefined || !(repeatInches > 0) ? {} : { repeat: Math.max(repeatInches * inch, 2) }),
  };
}

/** Inches of material that the picture is wide, in few steps, so that like things compare: boards 4 feet, small tile 2 feet. */
function viewInches(repeat: number | undefined): number {
  if (repeat === undefined || (repeat >= 4 && repeat <= 14)) return 48;
  if (repeat > 14) return 96;
  return repeat >= 2 ? 24 : 12;
}

function sixDigits(color: string): string | undefined {
  const long = /^#[0-9a-f]{6}$/i.exec(color);
  if (long !== null) return color.toLowerCase();
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(color);
  return short === null
    ? undefined
    : `#${short[1]}${short[1]}${short[2]}${short[2]}${short[3]}${short[3]}`.toLowerCase();
}
