import { common, patchFrom, placeOn, spaceDot, unitOf, type Patch, type Xy } from '../../base/geometry/index.js';
import { element, path, PathBuilder, type SvgNode } from '../../base/svg/index.js';
import { feet, fromFeet } from '../../base/units/index.js';
import type { SeenFinish } from '../../core/book/index.js';
import type { SwatchRole } from '../../core/model/index.js';
import { fromFrame } from '../../core/takeoff/layout/index.js';
import type { Spot } from '../convex.js';
import { courseEdges } from '../courses/course-lines.js';
import { stretchesInside } from '../inside.js';
import { outlineData } from '../swatch/canvas.js';
import { boardInk, boardTones, washedColor, type MaterialCell } from '../swatch/index.js';
import { laidOver } from '../swatch/color.js';
import { seeded } from '../swatch/random.js';
import type { Decal, Facet } from './facet.js';
import { ink } from './ink.js';
import { laidOn } from './material.js';
import { lookOf, partLook, type Look, type Looks } from './look.js';
import type { Laid } from './order.js';
import type { Axonometry } from './view.js';

/** Feet from a facet's own axes to the sheet, in points. */
type OnSheet = (place: Xy) => Spot;

/** The deepest shadow, and how much one sees of what is seen through. */
const deepest = 0.19;
const seenThrough = 0.45;
const faintness = 0.12;

const pens = { facet: 0.5, trim: 0.3, pattern: 0.28, joint: 0.4 } as const;

/** Draws facets one after the other, each with its finish, what lies on it, its share of the light and its edge. */
export class Painter {
  readonly defs: SvgNode[] = [];
  private readonly cells = new Map<string, string>();

  constructor(
    private readonly camera: Axonometry,
    /** Points for a foot. */
    private readonly scale: number,
    private readonly looks: Looks,
    private readonly id: string,
  ) {}

  facet({ facet }: Laid, decals: readonly Decal[]): readonly SvgNode[] {
    const at = this.onSheet(facet);
    const data = outlines(facet.patches, at);
    const { color, opacity, laid } = this.ground(facet, data, at);
    const shadow = this.shadowOn(facet);
    // Pieces of what is curved have edges of their own color, so that they close.
    const edge = {
      stroke: facet.isSmooth ? laidOver(ink.shadow, color, shadow) : ink.line,
      'stroke-width': penOf(facet),
      'fill-rule': 'evenodd',
    } as const;
    // What has nothing on it is one path, its shadow in its color.
    if (laid.length === 0 && decals.length === 0)
      return [path(data, { fill: laidOver(ink.shadow, color, shadow), 'fill-opacity': opacity, ...edge })];
    return [
      path(data, { fill: color, 'fill-opacity': opacity, 'fill-rule': 'evenodd' }),
      ...laid,
      ...decals.flatMap((decal) => this.decal(decal, facet, at)),
      path(data, { fill: ink.shadow, 'fill-opacity': Math.round(shadow * 1000) / 1000, ...edge }),
    ];
  }

  /** A facet that stands before what a picture is for: one sees through it. */
  faint({ facet }: Laid): readonly SvgNode[] {
    const data = outlines(facet.patches, this.onSheet(facet));
    const edge = {
      stroke: ink.line,
      'stroke-width': pens.trim,
      'stroke-opacity': 0.6,
      'fill-rule': 'evenodd',
    } as const;
    return [path(data, { fill: ink.paper, 'fill-opacity': faintness, ...edge })];
  }

  private onSheet({ plane }: Facet): OnSheet {
    return (place) => {
      const [x, y] = this.camera.spot(placeOn(plane, place));
      return [x * this.scale, y * this.scale];
    };
  }

  private ground(facet: Facet, data: string, at: OnSheet): Ground {
    const plain = plainColors[facet.role];
    return plain ? flat(plain) : this.finish(lookOf(facet, this.looks), facet, data, at);
  }

  private finish(look: Look, facet: Facet, data: string, at: OnSheet): Ground {
    const { role, tint, places, part } = facet;
    if (look.is === 'bare') return flat(role === 'door' ? ink.leaf : ink.bare);
    // One sees through a rail that is to be decided.
    if (look.is === 'open')
      return {
        color: ink.open,
        ...(role === 'rail' && { opacity: seenThrough }),
        laid: [this.pattern(data, at, hatch)],
      };
    const { main } = look;
    if (tint === 'glass') return { ...flat(tintOf(main, tint)), opacity: seenThrough };
    if (tint || role !== 'finish') return flat(tintOf(main, tint));
    const { base, cell } = laidOn(look);
    const courses = main.laid?.surfaces.find(
      ({ place, facet: plane }) => places.includes(place) && (plane === undefined || plane === part),
    );
    if (courses && main.laid?.lay === 'boards')
      return { color: base, laid: boards(facet, courses, feet(main.laid.face), main, at) };
    const id = `${main.selection} ${look.names.join(' ')}`;
    return { color: base, laid: cell ? [this.pattern(data, at, { ...cell, id })] : [] };
  }

