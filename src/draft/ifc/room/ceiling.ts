import {
  bounds,
  envelopeHeight,
  headings,
  heightOn,
  nearestHeading,
  slopeOf,
  type Plane,
  type Ring,
  type Xy,
} from '../../../base/geometry/index.js';
import { compass, fromFeet, toRecordStep, writeLength, writePitch, type Length } from '../../../base/units/index.js';
import { untaken } from '../name.js';
import { PartRefused } from '../refused.js';
import { overText } from './plan.js';
import { standingAtZero, type CeilingPlane, type SpaceShape } from './shape.js';

/** Half a millimetre, in feet: heights no further apart are one. */
const near = 0.5 / 304.8;

/** The ceiling's lines in the record. Where the lowest of its planes is the ceiling everywhere, they are one form; else each plane is a part
 *  of the ceiling over its own part of the plan. */
export function ceilingLines(shape: SpaceShape): readonly string[] {
  const { floor, ceiling } = standingAtZero(shape);
  const planes = ceiling.map(({ plane }) => plane);
  const [only, ...more] = planes;
  if (!only) throw new PartRefused('it has no ceiling');
  if (more.length === 0 && isFlat(only)) return [`ceiling: flat ${heightText(only.c)}`];
  if (isEnvelope(ceiling)) return [`ceiling: { ${formKeys(planes, floor.outline)} }`];
  const names = new Set<string>();
  const parts = ceiling.flatMap(({ plane, patches }) =>
    patches.map(({ outline, holes }) => {
      if (holes.length > 0) throw new PartRefused('a part of its ceiling lies around another');
      const name = untaken(planeName(plane), names);
      return `  - { name: ${name}, ${formKeys([plane], outline)}, over: ${overText(outline)} }`;
    }),
  );
  return ['ceiling:', ...parts];
}

/** Is the lowest of the planes the ceiling everywhere? */
function isEnvelope(ceiling: readonly CeilingPlane[]): boolean {
  const planes = ceiling.map(({ plane }) => plane);
  return ceiling.every(({ plane, patches }) =>
    patches.every(({ outline }) =>
      outline.every((corner) => envelopeHeight(planes, corner) > heightOn(plane, corner) - near),
    ),
  );
}

/** The keys of one form: a flat, a shed, a gable, the last two with a level cut, else planes by three points each. */
function formKeys(planes: readonly Plane[], outline: Ring): string {
  const [sloped, level] = [planes.filter((plane) => !isFlat(plane)), planes.filter(isFlat)];
  const [one, other, ...more] = sloped;
  const [flat, ...flats] = level;
  if (!one && flat) return `form: flat, height: ${heightText(flat.c)}`;
  if (more.length === 0 && flats.length === 0 && one) {
    const form = other ? gableKeys(one, other, outline) : shedKeys(one, outline);
    if (form !== undefined) return flat ? `${form}, cut: ${heightText(flat.c)}` : form;
  }
  return `form: planes, planes: [${planes.map((plane) => planePoints(plane, outline)).join(', ')}]`;
}

function shedKeys(plane: Plane, outline: Ring): string | undefined {
  const plate = lowestOn(plane, outline);
  if (!(plate > near)) return undefined;
  const slope = slopeOf(plane);
  const low = headingText({ x: -plane.a / slope, y: -plane.b / slope });
  return `form: shed, low: ${low}, plate: ${heightText(plate)}, pitch: ${writePitch(slope)}`;
}

/** Two slopes alike that rise from plates at one height. */
function gableKeys(one: Plane, other: Plane, outline: Ring): string | undefined {
  if (Math.hypot(one.a + other.a, one.b + other.b) > 1e-5) return undefined;
  const [plate, opposite] = [lowestOn(one, outline), lowestOn(other, outline)];
  if (!(plate > near) || Math.abs(plate - opposite) > near) return undefined;
  const slope = slopeOf(one);
  const ridge = ridgeText({ x: one.b / slope, y: -one.a / slope });
  return `form: gable, ridge: ${ridge}, plate: ${heightText(plate)}, pitch: ${writePitch(slope)}`;
}

function lowestOn(plane: Plane, outline: Ring): number {
  return outline.reduce((low, corner) => Math.min(low, heightOn(plane, corner)), Infinity);
}

/** Three points of a plane at corners of the room's box. */
function planePoints(plane: Plane, outline: Ring): string {
  const { west, east, south, north } = bounds(outline);
  const corners = [
    { x: west, y: south },
    { x: east, y: south },
    { x: west, y: north },
  ].map(({ x, y }) => ({ x: step(x), y: step(y) }));
  const points = corners.map(({ x, y }) => {
    const height = heightOn(plane, { x: x / fromFeet(1), y: y / fromFeet(1) });
    return `{ x: ${writeLength(x)}, y: ${writeLength(y)}, height: ${heightText(height)} }`;
  });
  return `[${points.join(', ')}]`;
}

function isFlat(plane: Plane): boolean {
  return slopeOf(plane) === 0;
}

function step(feet: number): Length {
  return toRecordStep(fromFeet(feet));
}

function heightText(feet: number): string {
  return writeLength(step(feet));
}

/** `Flat`, or by the side that it comes down to. */
function planeName(plane: Plane): string {
  if (isFlat(plane)) return 'Flat';
  const side = nearestHeading({ x: -plane.a, y: -plane.b });
  return `${side.charAt(0).toUpperCase()}${side.slice(1)} slope`;
}

/** One of the eight bearings, else degrees from north. */
function headingText(way: Xy): string {
  const named = compass.find((name) => isNear(way, headings[name]));
  return named ?? degreesText(way);
}

/** The line of a ridge, either way along it. */
function ridgeText(way: Xy): string {
  const words = { north: 'north-south', east: 'east-west', 'north-east': 'north-east', 'north-west': 'north-west' };
  for (const [name, text] of Object.entries(words) as [keyof typeof words, string][]) {
    const { x, y } = headings[name];
    if (isNear(way, { x, y }) || isNear(way, { x: -x, y: -y })) return text;
  }
  return degreesText(way);
}

function isNear(a: Xy, b: Xy): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) < 2e-5;
}

function degreesText({ x, y }: Xy): string {
  const degrees = (((Math.atan2(x, y) * 180) / Math.PI + 360) % 360).toFixed(4);
  return `${(degrees === '360.0000' ? '0' : degrees).replace(/\.?0+$/u, '')}°`;
}
