import { factOf } from '../fact/index.js';
import type { Region, RoomMeasure, RoomSection } from '../model/index.js';
import { isOn, type LayoutSummary, type RailPiece, type SharedEnd } from '../takeoff/index.js';
import type { CompassBearing, Length } from '../../base/units/index.js';
import type { BookRoom, BookSelection } from './book.js';
import type { DrawnGuard, DrawnPost } from './drawn-edge.js';
import { guardsBeyond, type GuardBeyond } from './guards-beyond.js';
import type { LookUp } from './look-up.js';
import { optionSlugs } from './option-slugs.js';
import { railAt } from './schedule/railings.js';
import { seenIn, type Instead, type SeenFinish } from './seen.js';

/** What a room's drawings show: its shape, and what its selections put on it. */
export interface DrawnRoom {
  readonly measure: RoomMeasure;
  readonly number: string;
  readonly name: string;
  /** Names of the house's rooms by slug: a drawing writes those that this one opens to. */
  readonly neighbours: ReadonlyMap<string, string>;
  /** Boards or sheets on the ceiling and on the floor; of several layers the last in working order. */
  readonly ceiling?: DrawnCourses;
  readonly floor?: DrawnCourses;
  /** What is seen of each wall in the end, by wall. */
  readonly walls: ReadonlyMap<string, readonly { readonly label: string; readonly region: Region }[]>;
  /** What is seen of each feature in the end, by feature. */
  readonly features: ReadonlyMap<string, string>;
  /** The guard at each open edge, by feature. */
  readonly guards: ReadonlyMap<string, DrawnGuard>;
  /** Posts along each open edge, by feature, in their order. */
  readonly posts: ReadonlyMap<string, readonly DrawnPost[]>;
  /** Guards of other rooms that are seen through its openings, by the opening's mark. */
  readonly beyond?: ReadonlyMap<string, readonly GuardBeyond[]>;
  /** What a picture of the room shows of its choices, in working order. */
  readonly seen: readonly SeenFinish[];
  /** Side from which its record says that its picture is seen. */
  readonly viewFrom?: CompassBearing;
  /** Cuts that its record has; absent: what shows most is cut. */
  readonly sections?: readonly RoomSection[];
}

export interface DrawnCourses extends Pick<LayoutSummary, 'lay' | 'face' | 'surfaces'> {
  readonly product: string;
}

/** Names of the rooms that a room's walls and openings lead to, by their slugs. */
function namesBeside({ walls, openings }: RoomMeasure, look: LookUp): ReadonlyMap<string, string> {
  const slugs = [...walls.flatMap(({ openTo }) => openTo ?? []), ...openings.map(({ to }) => to)];
  return new Map(
    slugs.flatMap((slug) => {
      const room = look.room(slug);
      return room ? [[slug, room.name] as const] : [];
    }),
  );
}

/** Finds in a room's selections what its drawings show. An open choice is named as such. The picture shows `instead` in place of what stands. */
export function drawnRoom(room: BookRoom, look: LookUp, instead?: Instead): DrawnRoom {
  const selections = look.selectionsOf(room);
  const ceiling = coursesOn('ceiling', selections, look);
  const floor = coursesOn('floor', selections, look);
  const finishes = selections.filter(({ category }) => look.category(category)?.layer === 'finish');
  const lastAt = (isAt: (place: string) => boolean): string | undefined => {
    const last = finishes.findLast(({ places }) => places.some(({ id }) => isAt(id)));
    return last && finishName(last, look);
  };
  const { measure, number, name } = room;
  return {
    measure,
    number,
    name,
    neighbours: namesBeside(measure, look),
    ...(ceiling && { ceiling }),
    ...(floor && { floor }),
    walls: new Map(
      measure.walls.flatMap(({ id, regions }) => {
        const label = lastAt((place) => place === id);
        return label === undefined ? [] : [[id, regions.map((region) => ({ label, region }))] as const];
      }),
    ),
    features: new Map(
      measure.features.flatMap(({ id }) => {
        const label = lastAt((place) => isOn(id, place) && place !== `${id}/hearth`);
        return label === undefined ? [] : [[id, label] as const];
      }),
    ),
    guards: guardsIn(room, look),
    posts: postsIn(room, look),
    beyond: beyondIn(room, look),
    seen: seenIn(room, look, instead),
    ...(room.viewFrom && { viewFrom: room.viewFrom }),
    ...(room.sections && { sections: room.sections }),
  };
}

