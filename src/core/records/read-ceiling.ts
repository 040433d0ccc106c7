import type { CeilingForm, CeilingPart, Shape } from '../model/index.js';
import { problemAt, type Outcome, type Path, type Problem } from '../../base/problem/index.js';
import { parsePitch } from '../../base/units/index.js';
import type { Checked } from './checked-record.js';
import { passed, readDimension, readFlatCeiling } from './formats.js';
import type { RawCeilingOutline, RawCeilingOver, RawCeilingPart, RawGable, RawRoom } from './raw/room.js';
import { boxCorners, outlineCorners } from './read-shape.js';

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
    form: formOf(part),
    ...(part.over && { over: isOutline(part.over) ? outlineCorners(part.over, shape) : boxCorners(part.over, shape) }),
    ...(open && { openAbove: { height: passed(readDimension(open.height)), to: open.to } }),
    ...(part.cut !== undefined && { cut: passed(readDimension(part.cut)) }),
    path,
  };
}

function isOutline(over: RawCeilingOver): over is RawCeilingOutline {
  return Array.isArray(over);
}

function formOf(part: RawCeilingPart): CeilingForm {
  switch (part.form) {
    case 'flat':
      return { form: 'flat', height: passed(readDimension(part.height)) };
    case 'shed':
      return {
        form: 'shed',
        low: part.low,
        plate: passed(readDimension(part.plate)),
        pitch: passed(parsePitch(part.pitch)),
      };
    case 'hip':
      return { form: 'hip', plate: passed(readDimension(part.plate)), pitch: passed(parsePitch(part.pitch)) };
    case 'gable': {
      const gable = { form: 'gable', ridge: part.ridge, plate: passed(readDimension(part.plate)) } as const;
      const ridgeHeight = part['ridge-height'];
      return part.pitch !== undefined
        ? { ...gable, pitch: passed(parsePitch(part.pitch)) }
        : { ...gable, ridgeHeight: passed(readDimension(ridgeHeight ?? part.plate)) };
    }
  }
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
