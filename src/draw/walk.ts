import { distance, headings, type Xy } from '../base/geometry/index.js';
import { circle, element, group, line, text, type SvgNode } from '../base/svg/index.js';
import { feet, fromFeet, printLength } from '../base/units/index.js';
import type { WalkedWall } from '../core/model/index.js';
import type { Palette } from './palette.js';

const [width, height, margin] = [620, 440, 64];

/** Walls as far as they were walked, seen from above with north up, each with its length; what is missing to where they began is dashed, with
 *  its length. Not to scale: as large as its place. */
export function drawWalk(walls: readonly WalkedWall[], palette: Palette): SvgNode {
  const corners = cornersOf(walls);
  const place = placed(corners);
  const [first, last] = [corners[0]!, corners.at(-1)!];
  const miss = distance(first, last);
  const isOpen = miss > 1 / 12 / 16;
  const sides = walls.map(({ run }, i) => {
    const [a, b] = [place(corners[i]!), place(corners[i + 1]!)];
    return group({}, [
      line(a.x, a.y, b.x, b.y, { stroke: palette.ink, 'stroke-width': 3, 'stroke-linecap': 'round' }),
      label(a, b, printLength(run), palette.text),
    ]);
  });
  const [start, end] = [place(first), place(last)];
  const gap = [
    line(end.x, end.y, start.x, start.y, { stroke: palette.alert, 'stroke-width': 2, 'stroke-dasharray': '7 6' }),
    label(end, start, printLength(fromFeet(miss)), palette.alert),
  ];
  const said = isOpen
    ? `The walls as walked; ${printLength(fromFeet(miss))} are missing to where they began.`
    : 'The walls as walked; they close.';
  return element(
    'svg',
    {
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-label': said,
      'font-family': 'Public Sans',
      'font-size': 15,
    },
    ...sides,
    ...(isOpen && walls.length > 1 ? gap : []),
    circle(start.x, start.y, 5, { fill: palette.accent }),
  );
}

/** In feet, from where the walk began. */
function cornersOf(walls: readonly WalkedWall[]): readonly Xy[] {
  const corners: Xy[] = [{ x: 0, y: 0 }];
  for (const { go, run } of walls) {
    const { x, y } = corners.at(-1)!;
    corners.push({ x: x + headings[go].x * feet(run), y: y + headings[go].y * feet(run) });
  }
  return corners;
}

function placed(corners: readonly Xy[]): (corner: Xy) => Xy {
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const [west, east, south, north] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = Math.min(
    (width - 2 * margin) / Math.max(1, east - west),
    (height - 2 * margin) / Math.max(1, north - south),
  );
  return ({ x, y }) => ({
    x: width / 2 + (x - (west + east) / 2) * scale,
    y: height / 2 - (y - (south + north) / 2) * scale,
  });
}

/** Beside the middle of a wall, on the side that is outside when the walk goes clockwise. */
function label(a: Xy, b: Xy, words: string, fill: string): SvgNode {
  const length = Math.max(1, Math.hypot(b.x - a.x, b.y - a.y));
  const out = { x: (b.y - a.y) / length, y: -(b.x - a.x) / length };
  const anchor = Math.abs(out.x) < 0.4 ? 'middle' : out.x > 0 ? 'start' : 'end';
  return text((a.x + b.x) / 2 + out.x * 12, (a.y + b.y) / 2 + out.y * 12 + 5, words, { fill, 'text-anchor': anchor });
}
