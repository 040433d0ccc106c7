import { spaceDot, unitOf, placeOn, type Patch, type Xy } from '../../base/geometry/index.js';
import { element, path, PathBuilder, type SvgNode } from '../../base/svg/index.js';
import { feet } from '../../base/units/index.js';
import type { SeenFinish } from '../../core/book/index.js';
import type { SwatchRole } from '../../core/model/index.js';
import { fromFrame } from '../../core/takeoff/layout/index.js';
import type { Spot } from '../convex.js';
import { courseEdges } from '../courses/course-lines.js';
import { stretchesInside } from '../inside.js';
import { boardInk, boardTones, washedColor, type MaterialCell } from '../swatch/index.js';
import { seeded } from '../swatch/random.js';
import type { Decal, Facet } from './facet.js';
import { ink } from './ink.js';
import { laidOn } from './material.js';
import { lookOf, partLook, type Look, type Looks } from './look.js';
import type { Laid } from './order.js';
import type { Axonometry } from './view.js';

/** Feet from a facet's own axes to the sheet, in points. */
type OnSheet = (place: Xy) => Spot;

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
    return [
      ...this.fill(facet, data, at),
      ...decals.flatMap((decal) => this.decal(decal, facet, at)),
      ...this.light(facet, data),
      path(data, { fill: 'none', stroke: ink.line, 'stroke-width': penOf(facet), 'stroke-linejoin': 'round' }),
    ];
  }

  private onSheet({ plane }: Facet): OnSheet {
    return (place) => {
      const [x, y] = this.camera.spot(placeOn(plane, place));
      return [x * this.scale, y * this.scale];
    };
  }

  private fill(facet: Facet, data: string, at: OnSheet): readonly SvgNode[] {
    switch (facet.role) {
      case 'cut':
        return [flat(data, ink.cut)];
      case 'slab':
        return [flat(data, ink.slab)];
      case 'hollow':
        return [flat(data, ink.hollow)];
      case 'glass':
        return [flat(data, ink.glass)];
      case 'beyond':
        return [flat(data, ink.beyond)];
      case 'trace':
        return [flat(data, ink.open)];
      default:
        return this.finish(lookOf(facet, this.looks), facet, data, at);
    }
  }

  private finish(look: Look, facet: Facet, data: string, at: OnSheet): readonly SvgNode[] {
    if (look.is === 'bare') return [flat(data, facet.role === 'door' ? ink.leaf : ink.bare)];
    if (look.is === 'open') return [this.open(facet, data), this.pattern(data, at, hatch)];
    const { main } = look;
    if (facet.tint === 'glass') return [path(data, { fill: tintOf(main, facet.tint), 'fill-opacity': 0.45 })];
    if (facet.tint || facet.role !== 'finish') return [flat(data, tintOf(main, facet.tint))];
    const laid = main.laid?.surfaces.find(
      ({ place, facet: part }) => facet.places.includes(place) && (part === undefined || part === facet.part),
    );
    const { base, cell } = laidOn(look);
    if (laid && main.laid?.lay === 'boards')
      return [flat(data, base), ...boards(facet, laid, feet(main.laid.face), main, at)];
    return cell
      ? [flat(data, base), this.pattern(data, at, { ...cell, id: `${main.selection} ${look.names.join(' ')}` })]
      : [flat(data, base)];
  }

  /** One sees through a rail that is to be decided. */
  private open({ role }: Facet, data: string): SvgNode {
    return path(data, { fill: ink.open, ...(role === 'rail' ? { 'fill-opacity': 0.45 } : { 'fill-rule': 'evenodd' }) });
  }

  private decal(decal: Decal, facet: Facet, at: OnSheet): readonly SvgNode[] {
    const data = outlines(decal.patches, at);
    const line = { stroke: ink.line, 'stroke-width': pens.trim, 'stroke-linejoin': 'round' } as const;
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
  private light({ plane, role }: Facet, data: string): readonly SvgNode[] {
    if (role === 'cut' || role === 'glass' || role === 'beyond') return [];
    const { toward, right } = this.camera;
    const light = unitOf({ x: toward.x * 0.55 - right.x * 0.5, y: toward.y * 0.55 - right.y * 0.5, z: 1.05 });
    const shadow = 0.19 * (1 - Math.max(0, spaceDot(plane.faces, light)));
    if (shadow < 0.004) return [];
    return [path(data, { fill: ink.shadow, 'fill-opacity': Math.round(shadow * 1000) / 1000, 'fill-rule': 'evenodd' })];
  }

  /** A cell of material laid over a shape by the facet's own axes. */
  private pattern(data: string, at: OnSheet, cell: Cell): SvgNode {
    const [o, u, v] = [at({ x: 0, y: 0 }), at({ x: 1, y: 0 }), at({ x: 0, y: 1 })];
    const matrix = [u[0] - o[0], u[1] - o[1], v[0] - o[0], v[1] - o[1], o[0], o[1]].map(
      (value, i) => Math.round((i < 4 ? value / 12 : value) * 1000) / 1000,
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
function penOf({ role, tint }: Facet): number {
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
  return washedColor((tint && swatch?.roles?.[tint]) ?? swatch?.colors[0] ?? ink.bare);
}

function flat(data: string, fill: string): SvgNode {
  return path(data, { fill, 'fill-rule': 'evenodd' });
}

function outlines(patches: readonly Patch[], at: OnSheet): string {
  const builder = new PathBuilder(1);
  for (const { outline, holes } of patches) for (const ring of [outline, ...holes]) builder.polygon(ring.map(at));
  return builder.data;
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
  const byTone = new Map<string, PathBuilder>();
  const [lines, joints] = [new PathBuilder(1), new PathBuilder(1)];
  for (let course = 0; course < laid.courses; course += 1) {
    const [low, high] = [edges[course]!, edges[course + 1]!];
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
          const builder = byTone.get(tone) ?? new PathBuilder(1);
          byTone.set(tone, builder);
          builder.polygon(
            [place(stops[i]!, low), place(stops[i + 1]!, low), place(stops[i + 1]!, high), place(stops[i]!, high)].map(
              at,
            ),
          );
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
    ...[...byTone].map(([fill, { data }]) => path(data, { fill })),
    path(lines.data, { fill: 'none', stroke: dark, 'stroke-width': pens.pattern }),
    ...(joints.data === '' ? [] : [path(joints.data, { fill: 'none', stroke: dark, 'stroke-width': pens.joint })]),
  ];
}

const unit = 304_800_000;

/** Of boards whose record has no swatch. */
const bareWood = { pattern: 'boards', colors: [ink.bare] } as const;
