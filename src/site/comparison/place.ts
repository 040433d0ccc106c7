import type { Comparison, RecordChange, RoomChange } from '../../core/compare/index.js';
import { anchorOf } from '../paths.js';

/** Where the pages of a comparison stand in a set of sheets. */
export interface ComparisonPlace {
  /** Path of the overview: `index.html`, `changes.html`. */
  readonly overview: string;
  /** Folder of the other pages, with its `/` when it has one: ``, `changes/`. */
  readonly folder: string;
}

/** A folder that holds nothing else. */
export const standingAlone: ComparisonPlace = { overview: 'index.html', folder: '' };

export function roomChangePath(place: ComparisonPlace, { room }: Pick<RoomChange, 'room'>): string {
  return `${place.folder}rooms/${room}.html`;
}

export function recordsPath(place: ComparisonPlace): string {
  return `${place.folder}records.html`;
}

/** The rooms' records are shown with their rooms, all others on one page. */
export function recordChangePath(place: ComparisonPlace, record: RecordChange, rooms: readonly RoomChange[]): string {
  const room = rooms.find((each) => recordOf(each, [record]) !== undefined);
  return room
    ? `${roomChangePath(place, room)}#record-title`
    : `${recordsPath(place)}#${anchorOf('record', record.path)}`;
}

/** The record of a room, if it is among those. */
export function recordOf({ room }: RoomChange, records: Comparison['records']): RecordChange | undefined {
  return records.find(({ path }) => path === `content/rooms/${room}.md`);
}
