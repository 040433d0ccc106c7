import type { Convex, Spot } from './convex.js';

/** True when the spot lies in the outline (even-odd). */
export function isInside([x, y]: Spot, outline: readonly Spot[]): boolean {
  let inside = false;
  for (let index = 0; index < outline.length; index++) {
    const [ax, ay] = outline[index]!;
    const [bx, by] = outline[(index + 1) % outline.length]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  }
  return inside;
}

/** Spots of a grid over the outline, those nearest to its middle first. */
export function spotsInside(outline: readonly Spot[], steps = 16): Spot[] {
  const xs = outline.map((spot) => spot[0]);
  const ys = outline.map((spot) => spot[1]);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const middle = centroid(outline);
  const spots: Spot[] = isInside(middle, outline) ? [middle] : [];
  for (let row = 1; row < steps; row++) {
    for (let column = 1; column < steps; column++) {
      const spot: Spot = [left + ((right - left) * column) / steps, top + ((bottom - top) * row) / steps];
      if (isInside(spot, outline)) spots.push(spot);
    }
  }
  return spots
    .map((spot) => ({ spot, distance: Math.hypot(spot[0] - middle[0], spot[1] - middle[1]) }))
    .sort((a, b) => a.distance - b.distance)
    .map(({ spot }) => spot);
}

/** Center of the area of an outline; the mean of its corners when it has no area. */
function centroid(outline: readonly Spot[]): Spot {
  let area = 0;
  let x = 0;
  let y = 0;
  outline.forEach(([ax, ay], index) => {
    const [bx, by] = outline[(index + 1) % outline.length]!;
    const cross = ax * by - bx * ay;
    area += cross;
    x += (ax + bx) * cross;
    y += (ay + by) * cross;
  });
  if (Math.abs(area) > 1e-6) return [x / (3 * area), y / (3 * area)];
  const count = Math.max(1, outline.length);
  return [
    outline.reduce((sum, spot) => sum + spot[0], 0) / count,
    outline.reduce((sum, spot) => sum + spot[1], 0) / count,
  ];
}

export function boxAround([x, y]: Spot, width: number, height: number): Convex {
  return [
    [x - width / 2, y - height / 2],
    [x + width / 2, y - height / 2],
    [x + width / 2, y + height / 2],
    [x - width / 2, y + height / 2],
  ];
}

/** Stretches of the line through `through` along `direction` that lie in the region (even-odd over all outlines). */
export function stretchesInside(
  outlines: readonly (readonly Spot[])[],
  through: Spot,
  direction: Spot,
): [Spot, Spot][] {
  const hits: number[] = [];
  for (const outline of outlines) {
    outline.forEach((a, index) => {
      const b = outline[(index + 1) % outline.length]!;
      const sideA = (a[0] - through[0]) * direction[1] - (a[1] - through[1]) * direction[0];
      const sideB = (b[0] - through[0]) * direction[1] - (b[1] - through[1]) * direction[0];
      if (sideA > 0 === sideB > 0) return;
      const share = sideA / (sideA - sideB);
      const x = a[0] + (b[0] - a[0]) * share;
      const y = a[1] + (b[1] - a[1]) * share;
      hits.push((x - through[0]) * direction[0] + (y - through[1]) * direction[1]);
    });
  }
  hits.sort((a, b) => a - b);
  const stretches: [Spot, Spot][] = [];
  for (let index = 0; index + 1 < hits.length; index += 2) {
    const from = hits[index]!;
    const to = hits[index + 1]!;
    if (to - from < 0.01) continue;
    stretches.push([
      [through[0] + direction[0] * from, through[1] + direction[1] * from],
      [through[0] + direction[0] * to, through[1] + direction[1] * to],
    ]);
  }
  return stretches;
}
