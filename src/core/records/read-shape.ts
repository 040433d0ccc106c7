import type { BesideEdge, OpenEdge, Point, Shape, VoidShape, WallArc, WallLean } from '../model/index.js';
import { problemAt, type Outcome, type Problem } from '../../base/problem/index.js';
import { parseLength, parseSize, type Length, isMetric } from '../../base/units/index.js';
import { soundItems, type Checked } from './checked-record.js';
import { passed, readDimension, readLength } from './formats.js';
import type { RawArc, RawLean, RawRoom, RawVoid, RawVoidBox } from './raw/room.js';
import { walkProblems } from './walk-closure.js';

/** Words that mean a kind of place, which no wall, opening or feature may be named after. */
export const placeWords = [
  'ceiling',
  'floor',
  'walls',
  'inside-walls',
  'outside-walls',
  'roof-ceiling',
  'base',
  'openings',
  'doors',
  'windows',
  'ceiling-steps',
  'risers',
] as const;

/** A side of a room: its name, what it is open to, and where it is written. */
export interface Side {
  readonly name: string;
  readonly openTo?: string;
  /** Rooms on its other side, and where that is written. */
  readonly beside?: readonly string[];
  readonly besidePath: readonly (string | number)[];
  readonly path: readonly (string | number)[];
}

const sides = ['north', 'east', 'south', 'west'] as const;

/** The room's shape; no value when it is not recorded, recorded twice, or does not close. */
export function readShape(record: Checked<RawRoom>): Outcome<Shape> {
  const { raw, origin } = record;
  const written = (['size', 'walls', 'outline'] as const).filter((key) => raw[key] !== undefined);
  const [by, second] = written;
  if (by === undefined) {
    if (['size', 'walls', 'outline'].some(record.meant)) return { problems: [] };
    const fix = `write size: ${isMetric() ? '7.2 m x 5.6 m' : `24'-0" x 18'-6"`}, or walls, or outline`;
    return { problems: [problemAt(origin, [], 'shape-missing', 'the room has no shape', { fix })] };
  }
  if (second !== undefined) {
    const fix = `keep one of ${written.join(' and ')}`;
    return {
      problems: [
        problemAt(origin, [second], 'shape-twice', `the room's shape is recorded as ${by} and as ${second}`, {
          fix,
          onKey: true,
        }),
      ],
    };
  }
  const problems = by === 'size' ? [] : (['open', 'beside'] as const).flatMap((key) => misplaced(key, record));
  if (!record.sound([by]) || !record.sound(['open']) || !record.sound(['beside'])) return { problems };
  const arcs = arcProblems(record);
  if (arcs.length > 0) return { problems: [...problems, ...arcs] };
  const shape = shapeOf(raw);
  const walk = shape.by === 'walk' ? walkProblems(shape.walls, origin) : [];
  return { value: shape, problems: [...problems, ...walk] };
}

/** An arc is known by one of two sizes. */
function arcProblems({ raw, origin }: Checked<RawRoom>): readonly Problem[] {
  const key = raw.walls ? 'walls' : 'outline';
  return (raw[key] ?? []).flatMap(({ arc }, index) => {
    if (!arc || (arc.rise === undefined) !== (arc.radius === undefined)) return [];
    const message =
      arc.rise === undefined ? 'the arc has no size' : 'the arc is recorded by its rise and by its radius';
    const fix = 'write one of the two: rise, from the straight line to the middle of the wall, or radius';
    return [problemAt(origin, [key, index, 'arc'], 'arc-size', message, { fix })];
  });
}

/** Sides by compass are those of a size. */
function misplaced(key: 'open' | 'beside', { raw, origin }: Checked<RawRoom>): readonly Problem[] {
  if (raw[key] === undefined) return [];
  const fix = `write ${key === 'open' ? 'open-to' : key} at the wall itself`;
  return [problemAt(origin, [key], 'open-misplaced', `'${key}' goes with size only`, { fix, onKey: true })];
}

function shapeOf(raw: RawRoom): Shape {
  if (raw.walls) {
    const walls = raw.walls.map((wall) => ({
      name: wall.name,
      go: wall.go,
      run: passed(readDimension(wall.run)),
      ...openTo(wall['open-to']),
      ...besideOf(wall.beside),
      ...arcOf(wall.arc),
      ...leanOf(wall.leans),
    }));
    return { by: 'walk', walls };
  }
  if (raw.outline) {
    const corners = raw.outline.map((corner) => ({
      at: { x: passed(parseLength(corner.x)), y: passed(parseLength(corner.y)) },
      wall: corner.wall,
      ...openTo(corner['open-to']),
      ...besideOf(corner.beside),
      ...arcOf(corner.arc),
      ...leanOf(corner.leans),
    }));
    return { by: 'outline', corners };
  }
  const open = sides.flatMap((wall): OpenEdge[] => {
    const to = raw.open?.[wall];
    return to === undefined ? [] : [{ wall, to }];
  });
  const beside = sides.flatMap((wall): BesideEdge[] => {
    const rooms = besideOf(raw.beside?.[wall]).beside;
    return rooms ? [{ wall, rooms }] : [];
  });
  return { by: 'size', ...passed(parseSize(raw.size ?? '')), open, ...(beside.length > 0 && { beside }) };
}

