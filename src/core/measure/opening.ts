import {
  areaOf,
  heightRange,
  intersect,
  leastGap,
  lengthOf,
  nearFeet,
  nearTape,
  slackAround,
} from '../../base/geometry/index.js';
import type { Opening, OpeningMeasure, OwnOpening, Room } from '../model/index.js';
import { flippedShape, openingArea, shapeWords } from '../opening/index.js';
import { problemAt, type Outcome, type Problem, type ProblemCode } from '../../base/problem/index.js';
import { feet, printLength, type Area, type Length } from '../../base/units/index.js';
import { openingPatch, type WallShape } from './wall.js';

/** An opening with its sizes, seen from this room; its areas come with the wall. */
type Placed = Omit<OpeningMeasure, 'areaOnWall'>;

/** Openings of a room, its own and those another room records, with the part of each that is on its wall. */
export function openingsOf(
  room: Room,
  house: { readonly rooms: ReadonlyMap<string, Room> },
  walls: readonly WallShape[],
): Outcome<readonly OpeningMeasure[]> {
  const problems: Problem[] = [];
  const placed: { opening: Placed; wall: WallShape }[] = [];
  for (const record of room.openings) {
    const found = record.by === 'own' ? ownOpening(record) : seenOpening(record, house);
    const wall = walls.find(({ name }) => name === record.wall);
    // Records whose wall or other side is not there were refused when they were read.
    if (!found || !wall) continue;
    const opening = onFloor(found, wall);
    const wrong = placeProblems(opening, wall, room);
    problems.push(...wrong);
    if (wrong.length === 0) placed.push({ opening, wall });
  }
  problems.push(
    ...overlapProblems(
      placed.map(({ opening }) => opening),
      room,
    ),
  );
  const value = placed.map(({ opening, wall }) => ({
    ...opening,
    areaOnWall: areaOf(intersect(wall.face, openingPatch(opening))) as Area,
  }));
  return { value, problems };
}

function ownOpening(record: OwnOpening): Placed {
  const { mark, kind, wall, at, width, height, shape, sill, to, operation } = record;
  const { hinge, swing, slides, door, glass, division } = record;
  const area = openingArea(record);
  const sides = {
    ...(hinge ? { hinge } : {}),
    ...(swing === undefined ? {} : { swing }),
    ...(slides && { slides }),
    ...(door && { door }),
    ...(glass && { glass }),
    ...(division && { division }),
  };
  const form = { width, height, ...(shape && { shape }) };
  return { mark, kind, wall, at, ...form, sill, to, own: true, area, record, operation, ...sides };
}

/** Sizes from the room that records it; hinges, a pocket and a raked head change sides when seen from the other one. */
function seenOpening(
  record: Extract<Opening, { by: 'seen' }>,
  house: { readonly rooms: ReadonlyMap<string, Room> },
): Placed | undefined {
  const owner = house.rooms.get(record.recordedIn);
  const own = owner?.openings.find(
    (opening): opening is OwnOpening => opening.by === 'own' && opening.mark === record.mark,
  );
  if (!owner || !own) return undefined;
  const { hinge, slides, shape, ...rest } = ownOpening(own);
  const flipped = {
    ...(hinge && { hinge: otherSide(hinge) }),
    ...(slides && { slides: otherSide(slides) }),
    ...(shape && { shape: flippedShape(shape) }),
  };
  return { ...rest, ...flipped, wall: record.wall, at: record.at, to: owner.slug, own: false, record };
}

function otherSide(side: 'left' | 'right'): 'left' | 'right' {
  return side === 'left' ? 'right' : 'left';
}

