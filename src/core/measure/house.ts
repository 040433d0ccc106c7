import type { Records, Room, RoomMeasure } from '../model/index.js';
import type { Outcome, Problem } from '../../base/problem/index.js';
import { inLocale, keepAlike } from '../../base/units/index.js';
import { measureRoom } from './room.js';

export type MeasureHouse = (records: Records) => Outcome<ReadonlyMap<string, RoomMeasure>>;

/** Every room that can be measured, by slug, in the records' order. */
export const measureHouse: MeasureHouse = (records) => measureBy(records, measureRoom);

/** Measures one house after another. A room that several of them have, among the same neighbours, is measured once; one that measures the same is the
 *  same object. */
export function houseMeasurer(): MeasureHouse {
  const alike = keepAlike<RoomMeasure>();
  const kept = new Map<Room, { readonly owners: readonly Owner[]; readonly measured: Outcome<RoomMeasure> }>();
  const measure: typeof measureRoom = (room, { rooms }) => {
    const owners = ownersOf(room, rooms);
    const known = kept.get(room);
    if (known?.owners.every(([, owner], index) => owner === owners[index]?.[1])) return known.measured;
    const { value, problems } = measureRoom(room, {
      rooms: new Map(owners.flatMap(([slug, owner]) => (owner ? [[slug, owner]] : []))),
    });
    const measured = { problems, ...(value && { value: alike(room.slug, value) }) };
    kept.set(room, { owners, measured });
    return measured;
  };
  return (records) => measureBy(records, measure);
}

/** A room by its slug, or that there is none. */
type Owner = readonly [slug: string, room: Room | undefined];

/** The rooms that record openings which `room` only sees: all that its measure takes from other rooms. */
function ownersOf(room: Room, rooms: ReadonlyMap<string, Room>): readonly Owner[] {
  return room.openings.flatMap((opening): Owner[] =>
    opening.by === 'seen' ? [[opening.recordedIn, rooms.get(opening.recordedIn)]] : [],
  );
}

function measureBy(records: Records, measure: typeof measureRoom): ReturnType<MeasureHouse> {
  const rooms = new Map(records.rooms.map((room) => [room.slug, room]));
  const problems: Problem[] = [];
  const value = new Map<string, RoomMeasure>();
  inLocale(records.house, () => {
    for (const room of records.rooms) {
      const measured = measure(room, { rooms });
      problems.push(...measured.problems);
      if (measured.value) value.set(room.slug, measured.value);
    }
  });
  return { value, problems };
}
