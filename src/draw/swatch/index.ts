import type { Swatch } from '../../core/model/index.js';
import { element, rect, type SvgNode } from '../../base/svg/index.js';
import type { Canvas, Corner, Pattern } from './canvas.js';
import { panelDoor, slabDoor } from './door.js';
import { flame } from './flame.js';
import { glass } from './glass.js';
import { batt, foam, layers } from './insulation.js';
import { profile, stair, timber } from './joinery.js';
import { repeatOf } from './material.js';
import { cable, knob, lever, pickets } from './rail.js';
import { seeded } from './random.js';
import { layRepeat, widestView, type Repeat } from './repeat.js';
import { stuffOf, type MaterialFacts } from './stuff.js';
import { metal, smooth, solid } from './surface.js';
import { untoldSwatch } from './untold.js';
import { boards, planks } from './wood.js';

export { boardInk, boardTones, materialOf, paper, washed, washedColor, type Material } from './material.js';
export type { MaterialCell } from './repeat.js';
export { patternInInches, sampleFacts } from './facts.js';
export type { MaterialFacts } from './stuff.js';

interface SwatchOptions {
  /** In pixels; the picture has this size and this view box. */
  readonly width: number;
  readonly height: number;
  /** The same seed gives the same picture: an option's id. */
  readonly seed: string;
  /** What it shows, for those who do not see it. */
  readonly title: string;
  /** What the record tells of the material beside its swatch. */
  readonly facts?: MaterialFacts;
}

/** What is on a card: the repeat of rooms laid over it, or a picture of its own, of a thing or of a material of which near by is seen
 *  what does not repeat. */
const cards: Readonly<Record<Swatch['pattern'], Pattern | 'laid'>> = {
  boards,
  planks,
  herringbone: 'laid',
  ashlar: 'laid',
  ledge: 'laid',
  cobble: 'laid',
  tile: 'laid',
  hex: 'laid',
  texture: 'laid',
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

/** A drawn swatch of a material, or of one that its record does not describe yet. Only shapes with literal colours: no ids, gradients, clips
 *  or filters, so that many may stand on a page and print renderers draw the same picture. */
export function drawSwatch(swatch: Swatch | undefined, options: SwatchOptions): SvgNode {
  const { width, height, title } = options;
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
    ...(swatch ? drawn(swatch, options) : untoldSwatch(title, { width, height })),
    rect(0.5, 0.5, width - 1, height - 1, { fill: 'none', stroke: '#1f2421', 'stroke-opacity': 0.22 }),
  );
}

function drawn(swatch: Swatch, options: SwatchOptions): readonly SvgNode[] {
  const card = cards[swatch.pattern];
  if (card !== 'laid') return card(canvasOf(swatch, options));
  const repeat = repeatOf(swatch, options.facts ?? {}, options.seed);
  // Of all that is laid, plaster alone may have no relief.
  if (repeat === undefined) return smooth(canvasOf(swatch, options));
  return layRepeat(canvasOf(swatch, options, repeat), repeat, cornerOf(repeat));
}

/** How many inches of a laid material its card shows from left to right; undefined for what has no scale of its own. */
export function inchesAcross(swatch: Swatch, options: Omit<SwatchOptions, 'title'>): number | undefined {
  if (cards[swatch.pattern] !== 'laid') return undefined;
  const repeat = repeatOf(swatch, options.facts ?? {}, options.seed);
  return repeat && options.width / canvasOf(swatch, { ...options, title: '' }, repeat).inch;
}

/** Where in the repeat a card begins: not at a joint, so that pieces are cut at its edges as they are on a sample. */
function cornerOf({ width, height }: Repeat): Corner {
  return [width * 0.03, height * 0.04];
}

function canvasOf(swatch: Swatch, { width, height, seed, facts = {} }: SwatchOptions, laidOn?: Repeat): Canvas {
  const { colors, base, repeat, random } = stuffOf(swatch, facts, seeded(`${swatch.pattern} ${seed}`));
  const isFine = width >= 160;
  const widest = laidOn === undefined ? Infinity : widestView(laidOn, { width, height, isFine });
  const inch = width / Math.min(widest, viewInches(facts.size?.[0] ?? facts.relief ?? repeat));
  return {
    width,
    height,
    inch,
    random,
    colors,
    base,
    thing: facts.thing ?? {},
    ...(facts.gloss !== undefined && { gloss: facts.gloss }),
    ...(swatch.roles?.glass !== undefined && { glass: swatch.roles.glass }),
    isFine,
    ...(repeat === undefined ? {} : { repeat: Math.max(repeat * inch, 2) }),
  };
}

/** Inches of material that the picture is wide, in few steps, so that like things compare: boards 4 feet, small tile 2 feet. */
function viewInches(repeat: number | undefined): number {
  if (repeat === undefined || (repeat >= 4 && repeat <= 14)) return 48;
  if (repeat > 14) return 96;
  return repeat >= 2 ? 24 : 12;
}
