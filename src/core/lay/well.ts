import { counterClockwise, direction, distance, pointInFeet, type Ring, type Xy } from '../../base/geometry/index.js';
import { isFacing, joinOpen, playAlong, type Joint, type Misfit } from './joint.js';
import type { LayRoom, Side } from './laid-room.js';

/** Sides that look down into a room of another level stand over the edges of the part of that room's ceiling which is open to them. The part is
 *  what they look into, as a stair's well, or what they stand over, as the ceiling under a loft: the one that gives more of them an edge. */
export function joinWell(
  room: LayRoom,
  sides: readonly Side[],
  below: LayRoom,
  joints: Joint[],
  misfits: Misfit[],
): void {
  const parts = below.record.ceiling.filter(({ openAbove }) => openAbove?.to === room.slug);
  const [first] = sides;
  if (first && parts.length === 0 && !leadsTo(below, room))
    misfits.push({ kind: 'well-one-sided', room, side: first, other: below });
  const edges = parts.flatMap(({ name, over }) =>
    edgesOf(counterClockwise(over?.map(pointInFeet) ?? below.outline)).map((edge) => ({ name, ...edge })),
  );
  const [inner = [], all = []] = [edges.filter((edge) => !isOnWall(edge, below)), edges].map(
    (among) =>
      ([-1, 1] as const)
        .map((turn) => sides.flatMap((side) => edgeOf(side, among, turn) ?? []))
        .toSorted((a, b) => b.length - a.length)[0],
  );
  // A well as large as its room has its edges over the walls.
  for (const { side, edge } of inner.length > 0 ? inner : all) {
    const joint = {
      kind: 'well',
      name: `${side.wall.id} | ${edge.name}`,
      a: { room: room.index, side: side.index, isMiddle: true },
      b: { room: below.index, point: { x: (edge.from.x + edge.to.x) / 2, y: (edge.from.y + edge.to.y) / 2 } },
      along: side.along,
      out: side.out,
    } as const;
    const lengths = [side.run, edge.run] as const;
    joinOpen(joint, { room, side, other: below, what: edge.name, lengths }, joints, misfits);
  }
}

interface WellEdge {
  readonly name: string;
  readonly from: Xy;
  readonly to: Xy;
  readonly run: number;
}

/** The edge whose way out of the part is a side's way out of its room (`turn` 1), or its opposite; of several, the one of the same length. */
function edgeOf(
  side: Side,
  edges: readonly WellEdge[],
  turn: 1 | -1,
): { readonly side: Side; readonly edge: WellEdge } | undefined {
  const [edge] = edges
    .filter(({ from, to }) => {
      const way = direction(from, to);
      // Counter-clockwise, so out of the part is to the right.
      return isFacing({ x: way.y * turn, y: -way.x * turn }, { x: -side.out.x, y: -side.out.y });
    })
    .toSorted((a, b) => Math.abs(a.run - side.run) - Math.abs(b.run - side.run));
  return edge && { side, edge };
}

function edgesOf(over: Ring): readonly Omit<WellEdge, 'name'>[] {
  return over.map((from, index) => {
    const to = over[(index + 1) % over.length] as Xy;
    return { from, to, run: distance(from, to) };
  });
}

/** Whether an edge of a part of the ceiling lies along a wall of its room. */
function isOnWall({ from, to }: WellEdge, { sides }: LayRoom): boolean {
  return sides.some(
    (side) => offLine(from, side) < playAlong && offLine(to, side) < playAlong && side.wall.openTo === undefined,
  );
}

/** Whether a room has a side, or an opening, that leads to another. */
export function looksInto(room: LayRoom, other: LayRoom): boolean {
  return room.measure.walls.some(({ openTo }) => openTo === other.slug) || leadsTo(room, other);
}

function leadsTo({ record }: LayRoom, { slug }: LayRoom): boolean {
  return record.openings.some((opening) => (opening.by === 'own' ? opening.to : opening.recordedIn) === slug);
}

function offLine(point: Xy, { from, out }: Side): number {
  return Math.abs((point.x - from.x) * out.x + (point.y - from.y) * out.y);
}
