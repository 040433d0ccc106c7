import type { BookRoom } from '../book/index.js';
import {
  floorArea,
  isDownToFloor,
  type CeilingFacet,
  type FeatureMeasure,
  type OpeningMeasure,
  type RoomMeasure,
} from '../model/index.js';
import { shapeWords } from '../opening/index.js';
import { printArea, printLength, type Area, type Length } from '../../base/units/index.js';
import type { MeasureChange, PartChange, RoomChange } from './room-change.js';

/** Areas and heights that differ; all of them when the room is on one side only. */
export function compareMeasures(from: RoomMeasure | undefined, to: RoomMeasure | undefined): MeasureChange[] {
  const walls = new Set([...(to?.walls ?? []), ...(from?.walls ?? [])].map((wall) => wall.id));
  const wallName = (id: string): string =>
    [...(to?.walls ?? []), ...(from?.walls ?? [])].find((wall) => wall.id === id)?.name ?? id;
  const floors = [from && floorArea(from.floor), to && floorArea(to.floor)] as const;
  return [
    ...areas('Floor', ...floors),
    ...areas('Floor less what stands on it', from?.floor.net, to?.floor.net, floors[0] === floors[1]),
    ...areas('Ceiling', from?.ceiling.net, to?.ceiling.net),
    ...areas('Walls, less openings', from && wallArea(from), to && wallArea(to)),
    ...(from && to
      ? [...walls].flatMap((wall) =>
          areas(wallName(wall), wallArea(from, wall), wallArea(to, wall)).map((measure) => ({ ...measure, wall })),
        )
      : []),
    ...(isFlat(from) && isFlat(to)
      ? lengths('Ceiling height', from?.highest, to?.highest)
      : [
          ...lengths('Ceiling height, lowest', from?.lowest, to?.lowest),
          ...lengths('Ceiling height, highest', from?.highest, to?.highest),
        ]),
  ];
}

/** Names of rooms by slug on each side, as they are called now: a room behind an opening that is renamed moves nothing. */
export interface RoomNames {
  from(slug: string): string;
  to(slug: string): string;
}

/** Openings and features that are there on one side only, or read otherwise. An opening is told in the room that records
 *  it. */
export function compareParts(from: BookRoom | undefined, to: BookRoom | undefined, roomName: RoomNames): PartChange[] {
  return [
    ...changes('opening', from && openingTexts(from, roomName.from), to && openingTexts(to, roomName.to)),
    ...changes('feature', from && featureTexts(from), to && featureTexts(to)),
  ];
}

/** Drawings of the room that look different; none for a room on one side only but its plan. */
export function compareDrawings(from: RoomMeasure | undefined, to: RoomMeasure | undefined): RoomChange['drawings'] {
  if (!from || !to) return [{ kind: 'plan', id: 'plan' }];
  const differs = (read: (measure: RoomMeasure) => unknown): boolean =>
    JSON.stringify(read(from)) !== JSON.stringify(read(to));
  const walls = [...new Set([...to.walls, ...from.walls].map((wall) => wall.id))];
  const features = [...new Set([...to.features, ...from.features].map((feature) => feature.id))];
  return [
    ...(differs(planLook) ? [{ kind: 'plan' as const, id: 'plan' }] : []),
    ...(differs(({ ceiling }) => [ceiling.facets.map(facetLook), ceiling.regions])
      ? [{ kind: 'ceiling' as const, id: 'ceiling' }]
      : []),
    ...walls.filter((id) => differs((measure) => wallLook(measure, id))).map((id) => ({ kind: 'wall' as const, id })),
    ...features
      .filter((id) => differs((measure) => measure.features.find((feature) => feature.id === id)))
      .map((id) => ({ kind: 'feature' as const, id })),
  ];
}

function facetLook({ name, plan, shape, slope, riseDirection, area }: CeilingFacet): unknown {
  return { name, plan, shape, slope, riseDirection, area };
}

function isFlat(measure: RoomMeasure | undefined): boolean {
  return measure === undefined || measure.lowest === measure.highest;
}

function wallArea(measure: RoomMeasure, id?: string): Area {
  return measure.walls
    .filter((wall) => wall.openTo === undefined && (id === undefined || wall.id === id))
    .reduce((sum, wall) => sum + wall.net, 0) as Area;
}

function areas(what: string, from: Area | undefined, to: Area | undefined, when = true): MeasureChange[] {
  const difference = ((to ?? 0) - (from ?? 0)) as Area;
  if (!when || Math.abs(difference) < 1e-3) return [];
  return [{ what, unit: 'sq ft', ...(from !== undefined && { from }), ...(to !== undefined && { to }), difference }];
}

