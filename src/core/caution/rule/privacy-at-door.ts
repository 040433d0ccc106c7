import { carries } from '../../fact/index.js';
import type { OpeningMeasure } from '../../model/index.js';
import { tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import type { ExampleRooms } from './example.js';
import type { Finding, Rule } from './rule.js';
import { commonPractice } from './source.js';

/** Rooms whose door is locked from inside, and rooms behind them to which one comes through them alone. */
const privateUses = ['bedroom', 'bath', 'powder'] as const;
const behind = ['closet', ...privateUses] as const;

export const privacyAtDoor: Rule = {
  id: 'privacy-at-door',
  title: 'Lock of a bath or bedroom',
  source: commonPractice('function of a lock follows the room'),
  limits: () => [{ what: 'Door of a bedroom, bath or powder room from elsewhere', text: 'privacy' }],
  examples: [
    {
      what: 'A passage set on the door from a hall to a bath',
      sees: 'has no lock that closes from inside',
      rooms: bathBehind('passage'),
    },
    { what: 'A privacy set on the same door', sees: null, rooms: bathBehind('privacy') },
    { what: 'The same door without a recorded function', sees: 'has no recorded function', rooms: bathBehind() },
    {
      what: 'A passage set on the door from a bedroom to its closet',
      sees: null,
      rooms: {
        bedroom: { use: 'bedroom', openings: { D1: { to: 'closet', function: 'passage' } } },
        closet: { use: 'closet' },
      },
    },
  ],
  find: (house) => house.rooms.flatMap((room) => room.measure.openings.flatMap((door) => lockOf(house, room, door))),
};

const isOf = (uses: readonly string[], room: RoomView): boolean => uses.includes(room.use);

function lockOf(house: HouseView, room: RoomView, { kind, mark, to, door }: OpeningMeasure): readonly Finding[] {
  const locks = door?.function;
  const beside = house.bySlug.get(to);
  if (kind !== 'door' || locks === 'privacy' || locks === 'entry' || !beside) return [];
  if (!isOf(privateUses, room)) return [];
  // Between a bath and the bedroom it belongs to, it is the bath's door.
  if (isOf(behind, beside) && !(room.use !== 'bedroom' && beside.use === 'bedroom')) return [];
  return [
    {
      room: room.slug,
      place: mark,
      placeText: `Door ${mark}`,
      selections: [...room.selections, ...beside.selections]
        .filter(({ category, places }) => isHardware(category) && places.some(({ id }) => id === mark))
        .map(({ id }) => id),
      trades: tradesOf(house, isHardware),
      seen: `Door ${mark} between ${beside.name} and ${room.name} ${lockWords(locks)}.`,
      says: 'Doors of bedrooms and baths usually have a privacy set, which locks from inside and opens from outside with a pin.',
      ask: 'the owners whether they want it so, and the hardware supplier',
    },
  ];
}

function lockWords(locks: 'passage' | 'dummy' | undefined): string {
  return locks === undefined
    ? 'has no recorded function: whether it locks from inside is not told'
    : `is recorded as ${locks}: it has no lock that closes from inside`;
}

const isHardware = (category: Parameters<typeof carries>[0]): boolean => carries(category, 'door-hardware', 'backset');

function bathBehind(locks?: 'passage' | 'privacy'): ExampleRooms {
  const D1 = { to: 'bath', ...(locks && { function: locks }) };
  return { hall: { use: 'hall', openings: { D1 } }, bath: { use: 'bath' } };
}
