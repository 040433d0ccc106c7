import type { Swatch } from '../../core/model/index.js';
import { signedArea } from '../../base/geometry/index.js';
import type { SvgNode } from '../../base/svg/index.js';
import { ashlar } from './ashlar.js';
import { boards, boardShades, jointOf, planks, timberFace } from './boards.js';
import { cobble } from './cobble.js';
import { mix } from './color.js';
import { paneColor } from './glass.js';
import { herringbone } from './herringbone.js';
import { ledge } from './ledge.js';
import { plaster } from './plaster.js';
import { seeded } from './random.js';
import { cellOf, seenFromAfar, type Mark, type MaterialCell, type Repeat } from './repeat.js';
import { seams } from './seams.js';
import { stuffOf, type MaterialFacts, type Stuff } from './stuff.js';
import { hex, tile } from './tile.js';
import { untoldHatch } from './untold.js';

/** A finish as it is laid on the surfaces of a room. */
export interface Material {
  /** One color for all of it, as seen from afar, `#rrggbb`. Lies under the cells: what joins them is antialiased. */
  readonly base: string;
  /** Absent where nothing repeats: paint, smooth plaster, glass. */
  readonly cell?: MaterialCell;
}

type RepeatOf = (stuff: Stuff) => Repeat | undefined;

/** What covers a surface, by pattern. Cards are drawn from the same repeats, but for wood, whose grain does not repeat. */
const repeats: Partial<Readonly<Record<Swatch['pattern'], RepeatOf>>> = {
  boards,
  planks,
  herringbone,
  ashlar,
  ledge,
  cobble,
  tile,
  hex,
  texture: plaster,
  metal: seams,
  timber: timberFace,
};

/** A repeat of the swatch's material with all that is seen near by; undefined where nothing repeats. The same seed, such as an
 *  option's id, gives the same one on card and wall. */
export function repeatOf(swatch: Swatch, facts: MaterialFacts, seed: string): Repeat | undefined {
  return repeats[swatch.pattern]?.(stuffOf(swatch, facts, seeded(`${swatch.pattern} ${seed}`)));
}

/** What is laid on the surfaces of a room for an option's swatch, in the swatch's own colors; what its record does not describe, or
 *  nobody has decided, is hatched. */
export function materialOf(swatch: Swatch | undefined, facts: MaterialFacts, seed: string): Material {
  if (swatch === undefined) return { base: untoldHatch.ground, cell: cellOf(untoldHatch) };
  const repeat = repeatOf(swatch, facts, seed);
  const { base, colors } = stuffOf(swatch, facts, seeded(seed));
  if (repeat === undefined) return { base: swatch.pattern === 'glass' ? paneColor(colors) : base };
  return { base: swatch.pattern === 'texture' ? base : fromAfar(repeat), cell: cellOf(repeat) };
}

/** The ground and all marks by their areas. */
function fromAfar({ width, height, ground, marks: all }: Repeat): string {
  const marks = seenFromAfar(all);
  return marks.reduce(
    (all, mark) => {
      const share = (areaOf(mark) * (mark.opacity ?? 1)) / (width * height);
      return { color: mix(all.color, mark.fill, share / (all.share + share || 1)), share: all.share + share };
    },
    groundShare(ground, width * height, marks),
  ).color;
}

function groundShare(
  color: string,
  area: number,
  marks: readonly Mark[],
): { readonly color: string; readonly share: number } {
  const covered = marks.reduce((sum, mark) => sum + areaOf(mark) * (mark.opacity ?? 1), 0);
  return { color, share: Math.max(0, 1 - covered / area) };
}

function areaOf(mark: Mark): number {
  if ('at' in mark) return (Math.PI * mark.size ** 2) / 4;
  return Math.abs(signedArea(mark.outline.map(([x, y]) => ({ x, y }))));
}

/** Paper that rooms are drawn on, and how far their materials go toward it, so that lines and keys stay readable over them. */
export const paper = '#fdfcf8';
const usualWash = 0.28;

/** A color, a share of the way to paper. */
export function washedColor(color: string, share = usualWash): string {
  return mix(color, paper, share);
}

/** The material, all its colors a share of the way to paper. */
export function washed({ base, cell }: Material, share = usualWash): Material {
  return {
    base: washedColor(base, share),
    ...(cell === undefined ? {} : { cell: { ...cell, nodes: cell.nodes.map((node) => washedNode(node, share)) } }),
  };
}

function washedNode(node: SvgNode, share: number): SvgNode {
  const attributes = Object.entries(node.attributes).map(([key, value]) => [
    key,
    typeof value === 'string' && value.startsWith('#') ? washedColor(value, share) : value,
  ]);
  return { ...node, attributes: Object.fromEntries(attributes) as SvgNode['attributes'] };
}

/** Tones of the pieces of boards or planks whose courses are laid out, washed as rooms are. Card and cell have the same. */
export function boardTones(swatch: Swatch, seed: string, share = usualWash): readonly string[] {
  const stuff = stuffOf(swatch, {}, seeded(`${swatch.pattern} ${seed}`));
  return boardShades(stuff).map((color) => washedColor(color, share));
}

/** The ink of the joints between them, washed alike. */
export function boardInk(swatch: Swatch, share = usualWash): string {
  return washedColor(jointOf(stuffOf(swatch, {}, seeded('')).base), share);
}
