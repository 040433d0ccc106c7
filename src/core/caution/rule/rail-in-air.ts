import { stretchLess, type Stretch } from '../../../base/geometry/index.js';
import { fromInches, printLength, type Length } from '../../../base/units/index.js';
import { edgeStretch, type DropEdge } from '../../feature/index.js';
import type { FeatureMeasure, WallMeasure } from '../../model/index.js';
import { edgeOf, isRailing, selectionsOn, stairOf, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import type { ExampleRooms } from './example.js';
import { guardedDrop } from './guards.js';
import type { Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R312.1.3: what a ball of this size does not go through. */
const ball = fromInches(4);
/** A gap as wide may be where steps go down that no record has: by common practice, from memory. */
const steps = fromInches(30);
/** A stair is this much wider or narrower than the gap that it comes up in, at most. */
const slack = fromInches(3);

/** Along an open side that no rule of drops speaks of: its other side is no room on a level below. */
export const railInAir: Rule = {
  id: 'rail-in-air',
  title: 'Rail ends in the air',
  source: residentialCode('R312.1.3'),
  limits: () => [
    { what: 'Gap beside the end of a guard, at least', text: printLength(ball) },
    { what: 'Gap to the outside that may be steps, from', text: printLength(steps) },
  ],
  examples: [
    { what: `A guard over 8' of a side that is 10' long`, sees: `2'-0" short of the right end`, rooms: deck(`8'`) },
    { what: 'A guard over all of it', sees: null, rooms: deck(`10'`) },
    { what: `A guard over 6' of it, beside steps`, sees: null, rooms: deck(`6'`) },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      endsOf(room, house).map(({ feature, seen }) => {
        const railings = selectionsOn(room, feature.id);
        return {
          room: room.slug,
          place: feature.id,
          placeText: feature.name,
          selections: railings.map(({ id }) => id),
          trades: tradesOf(house, isRailing),
          seen,
          says: `A guard ends at a wall, at a post that carries it, or at another guard; a ball of ${printLength(ball)} does not go past its end.`,
          ask: 'the builder: where the rail ends, and what stands there; then the metal shop',
        };
      }),
    ),
};

interface End {
  readonly feature: FeatureMeasure;
  readonly seen: string;
}

function endsOf(room: RoomView, house: HouseView): readonly End[] {
  return room.measure.walls.flatMap((wall) => {
    const edges = edgesOn(wall, room);
    if (edges.length === 0 || isToldAsDrop(wall, room, house)) return [];
    const taken = [...edges.map(({ edge }) => edgeStretch(edge, wall.run)), ...bodiesOn(wall, room)];
    return stretchLess({ from: 0, to: wall.run }, taken)
      .filter(({ from, to }) => to - from >= ball && !mayBeSteps(to - from, wall, room, house))
      .flatMap((gap) => endBeside(gap, edges, wall));
  });
}

interface OnWall {
  readonly feature: FeatureMeasure;
  readonly edge: DropEdge;
}

function edgesOn(wall: WallMeasure, { measure }: RoomView): readonly OnWall[] {
  return measure.features.flatMap((feature) => {
    const edge = edgeOf(feature);
    return edge?.wall === wall.id ? [{ feature, edge }] : [];
  });
}

/** An open side over a room below is a drop without a guard: that says more. */
function isToldAsDrop({ openTo }: WallMeasure, room: RoomView, { bySlug, levels }: HouseView): boolean {
  const beside = openTo === undefined ? undefined : bySlug.get(openTo);
  return beside !== undefined && levels.indexOf(beside.level) < levels.indexOf(room.level);
}

/** What stands against the side and closes it. */
function bodiesOn(wall: WallMeasure, { measure }: RoomView): readonly Stretch[] {
  const [a, b] = [wall.from, wall.to];
  const run = Math.hypot(b.x - a.x, b.y - a.y);
  const [x, y] = [(b.x - a.x) / run, (b.y - a.y) / run];
  return measure.features.flatMap((feature) => {
    if (!feature.footprint || stairOf(feature)) return [];
    const corners = feature.footprint.map((corner) => ({
      along: (corner.x - a.x) * x + (corner.y - a.y) * y,
      off: Math.abs((corner.y - a.y) * x - (corner.x - a.x) * y),
    }));
    if (Math.min(...corners.map(({ off }) => off)) > ball) return [];
    const alongs = corners.map(({ along }) => along);
    return [{ from: Math.min(...alongs) - ball, to: Math.max(...alongs) + ball }];
  });
}

function mayBeSteps(gap: number, { openTo }: WallMeasure, room: RoomView, { bySlug, reach }: HouseView): boolean {
  if (openTo === undefined || !bySlug.has(openTo)) return gap >= steps;
  const here = [room.slug, openTo];
  const flights = [
    ...reach.flights.filter((flight) => here.includes(flight.room)),
    ...here.flatMap((slug) => reach.flightsTo.get(slug) ?? []),
  ];
  return flights.some(({ stair }) => stair.width <= gap + slack);
}

function endBeside({ from, to }: Stretch, edges: readonly OnWall[], wall: WallMeasure): readonly End[] {
  const found = edges.find(({ feature, edge }) => {
    const stretch = edgeStretch(edge, wall.run);
    const meets = Math.abs(stretch.to - from) < ball || Math.abs(stretch.from - to) < ball;
    return meets && feature.drop !== undefined && feature.drop > guardedDrop;
  });
  if (!found) return [];
  const { feature, edge } = found;
  const gap = printLength(Math.round(to - from) as Length);
  const isRight = Math.abs(edgeStretch(edge, wall.run).to - from) < ball;
  const end = isRight ? 'right' : 'left';
  const isAtCorner = isRight ? to >= wall.run : from <= 0;
  const where = isAtCorner
    ? `${gap} short of the ${end} end of ${wall.name}`
    : `${gap} before what is next along ${wall.name}`;
  return [
    {
      feature,
      seen: `${feature.name} ends ${where}, seen from the room, and nothing that it could end at is recorded there.`,
    },
  ];
}

function deck(run: string): ExampleRooms {
  return { deck: { features: { edge: { kind: 'drop-edge', wall: 'north', at: '0"', run, drop: `8'` } } } };
}
