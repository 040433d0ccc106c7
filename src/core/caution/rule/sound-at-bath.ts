import { carries, factOf } from '../../fact/index.js';
import { besideWall, wallsAgainst } from '../../takeoff/index.js';
import { isSoundInsulation, selectionsAt, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import type { ExampleRooms, ExampleSelection } from './example.js';
import type { Finding, Rule } from './rule.js';
import { yardstick } from './source.js';

/** Loud speech on the other side is no longer heard. Source: the usual scale of STC ratings, as specifiers print it. */
const least = 45;
const says = `At STC ${least} loud speech behind the wall is no longer heard; at 40 it is a murmur. A house has no rule for it: this is for comfort. Doors, pipes and boxes let through more than the wall.`;
const ask = 'the owners what they want to hear, and the insulation contractor for the tested wall';

export const soundAtBath: Rule = {
  id: 'sound-at-bath',
  title: 'Sound between bedroom and bath',
  source: yardstick('STC scale after ASTM E413', 'as specifiers print it', 'what is heard'),
  limits: () => [{ what: 'Tested wall, at least', text: `STC ${least}` }],
  examples: [
    {
      what: 'A bath beside a bedroom, and no sound insulation in the wall between',
      sees: 'no sound insulation is selected in it',
      rooms: bathBeside(),
    },
    {
      what: 'The same bath with a wall tested at STC 50',
      sees: null,
      rooms: bathBeside({ of: 'sound-insulation', at: 'north', facts: { stc: 50 } }),
    },
  ],
  find: (house) => house.rooms.flatMap((room) => [...weak(room), ...missing(room, house)]),
};

/** Sound walls of a bath or a bedroom. */
function weak({ slug, use, selections }: RoomView): readonly Finding[] {
  if (use !== 'bath' && use !== 'bedroom') return [];
  return selections.filter(isSoundInsulation).flatMap(({ id, places, placeText, category, counted }) => {
    const [first] = places;
    const stc = factOf(counted, 'sound-insulation', 'stc');
    if (!first || !counted || (stc !== undefined && stc >= least)) return [];
    const rating = stc === undefined ? 'the STC of its wall is not recorded' : `tested at STC ${stc}`;
    return [
      {
        room: slug,
        place: first.id,
        placeText,
        selections: [id],
        trades: [category.trade],
        seen: `${placeText}: ${counted.name}, ${rating}.`,
        says,
        ask,
      },
    ];
  });
}

/** The wall that the layout, or else a bath's record or door, shows to be shared with a bedroom, with no sound insulation on either side. */
function missing(room: RoomView, house: HouseView): readonly Finding[] {
  if (room.use !== 'bath') return [];
  const walls = new Map<string, Finding>();
  const shared = room.measure.walls.flatMap((wall) => besideWall(wall, room.measure).map((to) => ({ wall, to })));
  for (const { wall, to } of shared) {
    const beside = house.bySlug.get(to);
    if (beside?.use !== 'bedroom' || walls.has(wall.id)) continue;
    const { id, name } = wall;
    const across = wallsAgainst(wall, room.measure, beside.measure).flatMap((other) => selectionsAt(beside, other));
    if ([...selectionsAt(room, id), ...across].some(isSoundInsulation)) continue;
    walls.set(id, {
      room: room.slug,
      place: id,
      placeText: name,
      selections: [],
      trades: tradesOf(house, (category) => carries(category, 'sound-insulation', 'stc')),
      seen: `${name} stands between ${room.name} and ${beside.name}, and no sound insulation is selected in it.`,
      says,
      ask,
    });
  }
  return [...walls.values()];
}

function bathBeside(...selections: readonly ExampleSelection[]): ExampleRooms {
  return { bath: { use: 'bath', openings: { D1: { to: 'bedroom' } }, selections }, bedroom: { use: 'bedroom' } };
}
