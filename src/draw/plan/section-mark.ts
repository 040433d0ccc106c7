import { headings } from '../../base/geometry/index.js';
import type { RoomMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import { sizes } from '../pen.js';
import { lineInPlan, type LetteredSection } from '../section/index.js';
import type { Sheet } from '../sheet.js';
import type { WallLine } from './wall-line.js';

/** Of a mark in points: its line, the arrow's reach and the space of its letter. */
const size = { line: 13, arrow: 11, letter: 12 };

/** Both ends of the line that a section is cut along, outside of the walls: which way one looks, and its letter. */
export function drawSectionMarks(
  sheet: Sheet,
  measure: RoomMeasure,
  lines: readonly WallLine[],
  sections: readonly LetteredSection[],
): void {
  const wall = Math.max(...lines.map(({ thickness }) => thickness));
  for (const section of sections) {
    const [left, right] = lineInPlan(measure, section).map((point) => sheet.spot(point)) as [Spot, Spot];
    const length = Math.hypot(right[0] - left[0], right[1] - left[1]);
    const along: Spot = [(right[0] - left[0]) / length, (right[1] - left[1]) / length];
    const { x, y } = headings[section.looks];
    for (const [end, way] of [
      [left, -1],
      [right, 1],
    ] as const)
      drawEnd(sheet, { end, out: [along[0] * way, along[1] * way], looks: [x, -y], wall, letter: section.letter });
  }
}

interface End {
  readonly end: Spot;
  /** Away from the room, along the cut. */
  readonly out: Spot;
  readonly looks: Spot;
  readonly wall: number;
  readonly letter: string;
}

function drawEnd(sheet: Sheet, { end, out, looks, wall, letter }: End): void {
  const at = (along: number, ahead: number): Spot => [
    end[0] + out[0] * along + looks[0] * ahead,
    end[1] + out[1] * along + looks[1] * ahead,
  ];
  const { line, arrow, letter: space } = size;
  const around = (start: number): Spot[] => [
    at(start, -5),
    at(start + line + space, -5),
    at(start + line + space, arrow + 2),
    at(start, arrow + 2),
  ];
  const steps = Array.from({ length: 12 }, (_, i) => wall + 4 + i * 6);
  const start = steps.find((each) => sheet.isFree(around(each), 1)) ?? wall + 4;
  const tip = start + line;
  sheet.polyline([at(start, 0), at(tip, 0)], { pen: 'cut', layer: 'object' });
  sheet.polyline([at(tip, 0), at(tip, arrow - 5)], { pen: 'object', layer: 'object' });
  sheet.polygon([at(tip, arrow), at(tip - 3, arrow - 6), at(tip + 3, arrow - 6)], {
    pen: 'fine',
    fill: 'ink',
    layer: 'object',
  });
  const [x, y] = at(tip + space / 2 + 1, 1);
  sheet.write([x, y + sizes.name * 0.36], letter, { size: sizes.name, weight: 600 });
  sheet.reserve(around(start));
}
