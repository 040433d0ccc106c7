import { capital, joinWords, printArea } from '../../base/units/index.js';
import {
  knownAround,
  unheatedUses,
  type Category,
  type Records,
  type Room,
  type RoomMeasure,
  type Slot,
} from '../model/index.js';
import { findPlaces, meet, partOf, surfacesOf, type Place } from '../takeoff/index.js';
import { isCalled, type Names } from './names.js';
import { inSentence, placeWords } from './place-words.js';
import type { ScopeFinding } from './scope.js';
import type { Spot, Spots } from './spot.js';

/** So many square feet of a wall must stand out above a lower neighbour before anything is asked for there. Common practice, no source. */
const leastAbove = 10;

/** A slot in a room that must have it, with the places that it means there: of walls that stand outside in part, with that part as the place. */
export interface RoomSlot {
  readonly room: Room;
  readonly measure: RoomMeasure;
  readonly slot: Slot;
  readonly own: readonly Spot[];
}

export function slotsOfRooms(
  { house, rooms }: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  spots: Spots,
): readonly RoomSlot[] {
  // What leads to them is an outside door.
  const cold = new Set(['outside', ...rooms.filter(({ use }) => unheatedUses.includes(use)).map(({ slug }) => slug)]);
  return rooms.flatMap((room) => {
    const measure = measures.get(room.slug);
    if (!measure) return [];
    const places = spots.get(room.slug) ?? new Map<string, Spot>();
    return slotsOf(house.slots ?? [], room).map((slot) => ({
      room,
      measure,
      slot,
      own: spotsAt(slot.at, measure, places, (slug) => cold.has(slug)),
    }));
  });
}

/** Places that rooms of a kind must have decided, and that nothing speaks of. A deliberate none is a decision. */
export function findNeverChosen(
  slots: readonly RoomSlot[],
  categories: readonly Category[],
  names: Names,
): readonly ScopeFinding[] {
  return slots.flatMap(({ room, measure, slot, own }) => {
    const empty = own.filter((spot) => !isDecided(slot, spot, names));
    const [first] = empty;
    if (!first) return [];
    const placeText = placeWords(empty, measure);
    const trades = categories
      .filter((each) => slot.needs.some((name) => isCalled(each, name)))
      .map(({ trade }) => trade);
    return [
      {
        id: `never-chosen/${room.slug}/${first.place.id}/${slot.needs[0] ?? ''}`,
        kind: 'never-chosen',
        room: room.slug,
        place: first.place.id,
        placeText,
        what: `${capital(names.words(slot.needs))} for ${inSentence(placeText)} was never chosen${howMuch(slot.at, empty, measure)}.`,
        fix: `Add a selection at ${wordsAt(slot.at, empty, own)} in this room; chosen: none when there shall be none.`,
        trades: [...new Set(trades)],
        source: room.origin.file,
        line: room.origin.key(['selections']).line,
      },
    ];
  });
}

/** `: 41.6 sq ft of the south wall stand outside`, where the layout tells. */
function howMuch(word: string, spots: readonly Spot[], measure: RoomMeasure): string {
  const lies = word === 'outside-walls' ? 'stand outside' : word === 'roof-ceiling' ? 'lie under the roof' : undefined;
  if (lies === undefined || !knownAround(measure)) return '';
  const parts = spots.flatMap(({ place }) =>
    (surfacesOf(place) ?? []).map(({ surface }) => `${printArea(surface.gross)} of the ${inSentence(surface.name)}`),
  );
  return `: ${joinWords(parts)} ${lies}`;
}

/** What to write under `at`: the places, or the slot's word where one of them is the part of a wall or ceiling, less what is decided. */
function wordsAt(word: string, empty: readonly Spot[], all: readonly Spot[]): string {
  if (empty.every(({ place }) => partOf(place) === undefined)) return empty.map(({ place }) => place.id).join(', ');
  const decided = all.flatMap(({ place }) => (empty.some((one) => one.place === place) ? [] : [place.id]));
  return decided.length === 0 ? word : `${word}, with except: [${decided.join(', ')}],`;
}

function slotsOf(slots: readonly Slot[], { use }: Room): readonly Slot[] {
  return slots.filter((slot) => (slot.in?.includes(use) ?? true) && !(slot.except?.includes(use) ?? false));
}

function isDecided({ needs }: Slot, { selected }: Spot, names: Names): boolean {
  return needs.some(
    (name) => names.carriers(name).length > 0 || selected.some(({ category }) => isCalled(category, name)),
  );
}

/** Spots of the places that a slot's word means in a room. A kind of feature means each of its faces that has something
 *  on it, else the feature. */
function spotsAt(
  word: string,
  measure: RoomMeasure,
  own: ReadonlyMap<string, Spot>,
  isCold: (slug: string) => boolean,
): readonly Spot[] {
  const all = [...own.values()];
  switch (word) {
    case 'floor':
    case 'ceiling':
    case 'base':
      return all.filter(({ place }) => place.id === word);
    case 'sloped-ceiling':
      return measure.ceiling.facets.some(({ slope }) => slope !== 0)
        ? all.filter(({ place }) => place.id === 'ceiling')
        : [];
    case 'walls':
      return all.filter(({ place }) => place.kind === 'wall');
    case 'outside-walls':
    case 'roof-ceiling':
      return (findPlaces(word, measure) ?? [])
        .filter((place) => isEnough(place, measure))
        .flatMap((place) => spotOf(place, own) ?? []);
    case 'doors':
      return openings(all, ({ kind }) => kind === 'door');
    case 'inside-doors':
      return openings(all, ({ kind, own: recorded, to }) => kind === 'door' && recorded && !isCold(to));
    case 'windows':
      return openings(all, ({ kind }) => kind === 'window');
    case 'cased-openings':
      return openings(all, ({ kind }) => kind === 'cased');
    default:
      return features(word, all);
  }
}

/** The end of a wall stands outside for all of its height; above a lower neighbour it does from some square feet on. */
function isEnough(place: Place, measure: RoomMeasure): boolean {
  if (place.kind !== 'wall' || !place.part) return true;
  const stretches = knownAround(measure)?.walls.find(({ wall }) => wall === place.id)?.stretches ?? [];
  return place.part.surface.gross >= leastAbove || stretches.some(({ behind }) => behind === undefined);
}

/** A place with what is selected for it, or for any part of it. */
function spotOf(place: Place, own: ReadonlyMap<string, Spot>): Spot | undefined {
  const spot = own.get(place.id);
  const isThere = ({ places }: Spot['selected'][number]) => places.some((one) => meet(one, place));
  return spot && { ...spot, place, selected: spot.selected.filter(isThere) };
}

function openings(all: readonly Spot[], is: (opening: RoomMeasure['openings'][number]) => boolean): readonly Spot[] {
  return all.filter(({ place }) => place.kind === 'opening' && is(place.opening));
}

/** A feature with what lies on its faces gathered. */
function features(kind: string, all: readonly Spot[]): readonly Spot[] {
  return all.flatMap((spot) => {
    if (spot.place.kind !== 'feature' || spot.place.feature.kind !== kind) return [];
    const faces = all.filter(({ place }) => place.id.startsWith(`${spot.place.id}/`));
    return [{ ...spot, selected: [...spot.selected, ...faces.flatMap(({ selected }) => selected)] }];
  });
}
