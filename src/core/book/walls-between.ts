import type { Length } from '../../base/units/index.js';
import type { Book } from './book.js';

/** A stretch along which two rooms' walls stand against each other. */
export interface WallBetween {
  /** Slugs and ids, the room that stands first in the house first. */
  readonly room: string;
  readonly wall: string;
  readonly otherRoom: string;
  readonly otherWall: string;
  readonly length: Length;
  /** From face to face, as laid out. */
  readonly thickness: Length;
}

/** Every wall that two rooms have between them, once; stretches of one wall against another are one. */
export function wallsBetween({ rooms }: Pick<Book, 'rooms'>): readonly WallBetween[] {
  const order = new Map(rooms.map(({ slug }, index) => [slug, index]));
  return rooms.flatMap(({ slug, measure }, index) =>
    (measure.around?.walls ?? []).flatMap(({ wall, stretches }) => {
      const found = new Map<string, WallBetween>();
      for (const { from, to, behind } of stretches) {
        if (!behind || (order.get(behind.room) ?? 0) <= index) continue;
        const key = `${behind.room}/${behind.wall}`;
        const length = ((found.get(key)?.length ?? 0) + to - from) as Length;
        const { room: otherRoom, wall: otherWall, thickness } = behind;
        found.set(key, { room: slug, wall, otherRoom, otherWall, length, thickness });
      }
      return [...found.values()];
    }),
  );
}
