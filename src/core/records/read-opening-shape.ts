import type { OpeningShape } from '../model/index.js';
import { riseOf } from '../../base/geometry/index.js';
import { problemAt, type Origin, type Path, type Problem } from '../../base/problem/index.js';
import { feet, fromFeet, printLength, type Length } from '../../base/units/index.js';
import { passed, readDimension } from './formats.js';
import type { RawArch, RawOwnOpening, RawRake } from './raw/room.js';

type RawShape = NonNullable<RawOwnOpening['shape']>;

/** The shape of an opening that `shapeProblems` has nothing against. */
export function readShapeOf(raw: RawShape): OpeningShape | undefined {
  if (raw === 'round') return { is: 'round' };
  if ('arch' in raw) {
    const { rise, radius } = raw.arch;
    if (rise !== undefined) return { is: 'arch', rise: passed(readDimension(rise)) };
    return radius === undefined ? undefined : { is: 'arch', radius: passed(readDimension(radius)) };
  }
  const [low, to] = lowerSide(raw.rake);
  return to === undefined ? undefined : { is: 'rake', low, to: passed(readDimension(to)) };
}

/** A shape fits the size of its opening. */
export function shapeProblems(raw: RawOwnOpening, path: Path, origin: Origin): readonly Problem[] {
  const { shape, mark, kind } = raw;
  if (shape === undefined) return [];
  const size = { mark, width: passed(readDimension(raw.width)), height: passed(readDimension(raw.height)) };
  const found =
    shape === 'round'
      ? roundFinding(size, kind)
      : 'arch' in shape
        ? archFinding(size, shape.arch)
        : rakeFinding(size, shape.rake);
  if (!found) return [];
  return [problemAt(origin, [...path, ...found.at], 'opening-shape', found.message, { fix: found.fix })];
}

interface Size {
  readonly mark: string;
  readonly width: Length;
  readonly height: Length;
}

interface ShapeFinding {
  /** Keys from the opening on. */
  readonly at: Path;
  readonly message: string;
  readonly fix: string;
}

function roundFinding({ mark, width, height }: Size, kind: RawOwnOpening['kind']): ShapeFinding | undefined {
  if (kind === 'door') {
    return {
      at: ['shape'],
      message: `door ${mark} is round`,
      fix: 'a door is arched, raked or of no shape of its own',
    };
  }
  if (width === height) return undefined;
  const message = `${mark} is round, but ${printLength(width)} wide and ${printLength(height)} high`;
  return { at: ['height'], message, fix: `write ${printLength(width)} for both, or leave the shape out` };
}

function archFinding({ mark, width, height }: Size, arch: RawArch): ShapeFinding | undefined {
  const { rise, radius } = arch;
  if (isMisspelt(arch, [rise, radius])) return undefined;
  const at = ['shape', 'arch'];
  if ((rise === undefined) === (radius === undefined)) {
    const what = rise === undefined ? 'neither a rise nor a radius' : 'both a rise and a radius';
    return { at, message: `the arch of ${mark} has ${what}`, fix: 'write one of the two' };
  }
  const half = printLength((width / 2) as Length);
  const [key, value] = rise === undefined ? (['radius', radius ?? ''] as const) : (['rise', rise] as const);
  const length = passed(readDimension(value));
  const says = `the arch of ${mark} has a ${key} of ${printLength(length)} over a width of ${printLength(width)}`;
  if (key === 'radius' && length * 2 < width) {
    return { at: [...at, key], message: says, fix: `${half} is the least radius: that is a half round` };
  }
  if (key === 'rise' && length * 2 > width) {
    return { at: [...at, key], message: says, fix: `${half} is the most it can rise: that is a half round` };
  }
  const rises = key === 'rise' ? length : fromFeet(riseOf(feet(length), feet(width)));
  if (rises <= height) return undefined;
  const message = `the arch of ${mark} rises ${printLength(rises)} in a height of ${printLength(height)}`;
  const fix = 'the height is that of the whole opening, from its sill to the crown of the arch';
  return { at: ['height'], message, fix };
}

function rakeFinding({ mark, height }: Size, rake: RawRake): ShapeFinding | undefined {
  if (isMisspelt(rake, [rake.left, rake.right])) return undefined;
  const at = ['shape', 'rake'];
  if ((rake.left === undefined) === (rake.right === undefined)) {
    const what = rake.left === undefined ? 'no lower side' : 'two lower sides';
    const fix = `write left or right with the height there; the other side is ${printLength(height)} high`;
    return { at, message: `the raked head of ${mark} has ${what}`, fix };
  }
  const [side, written = ''] = lowerSide(rake);
  const low = passed(readDimension(written));
  if (low < height) return undefined;
  const message = `the raked head of ${mark} is ${printLength(low)} high at its ${side}, and ${printLength(height)} at its higher side`;
  return { at: [...at, side], message, fix: 'height is that of the higher side: write the lower one here' };
}

/** Does it hold none of its figures, but another key? That one has been said. */
function isMisspelt(group: object, figures: readonly (string | undefined)[]): boolean {
  return figures.every((figure) => figure === undefined) && Object.keys(group).length > 0;
}

function lowerSide({ left, right }: RawRake): readonly ['left' | 'right', string | undefined] {
  return left === undefined ? ['right', right] : ['left', left];
}