function arcOf(arc: RawArc | undefined): { readonly arc?: WallArc } {
  if (!arc) return {};
  const { bows, rise, radius } = arc;
  if (rise !== undefined) return { arc: { bows, rise: passed(readDimension(rise)) } };
  return radius === undefined ? {} : { arc: { bows, radius: passed(readDimension(radius)) } };
}

function leanOf(lean: RawLean | undefined): { readonly leans?: WallLean } {
  return lean ? { leans: { by: passed(readDimension(lean.by)), at: passed(readDimension(lean.at)) } } : {};
}

/** One room is written without a list. */
function besideOf(rooms: string | readonly string[] | undefined): { readonly beside?: readonly string[] } {
  if (rooms === undefined) return {};
  return { beside: typeof rooms === 'string' ? [rooms] : rooms };
}

function openTo(room: string | undefined): { readonly openTo?: string } {
  return room === undefined ? {} : { openTo: room };
}

/** Sides of a shape in the order they are walked. */
export function sidesOf(shape: Shape): readonly Side[] {
  switch (shape.by) {
    case 'size':
      return sides.map((name) => ({
        name,
        ...openTo(shape.open.find(({ wall }) => wall === name)?.to),
        ...besideOf(shape.beside?.find(({ wall }) => wall === name)?.rooms),
        besidePath: ['beside', name],
        path: shape.open.some(({ wall }) => wall === name) ? ['open', name] : ['size'],
      }));
    case 'walk':
      return shape.walls.map(({ name, openTo: to, beside }, index) => ({
        name,
        ...openTo(to),
        ...besideOf(beside),
        besidePath: ['walls', index, 'beside'],
        path: ['walls', index],
      }));
    case 'outline':
      return shape.corners.map(({ wall, openTo: to, beside }, index) => ({
        name: wall,
        ...openTo(to),
        ...besideOf(beside),
        besidePath: ['outline', index, 'beside'],
        path: ['outline', index],
      }));
  }
}

/** South-west corner of the shape's bounding box. Size and walk have it at (0, 0); an outline keeps its own coordinates. */
export function southWest(shape: Shape): Point {
  if (shape.by !== 'outline') return { x: 0 as Length, y: 0 as Length };
  const [xs, ys] = [shape.corners.map(({ at }) => at.x), shape.corners.map(({ at }) => at.y)];
  return { x: Math.min(...xs) as Length, y: Math.min(...ys) as Length };
}

/** Sides of a box in the order of its corners. */
const boxSides = ['west', 'north', 'east', 'south'];

/** Corners, clockwise from the south-west, of a box that is recorded from the room's south-west corner. */
export function boxCorners(box: Pick<RawVoidBox, 'x' | 'y' | 'width' | 'depth'>, shape: Shape): readonly Point[] {
  const corner = southWest(shape);
  const [west, south] = [corner.x + passed(readLength(box.x)), corner.y + passed(readLength(box.y))];
  const [east, north] = [west + passed(readDimension(box.width)), south + passed(readDimension(box.depth))];
  const point = (x: number, y: number): Point => ({ x: x as Length, y: y as Length });
  return [point(west, south), point(west, north), point(east, north), point(east, south)];
}

/** Corners that are recorded from the room's south-west corner. */
export function outlineCorners(
  corners: readonly { readonly x: string; readonly y: string }[],
  shape: Shape,
): readonly Point[] {
  const corner = southWest(shape);
  return corners.map(({ x, y }) => ({
    x: (corner.x + passed(readLength(x))) as Length,
    y: (corner.y + passed(readLength(y))) as Length,
  }));
}

export function readVoids(record: Checked<RawRoom>, shape: Shape): readonly VoidShape[] {
  return soundItems<RawVoid>(record, 'voids').map(({ raw }) => ({
    name: raw.name,
    ...('outline' in raw
      ? {
          corners: outlineCorners(raw.outline, shape),
          sides: raw.outline.map(({ side }, index) => side ?? String(index + 1)),
        }
      : { corners: boxCorners(raw, shape), sides: boxSides }),
    ...(raw.ceiling === 'open' && { isOpenAbove: true }),
  }));
}
