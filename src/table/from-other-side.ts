import type { BookRoom, LookUp } from '../core/book/index.js';
import { carries } from '../core/fact/index.js';
import { besideWall, wallsAgainst } from '../core/takeoff/index.js';
import { joinWords } from '../base/units/index.js';

/** Walls of a room that are insulated for sound from the room on their other side, each with that side and what is in it. */
export interface FromOtherSide {
  readonly wall: string;
  /** `Hall bath`. */
  readonly room: string;
  readonly finish: string;
}

/** What the room's own selections do not say: its neighbours insulate the wall for it. */
export function fromOtherSide({ slug, measure }: BookRoom, look: LookUp): readonly FromOtherSide[] {
  return measure.walls.flatMap((wall) =>
    besideWall(wall, measure).flatMap((other) => {
      const there = look.room(other);
      if (!there || there.slug === slug) return [];
      const facing = new Set(wallsAgainst(wall, measure, there.measure));
      return look.selectionsOf(there).flatMap(({ category, counted, places }) => {
        const option = look.option(category, counted);
        const isSound = carries(look.category(category), 'sound-insulation', 'stc');
        if (!option || !isSound || !places.some(({ id }) => facing.has(id))) return [];
        return [{ wall: wall.name, room: there.name, finish: option.name }];
      });
    }),
  );
}

/** `North wall: from the Hall bath side, Mineral fiber sound batt`. */
export function otherSideWords(found: readonly FromOtherSide[]): string {
  return joinWords(found.map(({ wall, room, finish }) => `${wall} from the ${room} side, ${finish}`));
}
