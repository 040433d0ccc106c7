import type { VNode } from 'preact';
import type { BookRoom } from '../../core/book/index.js';
import { numberText } from '../../base/svg/index.js';
import { feet } from '../../base/units/index.js';
import { wallLine, type Point, type WallMeasure } from '../../core/model/index.js';

/** A room's outline with its openings as gaps, in pixels of `perFoot`, so that rooms side by side share one scale. */
export function MiniPlan({ room, perFoot }: { room: BookRoom; perFoot: number }): VNode {
  const { plan, walls, openings, voids } = room.measure;
  const xs = plan.map((point) => feet(point.x));
  const ys = plan.map((point) => feet(point.y));
  const [left, top] = [Math.min(...xs), Math.max(...ys)];
  const width = (Math.max(...xs) - left) * perFoot + 6;
  const height = (top - Math.min(...ys)) * perFoot + 6;
  const at = (point: Point): string =>
    `${numberText((feet(point.x) - left) * perFoot + 3, 1)} ${numberText((top - feet(point.y)) * perFoot + 3, 1)}`;
  const open = (points: readonly Point[]): string => `M${points.map(at).join('L')}`;
  const outline = (points: readonly Point[]): string => `${open(points)}Z`;
  const standing = walls.filter((wall) => wall.openTo === undefined);
  const stretches = standing.flatMap((wall) =>
    solidStretches(
      wall,
      openings.filter((opening) => opening.wall === wall.id),
    ),
  );
  const windows = openings.flatMap((opening) => {
    const wall = standing.find((candidate) => candidate.id === opening.wall);
    return wall && opening.kind === 'window' ? [lineAlong(wall, opening.at, opening.at + opening.width)] : [];
  });
  return (
    <svg
      class="mini-plan"
      viewBox={`0 0 ${numberText(width)} ${numberText(height)}`}
      width={numberText(width)}
      height={numberText(height)}
      aria-hidden="true"
      focusable="false"
    >
      <path class="mini-floor" d={outline(plan)} />
      {voids.map((hole) => (
        <path class="mini-void" d={outline(hole.outline)} />
      ))}
      <path class="mini-wall" d={stretches.map(open).join('')} />
      {windows.length > 0 && <path class="mini-window" d={windows.map(open).join('')} />}
    </svg>
  );
}

/** What stands of a wall between its openings, from the left as seen from inside. */
function solidStretches(wall: WallMeasure, openings: BookRoom['measure']['openings']): (readonly Point[])[] {
  const sorted = [...openings].sort((a, b) => a.at - b.at);
  const stretches: (readonly Point[])[] = [];
  let start = 0;
  for (const opening of sorted) {
    if (opening.at > start) stretches.push(lineAlong(wall, start, opening.at));
    start = Math.max(start, opening.at + opening.width);
  }
  if (start < wall.run) stretches.push(lineAlong(wall, start, wall.run));
  return stretches;
}

/** The wall's line from one place along it to another. */
function lineAlong(wall: WallMeasure, from: number, to: number): readonly Point[] {
  const line = wallLine(wall);
  const between = line.filter(({ along }) => along > from && along < to).map(({ at }) => at);
  return [pointAlong(line, from), ...between, pointAlong(line, to)];
}

function pointAlong(line: ReturnType<typeof wallLine>, distance: number): Point {
  const index = Math.max(
    1,
    line.findIndex(({ along }) => along >= distance),
  );
  const [from, to] = [line[index - 1]!, line[index] ?? line.at(-1)!];
  const share = to.along === from.along ? 0 : (distance - from.along) / (to.along - from.along);
  const on = (axis: 'x' | 'y') => (from.at[axis] + (to.at[axis] - from.at[axis]) * share) as Point['x'];
  return { x: on('x'), y: on('y') };
}
