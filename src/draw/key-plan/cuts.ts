import type { KeyLevel, KeyRoom, PlanOpening } from '../../core/book/index.js';
import type { Patch } from '../../base/geometry/index.js';
import { wallLines, type WallLine } from '../plan/wall-line.js';
import type { Sheet } from '../sheet.js';
import { gapIn, type Gap } from './gap.js';

/** An opening where it stands, or an open side. */
export interface Cut {
  /** As thick as the wall is there. */
  readonly line: WallLine;
  /** Absent: the whole side is open. */
  readonly opening?: PlanOpening;
  readonly gap: Gap;
  /** Begins above the plane of the plan: the wall under it is cut, not the opening. */
  readonly isAbove: boolean;
}

export interface RoomCuts {
  readonly room: KeyRoom;
  readonly lines: readonly WallLine[];
  readonly cuts: readonly Cut[];
}

/** What is open in the walls of a level, room by room; what two rooms share stands at one of them. */
export function cutsOf(sheet: Sheet, { rooms }: KeyLevel, walls: readonly Patch[]): readonly RoomCuts[] {
  const inch = 25_400_000 * sheet.perNanometre;
  return rooms.map((room, index) => {
    const before = new Set(rooms.slice(0, index).map(({ slug }) => slug));
    const lines = sheet.standingAt(room.at, () => wallLines(sheet, room));
    const cut = (line: WallLine, from: number, to: number): Pick<Cut, 'line' | 'gap'> => {
      const gap = gapIn(line, { from, to }, walls, inch);
      return { gap, line: { ...line, thickness: gap.depth } };
    };
    const along = (line: WallLine, opening: PlanOpening, isAbove: boolean): Cut => {
      const from = opening.at * sheet.perNanometre;
      return { ...cut(line, from, from + opening.width * sheet.perNanometre), opening, isAbove };
    };
    const cuts = lines.flatMap((line): readonly Cut[] => {
      const { openTo } = line.wall;
      if (openTo === undefined)
        return [
          ...line.openings.map((opening) => along(line, opening, false)),
          ...line.above.map((opening) => along(line, opening, true)),
        ];
      // An open side is a side of both rooms.
      return before.has(openTo) ? [] : [{ ...cut(line, 0, line.length), isAbove: false }];
    });
    return { room, lines, cuts };
  });
}
