import { factOf } from '../../fact/index.js';
import { fromInches, printLength } from '../../../base/units/index.js';
import { optionWords } from '../words.js';
import { guardsOf } from './guards.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { residentialCode } from './source.js';

/** A ball of this size must not go through. Source: IRC 2018, R312.1.3 and its exception for the open side of stairs. */
const ball = { floor: fromInches(4), stair: fromInches(4.375) };

export const guardOpening: Rule = {
  id: 'guard-opening',
  title: 'Opening between the parts of a guard',
  source: residentialCode('R312.1.3'),
  limits: () => [
    { what: 'Clear opening, less than', text: printLength(ball.floor) },
    { what: 'Clear opening on the open side of a stair, less than', text: printLength(ball.stair) },
  ],
  examples: [
    {
      what: 'Cables 4 1/2" apart at the edge of a loft',
      sees: '4 1/2" clear between its parts',
      rooms: loft('4 1/2"'),
    },
    { what: 'Cables 3" apart there', sees: null, rooms: loft('3"') },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      guardsOf(room).guards.flatMap(({ railing, hazards }) => {
        const limit = hazards.every(({ isStair }) => isStair) ? ball.stair : ball.floor;
        const seen = railing.options.flatMap((option) => {
          const opening = factOf(option, 'railing', 'clear-opening');
          if (opening === undefined) return [`${optionWords(railing, option)}: the clear opening is not recorded.`];
          return opening >= limit
            ? [`${optionWords(railing, option)}: ${printLength(opening)} clear between its parts.`]
            : [];
        });
        if (seen.length === 0) return [];
        return [
          {
            room: room.slug,
            place: hazards[0].feature.id,
            placeText: railing.placeText,
            selections: [railing.id],
            trades: [railing.category.trade],
            seen: seen.join(' '),
            says: `A ball of ${printLength(limit)} must not pass between the parts. What gives, as cables do, is judged under load.`,
            ask: 'the railing shop for the opening as built, and the building office',
          },
        ];
      }),
    ),
};

function loft(clear: string): ExampleRooms {
  return {
    loft: {
      features: { edge: { kind: 'drop-edge', wall: 'north', drop: `8'` } },
      selections: [{ of: 'railing', at: 'edge', facts: { height: '36"', 'clear-opening': clear } }],
    },
  };
}
