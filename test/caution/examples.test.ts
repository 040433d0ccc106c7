import { describe, expect, test } from 'vitest';
import {
  cautionRules,
  type Example,
  type ExampleRoom,
  type ExampleSelection,
  type RoomView,
  type SelectionView,
  type Stand,
  type Written,
} from '../../src/core/caution/index.js';
import { products, type Product, type ProductName } from '../../src/core/fact/index.js';
import { distance, pointInFeet } from '../../src/base/geometry/index.js';
import type { RoomSpace, Stair } from '../../src/core/feature/index.js';
import { measure as measureStair } from '../../src/core/feature/stair/measure.js';
import { measure as measureWetPlace } from '../../src/core/feature/wet-place/measure.js';
import type { WetPlace } from '../../src/core/feature/wet-place/read.js';
import type {
  Category,
  FeatureMeasure,
  FloorLevel,
  OpeningMeasure,
  Riser,
  RoomMeasure,
} from '../../src/core/model/index.js';
import { feet, parseLength, parsePitch, type Area, type Length } from '../../src/base/units/index.js';
import {
  category,
  feature,
  hole,
  len,
  measuredBy,
  opening,
  option,
  room,
  seenBy,
  selection,
  surface,
  wall,
} from './house.js';

describe.each(cautionRules.map(({ id, examples }) => ({ id, examples })))('$id', ({ id, examples }) => {
  test.each(examples)('$what', (example) => {
    const more = { levels: ['main', 'upper'], matches: example.matches ?? [], stands: standsOf(example) };
    const seen = seenBy(id, build(example), more).map((caution) => caution.seen);
    expect(seen).toEqual(example.sees === null ? [] : [expect.stringContaining(example.sees)]);
  });

  test('has an example that it sees and one that it passes over', () => {
    expect(examples.filter(({ sees }) => sees !== null).length).toBeGreaterThan(0);
    expect(examples.filter(({ sees }) => sees === null).length).toBeGreaterThan(0);
  });
});

function standsOf({ rooms }: Example): ReadonlyMap<string, Stand> {
  return new Map(
    Object.entries(rooms).flatMap(([slug, { stands }]) =>
      stands ? [[slug, { group: 0, at: { x: len(stands.x), y: len(stands.y) } }]] : [],
    ),
  );
}

/** What is known around a room: what stands behind its openings, what of its floor is over nothing and what over rooms. */
function aroundOf(
  { laidThick, overNothing, over }: ExampleRoom,
  openings: readonly OpeningMeasure[],
): Partial<RoomMeasure> {
  if (laidThick === undefined && overNothing === undefined && over === undefined) return {};
  const stretches = openings.map(({ to }) => ({
    from: len('0"'),
    to: len(`10'`),
    behind: { room: to, wall: 'north', thickness: len(laidThick ?? '4 1/2"') },
  }));
  const nothing = { outside: [], inside: [], over: [] };
  return {
    around: {
      ...nothing,
      walls: [{ wall: 'north', outsideThickness: len('6"'), stretches }],
      under: (over ?? []).map((slug) => ({ room: slug, area: 60 as Area })),
      ...(overNothing !== undefined && { overNothing: overNothing as Area }),
    },
  };
}

function planOf({ stands }: ExampleRoom): RoomMeasure['plan'] {
  const [width, depth] = stands?.size ?? [];
  if (width === undefined || depth === undefined) return [];
  const [none, east, north] = [len('0"'), len(width), len(depth)];
  return [
    { x: none, y: none },
    { x: none, y: north },
    { x: east, y: north },
    { x: east, y: none },
  ];
}

function ceilingOver(plan: RoomMeasure['plan'], highest: Length): RoomMeasure['ceiling'] {
  const shape = { outline: plan, holes: [] };
  const facet = { name: 'Flat', plan: shape, shape, slope: 0, riseDirection: 0, area: 100 as Area, highest };
  return { ...surface('ceiling'), planArea: 100 as Area, facets: plan.length === 0 ? [] : [facet] };
}

/** Rooms of an example; an opening stands in both rooms that it joins. */
function build({ rooms }: Example): readonly RoomView[] {
  return Object.entries(rooms).map(([slug, of]) => {
    const others = Object.entries(rooms).flatMap(([other, { openings }]) =>
      openingsOf(openings)
        .filter(({ to }) => to === slug)
        .map((one) => ({ ...one, to: other, own: false })),
    );
    return roomOf(slug, of, [...openingsOf(of.openings), ...others]);
  });
}

