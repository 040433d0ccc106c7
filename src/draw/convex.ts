/** A place on the sheet in points (1/72 inch), x to the right, y down. */
export type Spot = readonly [x: number, y: number];

/** Corners of a convex figure in order; a line is a figure of two. */
export type Convex = readonly Spot[];

/** True when the figures share more than a touching edge (separating axis theorem). `clearance` widens the first figure. */
export function overlaps(a: Convex, b: Convex, clearance = 0): boolean {
  return !separated(a, b, clearance) && !separated(b, a, clearance);
}

/** The upright box around a figure. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function extentOf(figure: Convex): Extent {
  const [xs, ys] = [figure.map(([x]) => x), figure.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** False where the boxes of two figures lie so far apart that the figures can't overlap. */
export function extentsMeet(a: Extent, b: Extent, clearance: number): boolean {
  return (
    b.right + clearance >= a.left &&
    a.right + clearance >= b.left &&
    b.bottom + clearance >= a.top &&
    a.bottom + clearance >= b.top
  );
}

/** A rectangle turned by `degrees` clockwise about `origin`; left, top, width, height are before the turn, from the origin. */
export function turnedBox(
  origin: Spot,
  left: number,
  top: number,
  width: number,
  height: number,
  degrees: number,
): Convex {
  const turn = (degrees * Math.PI) / 180;
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  const corners: Spot[] = [
    [left, top],
    [left + width, top],
    [left + width, top + height],
    [left, top + height],
  ];
  return corners.map(([x, y]) => [origin[0] + x * cos - y * sin, origin[1] + x * sin + y * cos]);
}

function separated(a: Convex, b: Convex, clearance: number): boolean {
  for (let index = 0; index < a.length; index++) {
    const from = a[index]!;
    const to = a[(index + 1) % a.length]!;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (length < 1e-9) continue;
    const normal: Spot = [(to[1] - from[1]) / length, -(to[0] - from[0]) / length];
    if (apart(a, b, normal, clearance)) return true;
    // A line's own direction separates too.
    if (a.length === 2 && apart(a, b, [-normal[1], normal[0]], clearance)) return true;
  }
  return false;
}

function apart(a: Convex, b: Convex, axis: Spot, clearance: number): boolean {
  const [aLow, aHigh] = extent(a, axis);
  const [bLow, bHigh] = extent(b, axis);
  return aHigh + clearance <= bLow + 1e-6 || bHigh <= aLow - clearance + 1e-6;
}

function extent(figure: Convex, axis: Spot): [number, number] {
  let low = Infinity;
  let high = -Infinity;
  for (const [x, y] of figure) {
    const along = x * axis[0] + y * axis[1];
    if (along < low) low = along;
    if (along > high) high = along;
  }
  return [low, high];
}
