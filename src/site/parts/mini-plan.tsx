import type { VNode } from 'preact';
import type { BookRoom } from '../../core/book/index.js';
import { numberText } from '../../base/svg/index.js';
import { feet } from '../../base/units/index.js';
import type { Point, WallMeasure } from '../../core/model/index.js';

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
  const outline = (points: readonly Point[]): string => `M${points.map(at).join('L')}Z`;
  const standing = walls.filter((wall) => wall.openTo === undefined);
  const stretches = standing.flatMap((wall) =>
    solidStretches(
      wall,
      openings.filter((opening) => opening.wall === wall.id),
    ),
  );
  const windows = openings.flatMap((opening) => {
    const wall = standing.find((candidate) => candidate.id === opening.wall);
    return wall && opening.kind === 'window'
      ? [[along(wall, opening.at), along(wall, opening.at + opening.width)] as const]
      : [];
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
      <path class="mini-wall" d={stretches.map(([from, to]) => `M${at(from)}L${at(to)}`).join('')} />
      {windows.length > 0 && (
        <path class="mini-window" d={windows.map(([from, to]) => `M${at(from)}L${at(to)}`).join('')} />
      )}
    </svg>
  );
}

/** What stands of a wall between its openings, from the left as seen from inside. */
function solidStretches(wall: WallMeasure, openings: BookRoom['measure']['openings']): (readonly [Point, Point])[] {
  const sorted = [...openings].sort((a, b) => a.at - b.at);
  const stretches: (readonly [Point, Point])[] = [];
  let start = 0;
  for (const opening of sorted) {
    if (opening.at > start) stretches.push([along(wall, start), along(wall, opening.at)]);
    start = Math.max(start, opening.at + opening.width);
  }
  if (start < wall.run) stretches.push([along(wall, start), along(wall, wall.run)]);
  return stretches;
}

function along({ from, to, run }: WallMeasure, distance: number): Point {
  const share = run === 0 ? 0 : distance / run;
  return { x: (from.x + (to.x - from.x) * share) as Point['x'], y: (from.y + (to.y - from.y) * share) as Point['y'] };
}