function roomOf(slug: string, of: ExampleRoom, openings: readonly OpeningMeasure[]): RoomView {
  const {
    use,
    level,
    aboveGround,
    height = `9'`,
    floor = 100,
    headroom,
    voids = {},
    risers = {},
    ramps = {},
    features = {},
    selections = [],
  } = of;
  const top = [`0"`, `10'`].map((along) => ({ along: len(along), height: len(height) }));
  return room({
    slug,
    ...(use && { use }),
    ...(level && { level }),
    ...(aboveGround !== undefined && { aboveGround: len(aboveGround) }),
    selections: selections.map((one) => selectionOf(slug, one)),
    measure: {
      plan: planOf(of),
      ceiling: ceilingOver(planOf(of), len(height)),
      ...aroundOf(of, openings),
      walls: [wall('north', { top })],
      floor: { ...surface('floor', floor), levels: Object.entries(ramps).map(([name, pitch]) => rampOf(name, pitch)) },
      risers: Object.entries(risers).map(([name, rise]) => riserOf(name, rise)),
      openings,
      voids: Object.entries(voids).map(([name, sides]) => hole(name, sides)),
      features: Object.entries(features).map(([id, record]) => featureOf(id, record, len(height))),
      ...(headroom && {
        headroom: { sevenFeet: headroom.sevenFeet as Area, fiveFeet: headroom.fiveFeet as Area },
      }),
    },
  });
}

function riserOf(name: string, rise: string): Riser {
  return { ...surface('riser'), name, run: len(`4'`), rise: len(rise), lines: [] };
}

function rampOf(name: string, text: string): FloorLevel {
  const pitch = parsePitch(text);
  if (!pitch.ok) throw new Error(pitch.why);
  const flat = { outline: [], holes: [] };
  const slope = pitch.value.rise / pitch.value.run;
  return {
    name,
    plan: flat,
    shape: flat,
    slope,
    riseDirection: 0,
    area: 40 as Area,
    highest: len('0"'),
    height: len('0"'),
  };
}

function openingsOf(openings: ExampleRoom['openings'] = {}): readonly OpeningMeasure[] {
  return Object.entries(openings).map(([mark, { at, width, height, sill, function: locks, ...more }]) =>
    opening({
      mark,
      ...more,
      ...(locks && { door: { function: locks } }),
      ...(at !== undefined && { at: len(at) }),
      ...(width !== undefined && { width: len(width) }),
      ...(height !== undefined && { height: len(height) }),
      ...(sill !== undefined && { sill: len(sill) }),
    }),
  );
}

function featureOf(
  id: string,
  { kind, ...record }: { readonly kind: string; readonly [key: string]: Written },
  height: Length,
): FeatureMeasure {
  const { drop } = record;
  const data = measured(record);
  const more = { ...(typeof drop === 'string' && { drop: len(drop) }), ...placeOf(kind, data, height) };
  return feature(kind, id, data, more);
}

/** What its own kind measures of a feature that lies in the plan, under a flat ceiling; the room's south-west corner is at nothing. */
function placeOf(kind: string, data: unknown, height: Length): Partial<FeatureMeasure> {
  const record = { kind, id: kind, name: kind, data, path: [] };
  const nothing = { plan: [], walls: [], floor: [], voids: [], ceiling: [], origin: option({}).origin };
  const space: RoomSpace = {
    ...nothing,
    corner: { x: len('0"'), y: len('0"') },
    topAlong: (from, to) =>
      [0, distance(pointInFeet(from), pointInFeet(to))].map((along) => ({ along, height: feet(height) })),
  };
  if (kind === 'wet-place') {
    const { outline } = measureWetPlace(data as WetPlace, record, space).value ?? {};
    return outline ? { outline } : {};
  }
  if (kind !== 'stair' || (data as Partial<Stair>).go === undefined) return {};
  const { footprint, headroom } = measureStair(data as Stair, record, space).value ?? {};
  return { ...(footprint && { footprint }), ...(headroom && { headroom }) };
}

/** A record with its lengths as numbers. */
function measured(written: Written): unknown {
  if (typeof written === 'string') {
    const length = parseLength(written);
    return length.ok ? length.value : written;
  }
  if (Array.isArray(written)) return written.map(measured);
  if (typeof written !== 'object') return written;
  return Object.fromEntries(Object.entries(written).map(([key, value]) => [key, measured(value)]));
}

function selectionOf(slug: string, { of, at, facts, option: more }: ExampleSelection): SelectionView {
  return selection([at], categoryOf(of), option(facts, more), { id: `${slug}/${of}/${at}`, room: slug });
}

/** A category of a product: it records all of its facts. */
function categoryOf(of: ProductName): Category {
  const { facts, measuredBy: by }: Product = products[of];
  return category(Object.keys(facts), { slug: of, ...(by !== undefined && measuredBy(by)) });
}