  private decal(decal: Decal, facet: Facet, at: OnSheet): readonly SvgNode[] {
    const data = outlines(decal.patches, at);
    const line = { stroke: ink.line, 'stroke-width': pens.trim } as const;
    if (decal.role === 'panel') {
      const look = lookOf(facet, this.looks);
      const hasPanels = look.is === 'finish' && look.main.swatch?.pattern === 'panel-door';
      return hasPanels ? [path(data, { fill: 'none', ...line })] : [];
    }
    if (decal.role === 'knob') {
      const knob = this.looks.as('hardware', decal.place);
      return knob ? [path(data, { fill: knob.option === undefined ? ink.open : tintOf(knob), ...line })] : [];
    }
    const look = partLook(decal.role, [decal.place], this.looks);
    if (!look) return [];
    if (look.is !== 'finish') return [path(data, { fill: ink.open, ...line }), this.pattern(data, at, hatch)];
    return [path(data, { fill: tintOf(look.main), 'fill-rule': 'evenodd', ...line })];
  }

  /** One light from high over the viewer's left shoulder: a wash of ink, never white. */
  private shadowOn({ plane, role }: Facet): number {
    if (role === 'cut' || role === 'glass' || role === 'beyond') return 0;
    const { toward, right } = this.camera;
    const light = unitOf({ x: toward.x * 0.55 - right.x * 0.5, y: toward.y * 0.55 - right.y * 0.5, z: 1.05 });
    return deepest * (1 - Math.max(0, spaceDot(plane.faces, light)));
  }

  /** A cell of material laid over a shape by the facet's own axes. */
  private pattern(data: string, at: OnSheet, cell: Cell): SvgNode {
    const [o, u, v] = [at({ x: 0, y: 0 }), at({ x: 1, y: 0 }), at({ x: 0, y: 1 })];
    const matrix = [u[0] - o[0], u[1] - o[1], v[0] - o[0], v[1] - o[1], o[0], o[1]].map(
      // Where it begins goes by the tenth of a point, as outlines do.
      (value, i) => (i < 4 ? Math.round((value / 12) * 1000) / 1000 : Math.round(value * 10) / 10),
    );
    let source = this.cells.get(cell.id);
    if (source === undefined) {
      source = `${this.id}-m${this.cells.size}`;
      this.cells.set(cell.id, source);
      const size = { width: cell.width, height: cell.height, patternUnits: 'userSpaceOnUse' };
      this.defs.push(element('pattern', { id: source, ...size }, ...cell.nodes));
    }
    const id = `${this.id}-p${this.defs.length}`;
    this.defs.push(element('pattern', { id, href: `#${source}`, patternTransform: `matrix(${matrix.join(' ')})` }));
    return path(data, { fill: `url(#${id})`, 'fill-rule': 'evenodd' });
  }
}

/** What is thin has a thin edge, or it would be all edge. */
function penOf({ role, tint, isSmooth }: Facet): number {
  if (isSmooth) return pens.trim;
  if (role !== 'rail') return pens.facet;
  return tint === 'infill' ? 0.12 : pens.trim;
}

/** A cell of material by the name under which it is written once. */
interface Cell extends MaterialCell {
  readonly id: string;
}

const hatch: Cell = {
  id: 'open',
  width: 13,
  height: 13,
  nodes: [
    path('M0 0L13 13M-6.5 6.5L6.5 19.5M6.5-6.5L19.5 6.5', { stroke: ink.hatch, 'stroke-width': 0.42, fill: 'none' }),
  ],
};

/** One color of a finish: of a part that has its own, else its first. */
function tintOf({ swatch }: SeenFinish, tint?: SwatchRole): string {
  const { roles, colors = [] } = swatch ?? {};
  // A pane that has no color of its own is what fills the bays.
  const own = tint && (roles?.[tint] ?? (tint === 'glass' ? roles?.infill : undefined));
  return washedColor(own ?? colors[0] ?? ink.bare);
}

