import type { Category, Option, Room, RoomMeasure, Selection } from '../model/index.js';
import { findPlaces, surfacesOf, type Place } from '../takeoff/index.js';

/** A selection with its places found and its options at hand. */
export interface Selected {
  readonly id: string;
  readonly room: Room;
  readonly selection: Selection;
  readonly category: Category;
  readonly measure: RoomMeasure;
  readonly places: readonly Place[];
  /** By option slug: every option that could stand here. */
  readonly options: ReadonlyMap<string, { readonly option: Option }>;
}

/** One place of a room that layers lie on, with the selections that say something of it. */
export interface Spot {
  readonly room: Room;
  readonly place: Place;
  readonly selected: readonly Selected[];
  /** Selections of the room behind, where the place is an opening that it sees too. */
  readonly behind: readonly Selected[];
}

/** Spots by room and then by place id: floor, walls, ceiling, base, openings, then features with their faces. */
export type Spots = ReadonlyMap<string, ReadonlyMap<string, Spot>>;

export function findSpots(
  rooms: readonly Room[],
  measures: ReadonlyMap<string, RoomMeasure>,
  selections: readonly Selected[],
): Spots {
  const spots = new Map<string, Map<string, Draft>>();
  const byMark = new Map<string, Draft[]>();
  for (const room of rooms) {
    const measure = measures.get(room.slug);
    const own = measure ? everyPlace(measure).map((place): [string, Draft] => [place.id, draftOf(room, place)]) : [];
    spots.set(room.slug, new Map(own));
    for (const [id, spot] of own) if (spot.place.kind === 'opening') byMark.set(id, [...(byMark.get(id) ?? []), spot]);
  }
  for (const selected of selections) {
    const own = spots.get(selected.room.slug);
    for (const place of selected.places.flatMap((each) => layered(each, selected))) {
      const spot = own?.get(place.id) ?? draftOf(selected.room, place);
      spot.selected.push(selected);
      own?.set(place.id, spot);
      const others = place.kind === 'opening' ? (byMark.get(place.id) ?? []) : [];
      for (const other of others) if (other !== spot) other.behind.push(selected);
    }
  }
  return spots;
}

/** Who is deliberately not there does not lie there. */
export function isThere({ selection }: Selected): boolean {
  return selection.chosen !== 'none';
}

/** The option that stands here today: the chosen one, else the standard. */
export function optionOf({ selection, options }: Selected): Option | undefined {
  const slug = selection.chosen ?? selection.standard;
  return slug === undefined ? undefined : options.get(slug)?.option;
}

interface Draft {
  readonly room: Room;
  readonly place: Place;
  readonly selected: Selected[];
  readonly behind: Selected[];
}

function draftOf(room: Room, place: Place): Draft {
  return { room, place, selected: [], behind: [] };
}

function everyPlace(measure: RoomMeasure): readonly Place[] {
  const words = ['floor', 'walls', 'ceiling', 'base', 'openings', ...measure.features.map(({ id }) => id)];
  return words.flatMap((word) => findPlaces(word, measure) ?? []);
}

/** Where the layers of a place lie: what covers a feature lies on its faces, what runs along it on the feature itself. */
function layered(place: Place, { category, measure }: Selected): readonly Place[] {
  if (place.kind === 'run' || place.kind === 'count') {
    const feature = measure.features.find(({ id }) => id === place.id.split('/')[0]);
    return feature ? [{ kind: 'feature', id: feature.id, name: feature.name, feature }] : [place];
  }
  if (place.kind !== 'feature' || (category.measure.by !== 'area' && category.measure.by !== 'stone')) return [place];
  const faces = surfacesOf(place) ?? [];
  return faces.length === 0 ? [place] : faces.map(({ id, name, surface }) => ({ kind: 'surface', id, name, surface }));
}
