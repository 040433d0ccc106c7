import { floorArea } from '../../model/index.js';
import type { Area } from '../../../base/units/index.js';
import type { Flight } from '../reach.js';
import type { HouseView, RoomView } from '../view.js';
import { joinWords } from '../words.js';

/** Rooms over the lowest level that one can walk between, and how one comes up to them. */
export interface FloorAbove {
  /** One of them: a gallery, if there is one. */
  readonly first: RoomView;
  readonly rooms: readonly RoomView[];
  /** `this level`, or the rooms where the level has other floors. */
  readonly words: string;
  readonly isWhole: boolean;
  readonly area: Area;
  readonly ways: readonly Flight[];
}

/** Every floor over the lowest level: a stair elsewhere in the house does not answer for it. */
export function floorsAbove(house: HouseView): readonly FloorAbove[] {
  return house.levels.slice(1).flatMap((level) => {
    const floors = house.reach.floors.get(level) ?? [];
    return floors.flatMap((floor) => {
      const rooms = floor.flatMap((slug) => house.bySlug.get(slug) ?? []);
      const first = rooms.find(({ use }) => use === 'gallery') ?? rooms[0];
      if (!first) return [];
      const isWhole = floors.length === 1;
      return [
        {
          first,
          rooms,
          words: isWhole ? 'this level' : joinWords(rooms.map(({ name }) => name)),
          isWhole,
          area: rooms.reduce((sum, { measure }) => sum + floorArea(measure.floor), 0) as Area,
          ways: house.reach.flightsTo.get(first.slug) ?? [],
        },
      ];
    });
  });
}