function placeProblems(opening: Placed, wall: WallShape, { origin }: Room): readonly Problem[] {
  const { mark, at, width, height, sill, record } = opening;
  const problem = (key: string, code: ProblemCode, message: string, fix: string): readonly Problem[] => [
    problemAt(origin, [...record.path, key], code, message, { fix }),
  ];
  if (width > wall.run) {
    const message = `${mark} is ${printLength(width)} wide, wider than its wall '${wall.name}' of ${printLength(wall.run)}`;
    return problem('width', 'opening-wider-than-wall', message, `${printLength(wall.run)} is the most that fits`);
  }
  if (at < 0 || at + width > wall.run) {
    const past = printLength((at < 0 ? -at : at + width - wall.run) as Length);
    const message = `${mark} runs ${past} past the ${at < 0 ? 'left' : 'right'} end of wall '${wall.name}'`;
    const most = printLength((wall.run - width) as Length);
    return problem('at', 'opening-past-wall', message, `at may be ${printLength(0 as Length)} to ${most}`);
  }
  const stretch = [feet(at), feet(at) + feet(width)] as const;
  const floor = feet(opening.floor ?? (0 as Length));
  if (feet(sill) < floor - nearFeet) {
    const height = printLength(lengthOf(floor));
    const message = `${mark} begins ${overFloor(sill)} the room's floor, but the floor before it is ${overFloor(lengthOf(floor))} that`;
    return problem('sill', 'opening-below-floor', message, `sill: ${height} puts it on the floor there`);
  }
  if (opening.shape)
    return shapeUnderCeiling(opening, wall).flatMap(({ message, fix }) =>
      problem('height', 'opening-above-ceiling', message, fix),
    );
  const { least, greatest } = heightRange(wall.top, ...stretch);
  // A leaf is square and stays under the rake; anything else may be cut by it, but not wholly above it.
  const limit = opening.kind === 'door' ? least : greatest;
  const head = feet(sill) + feet(height);
  if (head <= limit + nearFeet) return [];
  const over = printLength(lengthOf(head - limit));
  const ceiling = printLength(lengthOf(limit));
  const message = `the head of ${mark} is ${printLength(lengthOf(head))} above the floor, ${over} over the ceiling there at ${ceiling}`;
  return problem('height', 'opening-above-ceiling', message, `a head of ${ceiling} is the most that fits there`);
}

/** `7" above`, `4" below`. */
function overFloor(height: Length): string {
  return height < 0 ? `${printLength(-height as Length)} below` : `${printLength(height)} above`;
}

/** With the floor before it, the highest along its width. What one walks through stands on it, in each of its two rooms. */
function onFloor(opening: Placed, { foot }: WallShape): Placed {
  if (!foot) return opening;
  const { at, width, kind, sill } = opening;
  const { greatest } = heightRange(foot, feet(at), feet(at) + feet(width));
  const floor = lengthOf(Number.isFinite(greatest) ? greatest : 0);
  return { ...opening, floor, ...(kind !== 'window' && sill === 0 && { sill: floor }) };
}

/** What has a shape of its own is made to it: nothing cuts it. */
function shapeUnderCeiling(
  opening: Placed,
  wall: WallShape,
): readonly { readonly message: string; readonly fix: string }[] {
  const { gap, along } = leastGap(wall.top, openingPatch(opening).outline);
  // A head that follows a ceiling was taped as that was.
  if (gap >= -nearTape) return [];
  const over = printLength(lengthOf(-gap));
  const place = `${printLength(lengthOf(along))} from the left end of wall '${wall.name}'`;
  const message = `${opening.mark}, ${shapeWords(opening) ?? ''}, is ${over} over the ceiling at ${place}`;
  return [{ message, fix: `make it ${over} lower there: what has a shape of its own is not cut by the ceiling` }];
}

function overlapProblems(openings: readonly Placed[], { origin }: Room): readonly Problem[] {
  return openings.flatMap((opening, i) =>
    openings.slice(0, i).flatMap((earlier) => {
      if (earlier.wall !== opening.wall) return [];
      const across = overlap([earlier.at, earlier.width], [opening.at, opening.width]);
      const up = overlap([earlier.sill, earlier.height], [opening.sill, opening.height]);
      if (across <= 0 || up <= 0 || !shapesMeet(earlier, opening)) return [];
      const message = `${opening.mark} overlaps ${earlier.mark} in wall '${opening.wall}' by ${printLength(across)}`;
      const fix = `move it ${printLength(across)} along the wall`;
      return [problemAt(origin, [...opening.record.path, 'at'], 'openings-overlap', message, { fix })];
    }),
  );
}

/** Do two openings whose sizes overlap do so in their true shapes, by more than a tape can tell? */
function shapesMeet(one: Placed, other: Placed): boolean {
  if (!one.shape && !other.shape) return true;
  const patch = openingPatch(other);
  return areaOf(intersect([openingPatch(one)], patch)) > slackAround(patch);
}

function overlap([start, run]: readonly [number, number], [other, reach]: readonly [number, number]): Length {
  return (Math.min(start + run, other + reach) - Math.max(start, other)) as Length;
}