/** Guards of other rooms that are seen through its openings, whoever reads the drawing: they stand there. */
export function beyondIn(room: BookRoom, look: LookUp): ReadonlyMap<string, readonly GuardBeyond[]> {
  return guardsBeyond(room, look, (other) => ({ guards: guardsIn(other, look), posts: postsIn(other, look) }));
}

function guardsIn(room: BookRoom, look: LookUp): DrawnRoom['guards'] {
  const selections = look.selectionsOf(room);
  return new Map(
    room.measure.features.flatMap(({ id, drop }) => {
      const guard = drop === undefined ? undefined : guardAt(id, selections, look);
      return guard ? [[id, guard] as const] : [];
    }),
  );
}

/** Posts of the railings that stand at a room's open edges, whoever reads the drawing: blocking is set for them. */
export function postsIn(room: BookRoom, look: LookUp): DrawnRoom['posts'] {
  const selections = look.selectionsOf(room);
  return new Map(
    room.measure.features.flatMap(({ id, drop }) => {
      const selection = drop === undefined ? undefined : railingAt(id, selections, look);
      const place = selection?.places.find((each) => isOn(id, each.id));
      const rail = selection && place && railAt(place.id, selection);
      return rail ? [[id, rail.pieces.flatMap((piece, index) => postsOn(piece, index, rail.shared))] as const] : [];
    }),
  );
}

function coursesOn(
  place: 'ceiling' | 'floor',
  selections: readonly BookSelection[],
  look: LookUp,
): DrawnCourses | undefined {
  const laid = selections.flatMap((selection) => {
    const surfaces = layoutOf(selection)?.surfaces.filter((surface) => surface.place === place) ?? [];
    return surfaces.length === 0 ? [] : [{ selection, surfaces }];
  });
  const last = laid.at(-1);
  const layout = last && layoutOf(last.selection);
  if (!last || !layout) return undefined;
  const product = finishName(last.selection, look);
  return { product, lay: layout.lay, face: layout.face, surfaces: last.surfaces };
}

function layoutOf({ takeoff }: BookSelection): LayoutSummary | undefined {
  return takeoff.find(({ layout }) => layout !== undefined)?.layout;
}

/** `Stone facing, still open` where nothing is chosen and nothing stands for it. */
function finishName({ category, counted }: BookSelection, look: LookUp): string {
  return look.option(category, counted)?.name ?? `${look.categoryName(category)}, still open`;
}

function postsOn({ posts, length }: RailPiece, piece: number, shared: readonly SharedEnd[]): readonly DrawnPost[] {
  const others = shared
    .filter((end) => end.piece === piece && !end.isOwn)
    .map(({ side }): DrawnPost => ({ at: side === 'from' ? (0 as Length) : length, isOwn: false }));
  return [...posts.map((at): DrawnPost => ({ at, isOwn: true })), ...others].toSorted((a, b) => a.at - b.at);
}

function railingAt(feature: string, selections: readonly BookSelection[], look: LookUp): BookSelection | undefined {
  return selections.find(
    ({ category, places, state }) =>
      state !== 'none' &&
      look.category(category)?.measure.by === 'railing' &&
      places.some(({ id }) => isOn(feature, id)),
  );
}

function guardAt(feature: string, selections: readonly BookSelection[], look: LookUp): DrawnGuard | undefined {
  const selection = railingAt(feature, selections, look);
  if (!selection) return undefined;
  const { category, counted } = selection;
  const slugs = counted === undefined ? optionSlugs(selection) : [counted];
  const heights = new Set(slugs.map((slug) => heightOf(slug, category, look)));
  const [height] = heights;
  return {
    guard: finishName(selection, look),
    ...(heights.size === 1 && height !== undefined && { guardHeight: height }),
  };
}

function heightOf(slug: string, category: string, look: LookUp): Length | undefined {
  return factOf(look.option(category, slug), 'railing', 'height');
}
