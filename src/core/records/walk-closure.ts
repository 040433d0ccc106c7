import { headings } from '../../base/geometry/index.js';
import type { WalkedWall } from '../model/index.js';
import { problemAt, type Origin, type Problem } from '../../base/problem/index.js';
import { compass, printLength, type CompassBearing, type Length } from '../../base/units/index.js';

/** In nanometres, x east and y north. */
interface Step {
  readonly x: number;
  readonly y: number;
}

/** A tape is read to a sixteenth; what is missing below that is shared out by the measure. */
const tape = 25_400_000 / 16;

/** How a walk does not come back to where it began, as a surveyor says it. */
export interface Misclosure extends Mend {
  readonly message: string;
}

/** Does a walk come back to where it began? Else: how far it misses, which way, and what mends it. */
export function misclosureOf(walls: readonly WalkedWall[]): Misclosure | undefined {
  const end = walls.map(stepOf).reduce((sum, step) => ({ x: sum.x + step.x, y: sum.y + step.y }), { x: 0, y: 0 });
  const short = { x: -end.x, y: -end.y };
  if (Math.hypot(short.x, short.y) < tape) return undefined;
  const mend = mendTurn(walls, short) ??
    mendRun(walls, short) ??
    mendTwo(walls, short) ?? {
      index: walls.length - 1,
      fix: 'measure again: no one wall closes it',
    };
  return { ...mend, message: `the walls do not close: ${missWords(short)}` };
}

export function walkProblems(walls: readonly WalkedWall[], origin: Origin): readonly Problem[] {
  const found = misclosureOf(walls);
  if (!found) return [];
  return [problemAt(origin, ['walls', found.index], 'walk-open', found.message, { fix: found.fix })];
}

interface Mend {
  readonly index: number;
  readonly fix: string;
}

function stepOf({ go, run }: Pick<WalkedWall, 'go' | 'run'>): Step {
  return { x: headings[go].x * run, y: headings[go].y * run };
}

/** `3 1/2" short going west`, or two such. */
function missWords({ x, y }: Step): string {
  const parts = [
    ...(Math.abs(x) >= tape ? [`${printLength(Math.abs(x) as Length)} short going ${x > 0 ? 'east' : 'west'}`] : []),
    ...(Math.abs(y) >= tape ? [`${printLength(Math.abs(y) as Length)} short going ${y > 0 ? 'north' : 'south'}`] : []),
  ];
  return parts.length > 0 ? parts.join(' and ') : `${printLength(Math.hypot(x, y) as Length)} short`;
}

/** A wall written down with the wrong bearing. */
function mendTurn(walls: readonly WalkedWall[], short: Step): Mend | undefined {
  for (const [index, wall] of walls.entries()) {
    const step = stepOf(wall);
    const meant = compass.find((go) =>
      isNear(stepOf({ go, run: wall.run }), { x: step.x + short.x, y: step.y + short.y }),
    );
    if (meant) return { index, fix: `going ${meant} here closes it` };
  }
  return undefined;
}

/** One wall whose run is wrong: the last that is too short, beside the first that may be too long. */
function mendRun(walls: readonly WalkedWall[], short: Step): Mend | undefined {
  const size = Math.hypot(short.x, short.y);
  const along = (go: CompassBearing, sign: number): boolean =>
    isNear({ x: headings[go].x * size * sign, y: headings[go].y * size * sign }, short);
  const longer = walls.findLastIndex(({ go }) => along(go, 1));
  const shorter = walls.findIndex(({ go, run }) => along(go, -1) && run - size > tape);
  const [long, less] = [walls[longer], walls[shorter]];
  if (long && less) {
    const fix = `a run of ${runWords(long.run + size)} here, or ${runWords(size)} less on '${less.name}', closes it`;
    return { index: longer, fix };
  }
  if (long) return { index: longer, fix: `a run of ${runWords(long.run + size)} here closes it` };
  if (less) return { index: shorter, fix: `a run of ${runWords(less.run - size)} here closes it` };
  return undefined;
}

/** Two walls, one for each direction that is missed. */
function mendTwo(walls: readonly WalkedWall[], { x, y }: Step): Mend | undefined {
  const [one, other] = [mendRun(walls, { x, y: 0 }), mendRun(walls, { x: 0, y })];
  if (!one || !other || Math.abs(x) < tape || Math.abs(y) < tape) return undefined;
  const there = walls[other.index]?.name ?? '';
  return {
    index: one.index,
    fix: `${one.fix.replace(/,? closes it$/u, '')}, and on '${there}' ${other.fix.replace(/ here/u, '')}`,
  };
}

function isNear(a: Step, b: Step): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) < tape;
}

function runWords(length: number): string {
  return printLength(length as Length);
}
