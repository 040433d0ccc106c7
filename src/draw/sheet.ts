import { PathBuilder, group, path, text, type SvgNode } from '../base/svg/index.js';
import { extentOf, extentsMeet, overlaps, turnedBox, type Convex, type Extent, type Spot } from './convex.js';
import type { Role } from './palette.js';
import { dashes, pens, sizes, type Pen } from './pen.js';
import { pointsPerNanometre, type Scale } from './scale.js';
import { textWidth, type Weight } from './text-width.js';

/** Back to front. */
const layers = ['fill', 'fine', 'dimension', 'object', 'cut', 'label'] as const;
/** What is written, and the lines that it belongs to: a small screen leaves it out until it can be read. */
const written: readonly Layer[] = ['dimension', 'label'];
type Layer = (typeof layers)[number];

export interface Stroke {
  readonly pen: Pen;
  readonly color?: Role;
  readonly dash?: keyof typeof dashes;
  readonly fill?: Role;
  readonly layer?: Layer;
  /** Lines that text may cross, such as hatching under a background. */
  readonly quiet?: boolean;
}

export interface Lettering {
  readonly size?: number;
  readonly weight?: Weight;
  readonly color?: Role;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Clockwise degrees. */
  readonly turn?: number;
  /** Puts paper, or another ground, behind the text. */
  readonly ground?: Role;
}

/** What text keeps clear of. */
/** More than any clearance, in points. */
const farthest = 4;

interface Figure {
  readonly corners: Convex;
  readonly extent: Extent;
}

function figureOf(corners: Convex): Figure {
  return { corners, extent: extentOf(corners) };
}

/** A drawing in the making: places in points with y down, what is drawn by layer, and what text must keep clear of. Colours are
 *  named by their roles until the drawing is issued. */
export class Sheet {
  private readonly nodes: Record<Layer, SvgNode[]> = {
    fill: [],
    fine: [],
    dimension: [],
    object: [],
    cut: [],
    label: [],
  };
  private readonly lines: Figure[] = [];
  private readonly boxes: Figure[] = [];
  private readonly reach = nowhere();
  private readonly plainReach = nowhere();
  readonly perNanometre: number;
  private origin = { x: 0, y: 0 };

  constructor(readonly scale: Scale) {
    this.perNanometre = pointsPerNanometre(scale);
  }

  /** The place on the sheet of a place in the house (x right, y up, nanometres). */
  spot(point: { readonly x: number; readonly y: number }): Spot {
    return [(this.origin.x + point.x) * this.perNanometre, -(this.origin.y + point.y) * this.perNanometre];
  }

  /** Draws what has coordinates of its own, such as a room that stands at a place in its house. */
  standingAt<Drawn>(place: { readonly x: number; readonly y: number }, draw: () => Drawn): Drawn {
    const before = this.origin;
    this.origin = { x: before.x + place.x, y: before.y + place.y };
    try {
      return draw();
    } finally {
      this.origin = before;
    }
  }

  /** Extent of all that was drawn so far. */
  get bounds(): { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number } {
    return { ...this.reach };
  }

  /** Extent of what is left where all that is written, with the lines that it belongs to, is left out. */
  get plainBounds(): Sheet['bounds'] {
    return { ...this.plainReach };
  }

  layer(name: Layer): readonly SvgNode[] {
    return this.nodes[name];
  }

  polyline(spots: readonly Spot[], stroke: Stroke): void {
    this.trace([spots], false, stroke);
  }

  polygon(spots: readonly Spot[], stroke: Stroke): void {
    this.trace([spots], true, stroke);
  }

  /** Closed outlines filled by the even-odd rule. */
  region(outlines: readonly (readonly Spot[])[], stroke: Stroke): void {
    this.trace(outlines, true, stroke);
  }

  /** An arc of less than half a turn about `center`, from one angle to another, in degrees clockwise from the right. */
  arc(center: Spot, radius: number, from: number, to: number, stroke: Stroke): void {
    const at = (degrees: number): Spot => {
      const turn = (degrees * Math.PI) / 180;
      return [center[0] + radius * Math.cos(turn), center[1] + radius * Math.sin(turn)];
    };
    const start = at(from);
    const end = at(to);
    const d = new PathBuilder().moveTo(...start).arcTo(radius, to > from, ...end).data;
    this.push(stroke.layer ?? 'fine', path(d, lookOf(stroke)));
    const chords = Array.from({ length: 9 }, (_, index) => at(from + ((to - from) * index) / 8));
    chords.forEach((spot, index) => {
      this.grow(spot, stroke.layer ?? 'fine');
      const last = chords[index - 1];
      if (last !== undefined) this.lines.push(figureOf([last, spot]));
    });
  }

  /** A ready-made node with the figures it covers. */
  place(layer: Layer, node: SvgNode, covers: readonly Convex[], keepClear = true): void {
    this.push(layer, node);
    for (const figure of covers) {
      figure.forEach((spot) => this.grow(spot, layer));
      if (keepClear) this.boxes.push(figureOf(figure));
    }
  }

  /** Keeps text away from a figure without drawing it. */
  reserve(figure: Convex): void {
    this.boxes.push(figureOf(figure));
  }

  /** The figure that text takes, baseline at `at`. */
  textBox(at: Spot, content: string, lettering: Lettering = {}): Convex {
    const { size = sizes.dimension, weight = 400, anchor = 'middle', turn = 0 } = lettering;
    const width = textWidth(content, size, weight);
    const left = anchor === 'start' ? 0 : anchor === 'end' ? -width : -width / 2;
    return turnedBox(at, left, -size * 0.76, width, size * 0.96, turn);
  }

