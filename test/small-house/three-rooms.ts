import type { Book } from '../../src/core/book/index.js';
import { smallBook, type Edits } from '../book/small-house.js';

/** What a room of the three has beside its walls: lines of its record, and its selections, one a line. */
export interface RoomText {
  readonly lines?: readonly string[];
  readonly selections?: readonly string[];
}

export interface ThreeRooms {
  readonly hall?: RoomText;
  readonly den?: RoomText;
  readonly loft?: RoomText;
  /** Text of `house.md` before its milestones, such as its slots. */
  readonly house?: string;
  /** Whether the house records where its floors are: without that it is not all laid out. */
  readonly floors?: boolean;
  /** Of the hall, from east to west, and its height. */
  readonly wide?: string;
  readonly high?: string;
}

/** A hall of 20' × 10', 12' high; a den of 12' × 10', 8' high, north of the hall's west end, behind 4 1/2" of wall; a loft of 12' × 6', 8' high,
 *  over the south of the den, its floor at 9'.
 *
 *      y 20'-4 1/2"   ┌───────────┐
 *                     │    den    │        loft: over the den's south 6'
 *      y 10'-4 1/2"   ├────D1─────┤·····W1·····
 *      y 10'          ├───────────────────────┐
 *                     │          hall         │
 *      y 0            └───────────────────────┘
 *                     x 0        x 12'        x 20'
 *
 *  The hall's north wall is 20' × 12' = 240 sq ft. The den stands behind 12' × 8' = 96 of it, with the door D1 of 2'-6" × 6'-8" (16.67); 144 stand
 *  outside, 8' × 12' beside the den and 12' × 4' above it, with the window W1 of 4' × 5' (20). Of the den's ceiling, 12' × 10', the loft and half a
 *  foot of its outside wall lie over 12' × 6 1/2' = 78; 42 lie under the roof. */
export function threeRooms(of: ThreeRooms = {}): Edits {
  const { hall = {}, den = {}, loft = {}, house = '', floors = true, wide = `20'-0"`, high = `12'-0"` } = of;
  const upper = floors ? `{ id: upper, name: Upper level, floor: 9'-0" }` : '{ id: upper, name: Upper level }';
  return {
    'content/rooms/study.md': null,
    'content/house.md': [
      ['  - { id: main, name: Main level }\n', `  - { id: main, name: Main level }\n  - ${upper}\n`],
      ['milestones:\n', `${house}milestones:\n`],
    ],
    'content/rooms/den.md': room('Den', '101', 'main', `12'-0" x 10'-0"`, `8'-0"`, {
      lines: ['openings:', `  - { mark: D1, recorded-in: hall, wall: south, at: 7'-6" }`, ...(den.lines ?? [])],
      selections: den.selections ?? [],
    }),
    'content/rooms/hall.md': room('Hall', '102', 'main', `${wide} x 10'-0"`, high, {
      lines: [
        'openings:',
        `  - { mark: D1, kind: door, wall: north, at: 2'-0", width: 2'-6", height: 6'-8", to: den }`,
        `  - { mark: W1, kind: window, wall: north, at: 14'-0", width: 4'-0", height: 5'-0", sill: 3'-0", to: outside }`,
        ...(hall.lines ?? []),
      ],
      selections: hall.selections ?? [],
    }),
    'content/rooms/loft.md': room('Loft', '201', 'upper', `12'-0" x 6'-0"`, `8'-0"`, {
      lines: [`place: { from: hall, x: 0", y: 10'-4 1/2" }`, ...(loft.lines ?? [])],
      selections: loft.selections ?? [],
    }),
  };
}

function room(
  name: string,
  number: string,
  level: string,
  size: string,
  height: string,
  { lines = [], selections = [] }: RoomText,
): string {
  const chosen = selections.length === 0 ? '' : `selections:\n${selections.map((one) => `  - ${one}\n`).join('')}`;
  const rest = lines.map((line) => `${line}\n`).join('');
  return `---\nname: ${name}\nnumber: "${number}"\nlevel: ${level}\nuse: hall\nsize: ${size}\nceiling: flat ${height}\n${rest}${chosen}---\n`;
}

export function threeRoomsBook(of: ThreeRooms = {}, ...more: readonly Edits[]): Book {
  const edits = Object.assign({}, threeRooms(of), ...more) as Edits;
  return smallBook(edits, '2026-04-20', ({ code }) => code === 'allowance-unused');
}
