import { capital } from '../../base/units/index.js';
import type { Category, Records, Room, RoomMeasure, Slot } from '../model/index.js';
import { isCalled, type Names } from './names.js';
import { inSentence, placeWords } from './place-words.js';
import type { ScopeFinding } from './scope.js';
import type { Spot, Spots } from './spot.js';

/** A slot in a room that must have it, with the places that it means there. */
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
  return rooms.flatMap((room) => {
    const measure = measures.get(room.slug);
    if (!measure) return [];
    const places = spots.get(room.slug) ?? new Map<string, Spot>();
    return slotsOf(house.slots ?? [], room).map((slot) => ({
      room,
      measure,
      slot,
      own: spotsAt(slot.at, measure, places),
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
        what: `${capital(names.words(slot.needs))} for ${inSentence(placeText)} was never chosen.`,
        fix: `Add a selection at ${empty.map(({ place }) => place.id).join(', ')} in this room; chosen: none when there shall be none.`,
        trades: [...new Set(trades)],
        source: room.origin.file,
        line: room.origin.key(['selections']).line,
      },
    ];
  });
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
function spotsAt(word: string, measure: RoomMeasure, own: ReadonlyMap<string, Spot>): readonly Spot[] {
  const all = [...own.values()];
  const walls = all.filter(({ place }) => place.kind === 'wall');
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
      return walls;
    case 'outside-walls': {
      const outside = new Set(measure.openings.filter(({ to }) => to === 'outside').map(({ wall }) => wall));
      return walls.filter(({ place }) => outside.has(place.id));
    }
    case 'doors':
      return openings(all, ({ kind }) => kind === 'door');
    case 'inside-doors':
      return openings(all, ({ kind, own: recorded, to }) => kind === 'door' && recorded && to !== 'outside');
    case 'windows':
      return openings(all, ({ kind }) => kind === 'window');
    case 'cased-openings':
      return openings(all, ({ kind }) => kind === 'cased');
    default:
      return features(word, all);
  }
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
