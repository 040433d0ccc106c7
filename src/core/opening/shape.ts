import { arcCorners, circleCorners, riseOf, type Ring } from '../../base/geometry/index.js';
import type { OpeningMeasure, OpeningShape } from '../model/index.js';
import { feet, fromFeet, type Area, type Length } from '../../base/units/index.js';

/** Size of an opening and what shape fills it. */
export type OpeningForm = Pick<OpeningMeasure, 'width' | 'height' | 'shape'>;

/** Lengths around an opening, in feet. */
export interface OpeningSides {
  /** Its top as it runs: level, along the slope or the arch; of a round one the whole circle. */
  readonly head: number;
  readonly left: number;
  readonly right: number;
  readonly sill: number;
}

/** Source: geometry. An arc is radius × angle, a slope √(run² + rise²). */
export function sidesOf({ width, height, shape }: OpeningForm): OpeningSides {
  const [wide, high] = [feet(width), feet(height)];
  switch (shape?.is) {
    case undefined:
      return { head: wide, left: high, right: high, sill: wide };
    case 'round':
      return { head: Math.PI * wide, left: 0, right: 0, sill: 0 };
    case 'arch': {
      const { radius, angle, rise } = arcOf(wide, shape);
      return { head: radius * angle, left: high - rise, right: high - rise, sill: wide };
    }
    case 'rake': {
      const [left, right] = rakeHeights(high, shape);
      return { head: Math.hypot(wide, right - left), left, right, sill: wide };
    }
  }
}

/** Length all around, in feet. */
export function aroundOf(form: OpeningForm): number {
  const { head, left, right, sill } = sidesOf(form);
  return head + left + right + sill;
}

/** Source: geometry. A circle is π·r², a segment r²·(φ − sin φ)/2 of the angle φ that it spans, a trapezoid its mean height × width. */
export function openingArea({ width, height, shape }: OpeningForm): Area {
  const [wide, high] = [feet(width), feet(height)];
  switch (shape?.is) {
    case undefined:
      return (wide * high) as Area;
    case 'round':
      return ((Math.PI * wide * wide) / 4) as Area;
    case 'arch': {
      const { radius, angle, rise } = arcOf(wide, shape);
      return (wide * (high - rise) + (radius * radius * (angle - Math.sin(angle))) / 2) as Area;
    }
    case 'rake': {
      const [left, right] = rakeHeights(high, shape);
      return ((wide * (left + right)) / 2) as Area;
    }
  }
}

/** Its outline in feet from its lower left corner, counter-clockwise. A curve is a polygon that encloses just what the curve does. */
export function outlineOf({ width, height, shape }: OpeningForm): Ring {
  const [wide, high] = [feet(width), feet(height)];
  switch (shape?.is) {
    case undefined:
      return boxUnder(wide, high, high);
    case 'round':
      return circleCorners({ center: { x: wide / 2, y: wide / 2 }, radius: wide / 2 });
    case 'arch': {
      const { radius, angle, rise } = arcOf(wide, shape);
      const arc = arcCorners({ center: { x: wide / 2, y: high - radius }, radius }, (Math.PI - angle) / 2, angle);
      const box = boxUnder(wide, high - rise, high - rise);
      // Where the arch springs from the sill there are no upright sides.
      return high - rise < noSide ? [...box.slice(0, 2), ...arc] : [...box.slice(0, 3), ...arc, ...box.slice(3)];
    }
    case 'rake':
      return boxUnder(wide, ...rakeHeights(high, shape));
  }
}

/** Height of the ends of an arch over its sill, and of the lower side of a raked head: what a tape finds beside the height. */
export function springingOf({ width, height, shape }: OpeningForm): Length | undefined {
  if (shape?.is === 'rake') return shape.to;
  return shape?.is === 'arch' ? fromFeet(feet(height) - arcOf(feet(width), shape).rise) : undefined;
}

/** The same shape from the other side. */
export function flippedShape(shape: OpeningShape): OpeningShape {
  return shape.is === 'rake' ? { ...shape, low: shape.low === 'left' ? 'right' : 'left' } : shape;
}

/** As the opening with so much more around all of it, such as its casing; less than nothing for what is inside of it. */
export function grown({ width, height, shape }: OpeningForm, by: Length): OpeningForm {
  const wider = (width + 2 * by) as Length;
  const higher = (height + 2 * by) as Length;
  switch (shape?.is) {
    case undefined:
    case 'round':
      return { width: wider, height: higher, ...(shape && { shape }) };
    case 'arch': {
      const radius = fromFeet(arcOf(feet(width), shape).radius + feet(by));
      return { width: wider, height: higher, shape: { is: 'arch', radius } };
    }
    case 'rake': {
      // The head keeps its slope and moves square to itself.
      const fall = (height - shape.to) / width;
      const up = by * Math.hypot(1, fall);
      const [top, low] = [height + up + fall * by, shape.to + up - fall * by].map((value) => Math.round(value + by));
      return { width: wider, height: top as Length, shape: { ...shape, to: low as Length } };
    }
  }
}

const noSide = 1e-6;

/** Radius and rise in feet, and the angle that the arch spans in radians. */
function arcOf(
  wide: number,
  shape: Extract<OpeningShape, { is: 'arch' }>,
): { readonly radius: number; readonly rise: number; readonly angle: number } {
  const half = wide / 2;
  const rise = 'rise' in shape ? feet(shape.rise) : riseOf(feet(shape.radius), wide);
  const radius = 'rise' in shape ? (half * half + rise * rise) / (2 * rise) : feet(shape.radius);
  return { radius, rise, angle: 2 * Math.atan2(half, radius - rise) };
}

function rakeHeights(high: number, { low, to }: Extract<OpeningShape, { is: 'rake' }>): readonly [number, number] {
  return low === 'left' ? [feet(to), high] : [high, feet(to)];
}

function boxUnder(wide: number, left: number, right: number): Ring {
  return [
    { x: 0, y: 0 },
    { x: wide, y: 0 },
    { x: wide, y: right },
    { x: 0, y: left },
  ];
}
