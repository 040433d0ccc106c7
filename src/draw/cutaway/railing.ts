import {
  along,
  direction,
  distance,
  planeOf,
  pointInFeet,
  rectangle,
  stickFaces,
  turnedOver,
  upward,
  xyz,
  type Patch,
  type SpaceFace,
  type Xy,
  type Xyz,
} from '../../base/geometry/index.js';
import { feet, type Length } from '../../base/units/index.js';
import { stairOf } from '../../core/feature/index.js';
import type { RailPiece } from '../../core/takeoff/index.js';
import type { RoomMeasure, SwatchRole } from '../../core/model/index.js';
import type { SeenFinish, SeenRail } from '../../core/book/index.js';
import type { Facet } from './facet.js';

/** Sizes in feet where an option's record is silent. As drawn. */
const usual = {
  height: 3,
  post: 1.5 / 12,
  cap: { wide: 2.25 / 12, high: 1.5 / 12 },
  foot: 3 / 12,
  cable: 0.2 / 12,
  bar: 0.5 / 12,
};

/** More posts in a run, or bars in a bay, than this cannot be told apart, and would make the picture slow and large. */
const most = { posts: 24, bars: 60 } as const;

/** Rails of a room: posts, cap and what fills the bays; of what is to be decided its outline. */
export function railFacets(seen: readonly SeenFinish[], measure: RoomMeasure): readonly Facet[] {
  return seen
    .filter(({ role }) => role === 'railing')
    .flatMap((finish) => {
      const { rails = [], places } = finish;
      if (finish.option !== undefined) return rails.flatMap((rail) => builtRail(rail, finish, measure));
      return places.flatMap((place) => openRail(place, measure));
    });
}

/** By what the rails of a room differ as they stand: of one option in two versions of its record, too. */
export function railsKey(seen: readonly SeenFinish[]): string {
  const rails = seen.filter(({ role }) => role === 'railing');
  return rails.length === 0
    ? ''
    : JSON.stringify(rails.map((one) => [one.selection, one.option, one.face, one.facts, one.places, one.rails]));
}

/** A line that a rail runs along, in space: level, or up a flight. */
interface Line {
  readonly start: Xyz;
  /** For a foot in plan. */
  readonly step: Xyz;
  readonly ahead: Xy;
  readonly length: number;
}

function linesOf(run: SeenRail['run'], { features }: RoomMeasure): readonly Line[] {
  const flight = features.find(({ runs }) => runs.includes(run) || runs.some(({ id }) => id === run.id));
  const stair = flight && stairOf(flight);
  const rise = run.slope ?? 0;
  // A flight's line goes over its nosings, the first of which is a riser up.
  const foot = (stair ? feet(stair.rise) / stair.risers : 0) + feet(flight?.floor ?? (0 as Length));
  return (run.lines ?? []).map(({ from, to }) => {
    const [a, b] = [pointInFeet(from), pointInFeet(to)];
    const ahead = direction(a, b);
    return { start: xyz(a, foot), step: { ...ahead, z: rise }, ahead, length: distance(a, b) };
  });
}

function builtRail({ place, run, pieces }: SeenRail, finish: SeenFinish, measure: RoomMeasure): readonly Facet[] {
  const height = finish.face === undefined ? usual.height : feet(finish.face);
  return linesOf(run, measure).flatMap((line, i) => {
    const piece = pieces[i];
    if (!piece) return [];
    const slope = Math.hypot(1, line.step.z);
    const posts = piece.posts.map((post) => feet(post) / slope);
    const wide = finish.facts.postWidth === undefined ? usual.post : feet(finish.facts.postWidth);
    const named = (part: string, tint: SwatchRole, faces: readonly SpaceFace[]): readonly Facet[] =>
      faces.map((face, k) => ({ ...face, id: `${run.id}/${i}-${part}-${k}`, role: 'rail', places: [place], tint }));
    const stood =
      posts.length > most.posts
        ? named(
            'posts',
            'posts',
            sheet(
              line,
              posts.map((post) => rectangle(post - wide / 2, 0, wide, height)),
            ),
          )
        : posts.flatMap((post, k) =>
            named(`post-${k}`, 'posts', bar(at(line, post, 0), at(line, post, height), line.ahead, wide, wide)),
          );
    return [
      ...stood,
      ...named(
        'cap',
        'cap',
        bar(at(line, 0, height), at(line, line.length, height), line.ahead, usual.cap.wide, usual.cap.high),
      ),
      ...infill(line, piece, height, posts, wide, finish).flatMap(({ tint, patches }, k) =>
        named(`fill-${k}`, tint, sheet(line, patches)),
      ),
    ];
  });
}

