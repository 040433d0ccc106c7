import { bounds, headings, nearestHeading, patchContains, type Xy } from '../../../base/geometry/index.js';
import { fromFeet, toRecordStep, writeLength } from '../../../base/units/index.js';
import { readBody } from '../body/body.js';
import { figure, type Model } from '../model.js';
import { plainName, quotedText, untaken } from '../name.js';
import { attempt, PartRefused } from '../refused.js';
import type { Entity } from '../step/value.js';
import type { Xyz } from '../xyz.js';
import { placeFrom, placeKeys } from './plan.js';
import type { Space } from './space.js';
import { turnedBackInSpace, type Turn } from './turn.js';

/** A straight flight of the model that a record can hold, on the turned plan, in feet. */
export interface Flight {
  readonly entity: Entity;
  readonly space: Space;
  readonly risers: number;
  readonly rise: number;
  readonly going: number;
  readonly width: number;
  readonly go: keyof typeof headings;
  /** South-west corner of its footprint. */
  readonly corner: Xy;
}

const millimetre = 1 / 304.8;

/** Flights whose figures agree: so many risers are the way from floor to floor, so many goings the run of the body. Every other is told. */
export function readFlights(
  model: Model,
  spaces: readonly Space[],
  turn: Turn,
): { readonly flights: readonly Flight[]; readonly told: readonly string[] } {
  const flights: Flight[] = [];
  const told: string[] = [];
  for (const entity of model.all('IFCSTAIRFLIGHT')) {
    const read = attempt(() => flightOf(model, entity, spaces, turn));
    if ('value' in read) flights.push(read.value);
    else told.push(`stair flight #${entity.id} ${plainName(entity.args[2])}: ${read.why}`);
  }
  return { flights, told };
}

function flightOf(model: Model, entity: Entity, spaces: readonly Space[], turn: Turn): Flight {
  const { args } = entity;
  const corners = readBody(model, entity)
    .faces.flat(2)
    .map((corner) => turnedBackInSpace(corner, turn));
  const box = bounds(corners);
  const foot = corners.reduce((low, { z }) => Math.min(low, z), Infinity);
  const middle = { x: (box.west + box.east) / 2, y: (box.south + box.north) / 2 };
  const space = spaces.find(
    ({ shape }) => patchContains(shape.floor, middle) && foot > shape.height - 1 && foot < shape.height + 1,
  );
  if (!space) throw new PartRefused('it stands in no room that is drafted');
  const [risers, riser, going] = [figure(args[8]), model.length(args[10]), model.length(args[11])];
  const above = spaces
    .map(({ storey, shape }) => ({ storey, height: shape.height }))
    .filter(({ storey }) => storey.height > space.storey.height + 1)
    .toSorted((a, b) => a.height - b.height)[0];
  const rise = risers * riser;
  if (!above || Math.abs(above.height - space.shape.height - rise) > 2 * millimetre)
    throw new PartRefused('its risers do not come to the height between two floors: record it as taped');
  const go = wayUp(corners);
  const isLengthwise = go === 'east' || go === 'west';
  const [long, width] = isLengthwise
    ? [box.east - box.west, box.north - box.south]
    : [box.north - box.south, box.east - box.west];
  if (Math.abs(long - going * (risers - 1)) > 50 * millimetre)
    throw new PartRefused('its goings do not come to the length of its body: record it as taped');
  return { entity, space, risers, rise, going, width, go, corner: { x: box.west, y: box.south } };
}

/** From the middle of what lies lowest to the middle of what lies highest. */
function wayUp(corners: readonly Xyz[]): keyof typeof headings {
  const heights = corners.map(({ z }) => z);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const middle = (at: number): Xy => {
    const there = corners.filter(({ z }) => Math.abs(z - at) < 10 * millimetre);
    const sum = there.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }), { x: 0, y: 0 });
    return { x: sum.x / there.length, y: sum.y / there.length };
  };
  const [from, to] = [middle(low), middle(high)];
  const [x, y] = [to.x - from.x, to.y - from.y];
  const go = nearestHeading({ x, y });
  const along = headings[go].x * x + headings[go].y * y;
  if (along < 0.999 * Math.hypot(x, y) || along < 1 || !['north', 'east', 'south', 'west'].includes(go))
    throw new PartRefused('it does not go straight up along a wall: record it as taped');
  return go;
}

/** The flight's line in the record of its room. */
export function flightLine(flight: Flight, origin: Xy, ids: Set<string>): string {
  const { entity, risers, rise, going, width, go, corner } = flight;
  const length = (feet: number): string => writeLength(toRecordStep(fromFeet(feet)));
  const keys = [
    'kind: stair',
    `id: ${untaken('stair', ids)}`,
    `name: ${quotedText(plainName(entity.args[2]) || 'Stair')}`,
    `rise: ${length(rise)}`,
    `risers: ${risers}`,
    `going: ${length(going)}`,
    `width: ${length(width)}`,
    placeKeys(placeFrom(origin, corner)),
    `go: ${go}`,
  ];
  return `  - { ${keys.join(', ')} }`;
}
