import type { Records, RoomMeasure } from '../model/index.js';
import type { Outcome, Problem } from '../problem/index.js';
import { measureRoom } from './room.js';

/** Every room that can be measured, by slug, in the records' order. */
export function measureHouse(records: Records): Outcome<ReadonlyMap<string, RoomMeasure>> {
  const rooms = new Map(records.rooms.map((room) => [room.slug, room]));
  const problems: Problem[] = [];
  const value = new Map<string, RoomMeasure>();
  for (const room of records.rooms) {
    const measured = measureRoom(room, { rooms });
    problems.push(...measured.problems);
    if (measured.value) value.set(room.slug, measured.value);
  }
  return { value, problems };
}
