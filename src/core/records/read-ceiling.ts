import type { CeilingForm, CeilingPart, Point, Shape, SpacePoint } from '../model/index.js';
import { problemAt, type Outcome, type Path, type Problem } from '../../base/problem/index.js';
import { parseLength, parsePitch, type Length } from '../../base/units/index.js';
import type { Checked } from './checked-record.js';
import { passed, readDimension, readFlatCeiling, readHeading } from './formats.js';
import type {
  RawCeilingOutline,
  RawCeilingOver,
  RawCeilingPart,
  RawCeilingPoint,
  RawGable,
  RawPlanes,
  RawRoom,
} from './raw/room.js';
import { boxCorners, outlineCorners, southWest } from './read-shape.js';

/** Parts of a room's ceiling; no value when the schema, the shape or a rule has something against it. */
export function readCeiling(
  { raw, origin, sound }: Checked<RawRoom>,
  shape: Shape | undefined,
): Outcome<readonly CeilingPart[]> {
  if (!sound(['ceiling'])) return { problems: [] };
  const { ceiling } = raw;
  if (typeof ceiling === 'string') {
    const height = passed(readFlatCeiling(ceiling));
    return { value: [{ name: 'Ceiling', form: { form: 'flat', height }, path: ['ceiling'] }], problems: [] };
  }
  const list = Array.isArray(ceiling);
  const parts = (list ? ceiling : [ceiling]).map((part, index) => ({
    part,
    path: (list ? ['ceiling', index] : ['ceiling']) as Path,
    name: part.name ?? (list && ceiling.length > 1 ? `Ceiling ${index + 1}` : 'Ceiling'),
  }));
  const problems: Problem[] = [];
  for (const { part, path, name } of parts) {
    if (part.form === 'planes') problems.push(...planeProblems(part, path, origin));
    if (part.form === 'gable') problems.push(...gableProblems(part, path, origin));
    if (parts.length > 1 && part.over === undefined) {
      const fix = 'write over: { x: …, y: …, width: …, depth: … }, or a list of corners { x: …, y: … }';
      problems.push(problemAt(origin, path, 'ceiling-over-missing', `${name} does not say what it is over`, { fix }));
    }
  }
  if (problems.length > 0 || !shape) return { problems };
  return { value: parts.map(({ part, path, name }) => readPart(part, path, name, shape)), problems };
}

function readPart(part: RawCeilingPart, path: Path, name: string, shape: Shape): CeilingPart {
  const open = part['open-above'];
  return {
    name,
    form: formOf(part, shape),
    ...(part.over && { over: cornersOver(part.over, shape) }),
    ...(open && { openAbove: { height: passed(readDimension(open.height)), to: open.to } }),
    ...(part.cut !== undefined && { cut: passed(readDimension(part.cut)) }),
    path,
  };
}

/** Corners of what a part of a ceiling or of a floor covers. */
export function cornersOver(over: RawCeilingOver, shape: Shape): readonly Point[] {
  return isOutline(over) ? outlineCorners(over, shape) : boxCorners(over, shape);
}

function isOutline(over: RawCeilingOver): over is RawCeilingOutline {
  return Array.isArray(over);
}

function formOf(part: RawCeilingPart, shape: Shape): CeilingForm {
  switch (part.form) {
    case 'flat':
      return { form: 'flat', height: passed(readDimension(part.height)) };
    case 'shed':
      return {
        form: 'shed',
        low: passed(readHeading(part.low)),
        plate: passed(readDimension(part.plate)),
        pitch: passed(parsePitch(part.pitch)),
      };
    case 'hip':
      return { form: 'hip', plate: passed(readDimension(part.plate)), pitch: passed(parsePitch(part.pitch)) };
    case 'planes':
      return { form: 'planes', planes: part.planes.map((points) => points.map((point) => spacePoint(point, shape))) };
    case 'gable': {
      const gable = {
        form: 'gable',
        ridge: passed(readHeading(part.ridge)),
        plate: passed(readDimension(part.plate)),
      } as const;
      const ridgeHeight = part['ridge-height'];
      return part.pitch !== undefined
        ? { ...gable, pitch: passed(parsePitch(part.pitch)) }
        : { ...gable, ridgeHeight: passed(readDimension(ridgeHeight ?? part.plate)) };
    }
  }
}

function spacePoint({ x, y, height }: RawCeilingPoint, shape: Shape): SpacePoint {
  const corner = southWest(shape);
  const along = (start: Length, text: string) => (start + passed(parseLength(text))) as Length;
  return { x: along(corner.x, x), y: along(corner.y, y), height: passed(parseLength(height)) };
}

/** Three points in a line are no plane. */
function planeProblems({ planes }: RawPlanes, path: Path, origin: Checked<RawRoom>['origin']): readonly Problem[] {
  return planes.flatMap((points, index) => {
    const [one, two, three] = points.map(({ x, y }) => [passed(parseLength(x)), passed(parseLength(y))] as const);
    if (!one || !two || !three) return [];
    const turn = (two[0] - one[0]) * (three[1] - one[1]) - (two[1] - one[1]) * (three[0] - one[0]);
    const longest = Math.max(...[two, three].map(([x, y]) => Math.hypot(x - one[0], y - one[1])));
    if (Math.abs(turn) > longest * 1_000_000) return [];
    const fix = 'take one of them from another side of the plane';
    return [
      problemAt(origin, [...path, 'planes', index], 'ceiling-rise', 'the three points of the plane lie in a line', {
        fix,
      }),
    ];
  });
}

/** A gable rises by its pitch or to its ridge height, and the ridge is above the plate. */
function gableProblems(gable: RawGable, path: Path, origin: Checked<RawRoom>['origin']): readonly Problem[] {
  const ridge = gable['ridge-height'];
  if (gable.pitch === undefined && ridge === undefined) {
    return [
      problemAt(origin, path, 'ceiling-rise', 'the gable does not say how it rises', {
        fix: 'write pitch, or ridge-height',
      }),
    ];
  }
  if (ridge === undefined) return [];
  if (gable.pitch !== undefined) {
    const fix = 'keep one of pitch and ridge-height';
    return [
      problemAt(origin, [...path, 'ridge-height'], 'ceiling-rise', 'the gable has a pitch and a ridge height', {
        fix,
        onKey: true,
      }),
    ];
  }
  if (passed(readDimension(ridge)) > passed(readDimension(gable.plate))) return [];
  const message = `the ridge at ${ridge} is not above the plate at ${gable.plate}`;
  return [
    problemAt(origin, [...path, 'ridge-height'], 'ceiling-rise', message, { fix: 'heights are above the floor' }),
  ];
}