  /** True when no text, mark or (unless `overLines`) line of the sheet touches the figure. */
  isFree(figure: Convex, clearance = 1, overLines = false): boolean {
    return isFreeOf({ boxes: this.boxes, lines: this.lines }, figure, clearance, overLines);
  }

  /** The same for many figures that lie within one: what lies apart from that is left out once for all of them. */
  freeWithin(within: Convex): (figure: Convex, clearance: number, overLines?: boolean) => boolean {
    const extent = extentOf(within);
    const near = (list: readonly Figure[]): readonly Figure[] =>
      list.filter((other) => extentsMeet(extent, other.extent, farthest));
    const those = { boxes: near(this.boxes), lines: near(this.lines) };
    return (figure, clearance, overLines = false) => isFreeOf(those, figure, clearance, overLines);
  }

  /** Writes text whatever is there. */
  write(at: Spot, content: string, lettering: Lettering = {}): void {
    const { size = sizes.dimension, weight = 400, color = 'text', anchor = 'middle', turn = 0, ground } = lettering;
    const box = this.textBox(at, content, lettering);
    if (ground !== undefined) {
      const d = new PathBuilder().polygon(turnedBox(at, ...inflate(content, size, weight, anchor), turn)).data;
      this.push('label', path(d, { fill: ground }));
    }
    this.push(
      'label',
      text(at[0], at[1], content, {
        'font-size': size,
        'font-weight': weight === 600 ? 600 : undefined,
        'text-anchor': anchor === 'start' ? undefined : anchor,
        fill: color,
        transform: turn === 0 ? undefined : `rotate(${round(turn)} ${round(at[0])} ${round(at[1])})`,
      }),
    );
    this.boxes.push(figureOf(box));
    box.forEach((spot) => this.grow(spot, 'label'));
  }

  /** Writes text at the first place that is free, and that `suits` by the figure the text takes there; false when none is.
   *  With a ground, lines may run behind it. */
  tryWrite(
    places: readonly Spot[],
    content: string,
    lettering: Lettering = {},
    clearance = 1,
    suits: (box: Convex, place: Spot) => boolean = () => true,
  ): boolean {
    const find = (overLines: boolean): Spot | undefined =>
      places.find((place) => {
        const box = this.textBox(place, content, lettering);
        return suits(box, place) && this.isFree(box, clearance, overLines);
      });
    const spot = find(false);
    if (spot !== undefined) {
      this.write(spot, content, lettering);
      return true;
    }
    if (lettering.ground === undefined) return false;
    const over = find(true);
    if (over === undefined) return false;
    this.write(over, content, lettering);
    return true;
  }

  /** All layers in order, as groups. */
  groups(): SvgNode[] {
    return layers
      .filter((name) => this.nodes[name].length > 0)
      .map((name) =>
        group(
          {
            ...(written.includes(name) && { class: 'words' }),
            'stroke-linejoin': name === 'cut' ? 'miter' : 'round',
            'stroke-linecap': 'butt',
          },
          this.nodes[name],
        ),
      );
  }

  private trace(outlines: readonly (readonly Spot[])[], closed: boolean, stroke: Stroke): void {
    const builder = new PathBuilder();
    const layer = stroke.layer ?? layerOf[stroke.pen];
    for (const spots of outlines) {
      if (closed) builder.polygon(spots);
      else builder.polyline(spots);
      spots.forEach((spot) => this.grow(spot, layer));
      if (stroke.quiet === true) continue;
      const ends = closed ? [...spots, spots[0]!] : spots;
      ends.slice(1).forEach((spot, index) => this.lines.push(figureOf([ends[index]!, spot])));
    }
    this.push(layer, path(builder.data, lookOf(stroke)));
  }

  private push(layer: Layer, node: SvgNode): void {
    this.nodes[layer].push(node);
  }

  private grow([x, y]: Spot, layer: Layer): void {
    for (const reach of written.includes(layer) ? [this.reach] : [this.reach, this.plainReach]) {
      reach.left = Math.min(reach.left, x);
      reach.right = Math.max(reach.right, x);
      reach.top = Math.min(reach.top, y);
      reach.bottom = Math.max(reach.bottom, y);
    }
  }
}

const nowhere = () => ({ left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity });

function lookOf({ pen, color, dash, fill }: Stroke): Record<string, string | number> {
  return {
    fill: fill ?? 'none',
    stroke: color ?? (pen === 'hair' ? 'hair' : 'ink'),
    'stroke-width': pens[pen],
    ...(dash === undefined ? {} : { 'stroke-dasharray': dashes[dash] }),
    ...(fill === undefined ? {} : { 'fill-rule': 'evenodd' }),
  };
}

const layerOf: Readonly<Record<Pen, Layer>> = { cut: 'cut', object: 'object', fine: 'fine', hair: 'fine' };

function inflate(
  content: string,
  size: number,
  weight: Weight,
  anchor: 'start' | 'middle' | 'end',
): [number, number, number, number] {
  const width = textWidth(content, size, weight);
  const left = anchor === 'start' ? 0 : anchor === 'end' ? -width : -width / 2;
  return [left - 1.5, -size * 0.82, width + 3, size * 1.08];
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

function isFreeOf(
  { boxes, lines }: { readonly boxes: readonly Figure[]; readonly lines: readonly Figure[] },
  figure: Convex,
  clearance: number,
  overLines: boolean,
): boolean {
  const extent = extentOf(figure);
  const meets = (other: Figure, play: number): boolean =>
    extentsMeet(extent, other.extent, play) && overlaps(figure, other.corners, play);
  if (boxes.some((box) => meets(box, clearance))) return false;
  return overLines || !lines.some((stretch) => meets(stretch, clearance / 2));
}
