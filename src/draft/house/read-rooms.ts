import { inLocale, type Locale } from '../../base/units/index.js';
import type { Refused } from './answers.js';
import { readRoomLine, type RoomLine } from './room-line.js';

/** More rooms than this are no house. */
export const mostRooms = 100;

/** Reads a new house's rooms, in its locale; two of one name are refused. */
export function readRooms(
  lines: readonly string[],
  locale: Locale,
): { readonly rooms: readonly RoomLine[]; readonly refused: readonly Refused[] } {
  if (lines.length > mostRooms) {
    const why = `${lines.length} rooms are more than the ${mostRooms} that a house starts with`;
    return { rooms: [], refused: [{ question: 'room', why, fix: 'leave some out, and add them with new room' }] };
  }
  return inLocale(locale, () => {
    const names = new Set<string>();
    const rooms: RoomLine[] = [];
    const refused: Refused[] = [];
    for (const line of lines) {
      const room = readRoomLine(line);
      if (!room.ok) {
        const why = `'${shown(line)}': ${room.why}`;
        refused.push({ question: 'room', why, ...(room.fix !== undefined && { fix: room.fix }) });
        continue;
      }
      const { name } = room.value;
      if (names.has(name.toLowerCase()))
        refused.push({ question: 'room', why: `two rooms are named '${name}'`, fix: `name one of them ${name} 2` });
      names.add(name.toLowerCase());
      rooms.push(room.value);
    }
    return { rooms, refused };
  });
}

/** A line as it can be printed: control characters as ?, no more than a line of it. */
function shown(line: string): string {
  const plain = line.replace(/[\p{Cc}\p{Cs}]/gu, '?');
  return plain.length > 60 ? `${plain.slice(0, 60)}…` : plain;
}