/** What lies under a facet's decals and its shadow. */
interface Ground {
  readonly color: string;
  readonly opacity?: number;
  readonly laid: readonly SvgNode[];
}

const plainColors: Partial<Readonly<Record<Facet['role'], string>>> = {
  cut: ink.cut,
  slab: ink.slab,
  hollow: ink.hollow,
  glass: ink.glass,
  beyond: ink.beyond,
  trace: ink.open,
};

function flat(color: string): Ground {
  return { color, laid: [] };
}

function outlines(patches: readonly Patch[], at: OnSheet): string {
  return patches.flatMap(({ outline, holes }) => [outline, ...holes].map((ring) => outlineData(ring.map(at)))).join('');
}

/** Boards where the layout has them: their joints, and a tone for some of the pieces. */
function boards(
  facet: Facet,
  laid: NonNullable<SeenFinish['laid']>['surfaces'][number],
  face: number,
  { swatch, selection }: SeenFinish,
  at: OnSheet,
): readonly SvgNode[] {
  const random = seeded(`${selection} ${facet.id}`);
  const look = swatch ?? bareWood;
  const tones = boardTones(look, selection);
  const rings = facet.patches.flatMap(({ outline, holes }) =>
    [outline, ...holes].map((ring) => ring.map(({ x, y }): Spot => [x, y])),
  );
  const place = (along: number, across: number): Xy => {
    const { x, y } = fromFrame(laid.direction, { along: along * unit, across: across * unit });
    return { x: x / unit, y: y / unit };
  };
  const spot = (along: number, across: number): Spot => {
    const { x, y } = place(along, across);
    return [x, y];
  };
  const zero = place(0, 0);
  const one = place(1, 0);
  const ahead: Spot = [one.x - zero.x, one.y - zero.y];
  const alongOf = ([x, y]: Spot): number => x * ahead[0] + y * ahead[1];
  const edges = courseEdges(laid, face * unit).map((edge) => edge / unit);
  const pieces = new Map<string, string>();
  const [lines, joints] = [new PathBuilder(1), new PathBuilder(1)];
  for (let course = 0; course < laid.courses; course += 1) {
    const [low, high] = [edges[course]!, edges[course + 1]!];
    const stretchesAt = (across: number): string =>
      stretchesInside(rings, spot(0, across), ahead)
        .flat()
        .map((end) => Math.round(alongOf(end) * 50))
        .join(' ');
    // Where a side runs askew to the courses, or ends within one, pieces end along it.
    const isSquare = stretchesAt(low + sliver) === stretchesAt(high - sliver);
    for (const [a, b] of stretchesInside(rings, spot(0, (low + high) / 2), ahead)) {
      const stops = [alongOf(a), ...(laid.joints[course] ?? []).map((joint) => joint / unit), alongOf(b)]
        .filter(
          (stop, i, all) => i === 0 || i === all.length - 1 || (stop > alongOf(a) + 0.05 && stop < alongOf(b) - 0.05),
        )
        .toSorted((x, y) => x - y);
      for (let i = 0; i + 1 < stops.length; i += 1) {
        const share = random.next();
        if (share < 0.62) {
          const tone = tones[Math.floor((share / 0.62) * tones.length) % tones.length]!;
          const [from, to] = [stops[i]!, stops[i + 1]!];
          const whole = patchFrom([place(from, low), place(to, low), place(to, high), place(from, high)]);
          const shown = isSquare ? [whole] : common([whole], facet.patches);
          pieces.set(tone, (pieces.get(tone) ?? '') + outlines(shown, at));
        }
        if (i > 0) joints.polyline([place(stops[i]!, low), place(stops[i]!, high)].map(at));
      }
    }
    if (course > 0)
      for (const stretch of stretchesInside(rings, spot(0, low), ahead))
        lines.polyline(stretch.map(([x, y]) => at({ x, y })));
  }
  const dark = boardInk(look);
  return [
    ...[...pieces].map(([fill, data]) => path(data, { fill })),
    path(lines.data, { fill: 'none', stroke: dark, 'stroke-width': pens.pattern }),
    ...(joints.data === '' ? [] : [path(joints.data, { fill: 'none', stroke: dark, 'stroke-width': pens.joint })]),
  ];
}

/** Layouts are in nanometres. */
const unit = fromFeet(1);

/** Feet from the edge of a course at which it is told where it ends. */
const sliver = 1e-3;

/** Of boards whose record has no swatch. */
const bareWood = { pattern: 'boards', colors: [ink.bare] } as const;