/** What fills the bays, in the upright plane of the run: x along it in plan, y above its line. */
function infill(
  line: Line,
  piece: RailPiece,
  height: number,
  posts: readonly number[],
  post: number,
  { facts }: SeenFinish,
): readonly { readonly tint: SwatchRole; readonly patches: readonly Patch[] }[] {
  const fill = piece.infill;
  const bays = posts
    .slice(1)
    .map((end, i) => [posts[i]! + post / 2, end - post / 2] as const)
    .filter(([from, to]) => to - from > 1e-3);
  if (!fill) return [];
  switch (fill.fill) {
    case 'balusters': {
      const each = Math.round(fill.count / Math.max(1, piece.bays));
      const wide = facts.balusterWidth === undefined ? usual.bar : feet(facts.balusterWidth);
      const bars = bays.flatMap(([from, to]) => {
        if (each > most.bars) return [rectangle(from, usual.foot, to - from, height - usual.foot)];
        const gap = (to - from - each * wide) / (each + 1);
        return Array.from({ length: each }, (_, i) =>
          rectangle(from + gap + i * (gap + wide), usual.foot, wide, height - usual.foot),
        );
      });
      const foot = bays.map(([from, to]) => rectangle(from, usual.foot - usual.bar, to - from, usual.bar * 1.5));
      return [{ tint: 'infill', patches: [...bars, ...foot] }];
    }
    case 'cables': {
      const apart = facts.cableSpacing === undefined ? height / (fill.count + 1) : feet(facts.cableSpacing);
      if (fill.count > most.bars) return [{ tint: 'infill', patches: [rectangle(0, 0, line.length, height)] }];
      const cables = Array.from({ length: fill.count }, (_, i) =>
        rectangle(0, (i + 1) * apart - usual.cable / 2, line.length, usual.cable),
      );
      return [{ tint: 'infill', patches: cables.filter(({ outline }) => outline[2]!.y < height) }];
    }
    case 'panels': {
      const gap = facts.panelGap === undefined ? 0.04 : feet(facts.panelGap);
      const panes = bays.map(([from, to]) => rectangle(from + gap, gap * 2, to - from - 2 * gap, height - gap * 3));
      return panes.map((pane) => ({ tint: 'glass', patches: [pane] }));
    }
  }
}

/** The outline of a rail that is to be decided. */
function openRail(place: string, measure: RoomMeasure): readonly Facet[] {
  const feature = measure.features.find(({ id }) => place === id || place.startsWith(`${id}/`));
  const run = feature?.runs[0];
  if (!run) return [];
  return linesOf(run, measure).flatMap((line, i) =>
    sheet(line, [rectangle(0, 0, line.length, usual.height)]).map((face, k) => ({
      ...face,
      id: `${run.id}/${i}-open-${k}`,
      role: 'rail' as const,
      places: [place],
    })),
  );
}

function at({ start, step }: Line, by: number, height: number): Xyz {
  return along(along(start, step, by), upward, height);
}

/** A thin sheet over a line, seen from both hands. Its shapes lean with the line. */
function sheet(line: Line, patches: readonly Patch[]): readonly SpaceFace[] {
  const rise = line.step.z;
  const leaned = patches.map(({ outline, holes }) => ({
    outline: outline.map(({ x, y }) => ({ x, y: y + rise * x })),
    holes,
  }));
  const face = { plane: planeOf(line.start, { ...line.ahead, z: 0 }, upward), patches: leaned };
  return [face, turnedOver(face)];
}

/** A stick of a square section between two places: what stands by its length upright, what lies by its width level. */
function bar(from: Xyz, to: Xyz, ahead: Xy, wide: number, high: number): readonly SpaceFace[] {
  const isUpright = Math.hypot(to.x - from.x, to.y - from.y) < 1e-6;
  const side: Xyz = { x: -ahead.y, y: ahead.x, z: 0 };
  const other: Xyz = isUpright ? { ...ahead, z: 0 } : upward;
  const corner = (place: Xyz, a: number, b: number): Xyz =>
    along(along(place, side, (a * wide) / 2), other, (b * high) / 2);
  const section = (place: Xyz) => [
    corner(place, 1, -1),
    corner(place, -1, -1),
    corner(place, -1, 1),
    corner(place, 1, 1),
  ];
  return stickFaces(section, from, to);
}