function lengths(what: string, from: Length | undefined, to: Length | undefined): MeasureChange[] {
  const difference = ((to ?? 0) - (from ?? 0)) as Length;
  // A room that is there on one side only has no height to compare.
  if (difference === 0 || from === undefined || to === undefined) return [];
  return [{ what, unit: 'length', from, to, difference }];
}

interface PartText {
  readonly id: string;
  readonly name: string;
  /** What is told of it: each fact by its name, in the order of telling. */
  readonly facts: ReadonlyMap<string, string>;
}

function changes(
  of: PartChange['of'],
  from: readonly PartText[] | undefined,
  to: readonly PartText[] | undefined,
): PartChange[] {
  const before = new Map(from?.map((part) => [part.id, part]));
  const after = new Map(to?.map((part) => [part.id, part]));
  return [...new Set([...after.keys(), ...before.keys()])].flatMap((id): PartChange[] => {
    const [old, now] = [before.get(id), after.get(id)];
    const names = [...new Set([...(now?.facts.keys() ?? []), ...(old?.facts.keys() ?? [])])];
    // Of what is there on both sides only the facts that differ are told.
    const told = names.filter((name) => !old || !now || old.facts.get(name) !== now.facts.get(name));
    if (told.length === 0 && old?.name === now?.name) return [];
    const words = (part: PartText): string =>
      told.flatMap((name) => part.facts.get(name) ?? []).join(', ') || part.name;
    return [
      {
        of,
        id,
        name: now?.name ?? old?.name ?? id,
        kind: !old ? 'added' : !now ? 'removed' : 'changed',
        ...(old && { from: words(old) }),
        ...(now && { to: words(now) }),
      },
    ];
  });
}

function openingTexts({ measure }: BookRoom, roomName: (slug: string) => string): PartText[] {
  return measure.openings
    .filter((opening) => opening.own)
    .map((opening) => ({ id: opening.mark, name: opening.mark, facts: new Map(openingFacts(opening, roomName)) }));
}

const kindWords = { door: 'door', window: 'window', cased: 'cased opening', open: 'opening' } as const;

function openingFacts(
  { kind, width, height, shape, sill, floor, wall, at, to, hinge, swing, operation }: OpeningMeasure,
  roomName: (slug: string) => string,
): [string, string][] {
  const words = shape && shapeWords({ shape });
  const how = kind === 'door' && operation !== 'swing' ? `${operation} ` : '';
  return [
    ['kind', `${how}${kindWords[kind]}`],
    ['size', `${printLength(width)} × ${printLength(height)}`],
    ...(words === undefined ? [] : [['shape', words] as [string, string]]),
    ...(isDownToFloor({ sill, ...(floor !== undefined && { floor }) })
      ? []
      : [['sill', `sill at ${printLength(sill)}`] as [string, string]]),
    ['place', `${wall} wall, ${printLength(at)} from its left corner`],
    ['to', `to ${roomName(to)}`],
    ...(hinge === undefined ? [] : [['hinge', `hinges ${hinge}`] as [string, string]]),
    ...(swing === undefined ? [] : [['swing', `opens into ${roomName(swing)}`] as [string, string]]),
  ];
}

function featureTexts({ measure }: BookRoom): PartText[] {
  return measure.features.map((feature) => ({
    id: feature.id,
    name: feature.name,
    facts: new Map(featureFacts(feature)),
  }));
}

function featureFacts({ facts, faces, runs, counts }: FeatureMeasure): [string, string][] {
  return [
    ...facts.map(({ label, text }): [string, string] => [label, `${label} ${text}`]),
    ...faces.map((face): [string, string] => [face.id, `${face.name} ${printArea(face.net)}`]),
    ...runs.map((run): [string, string] => [run.id, `${run.name} ${printLength(run.length)}`]),
    ...counts.map((count): [string, string] => [count.id, `${count.name} ${count.count}`]),
  ];
}

function planLook({ plan, voids, walls, openings, features }: RoomMeasure): unknown {
  return [
    plan,
    voids,
    walls.map((wall) => [wall.name, wall.openTo]),
    openings.map(openingLook),
    features.map(({ kind, id, footprint, data }) => [kind, id, footprint, data]),
  ];
}

function wallLook({ walls, openings, features }: RoomMeasure, id: string): unknown {
  const wall = walls.find((each) => each.id === id);
  return [
    wall && [wall.run, wall.top, wall.openTo, wall.regions],
    openings.filter((opening) => opening.wall === id).map(openingLook),
    features.flatMap((feature) => feature.covers.filter((cover) => cover.wall === id)),
  ];
}

/** What is drawn of an opening. Rooms behind it may have been renamed without changing the picture. */
function openingLook({ mark, kind, wall, at, width, height, shape, sill, hinge, operation }: OpeningMeasure): unknown {
  return [mark, kind, wall, at, width, height, shape, sill, hinge, operation];
}
