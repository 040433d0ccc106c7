import { timberOf, timbersOutside, type TimberOutside } from '../../feature/index.js';
import { counted, printLength } from '../../../base/units/index.js';
import { ofTimber } from '../look-up.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { commonPractice } from './source.js';

/** What the record places is drawn there: a piece that does not fit is an error of the record or of the framing. */
export const timberOutside: Rule = {
  id: 'timber-outside',
  title: 'Timber leaves the room',
  source: commonPractice('what is seen of a timber lies between the finished faces; only its ends go into the walls'),
  limits: () => [
    { what: 'Past a wall', text: 'by no more than what is added at that end' },
    { what: 'Top of a piece', text: 'no higher than the ceiling over its sides' },
  ],
  examples: [
    {
      what: `A beam 10" deep with its underside at 8'-6", under a ceiling at 9'`,
      sees: '4" through the ceiling',
      rooms: beam(`8'-6"`),
    },
    { what: `The same beam with its underside at 8'-2"`, sees: null, rooms: beam(`8'-2"`) },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      room.measure.features.flatMap((feature) => {
        const timber = timberOf(feature);
        const outside = timber ? timbersOutside(timber, room.measure) : [];
        if (!timber || outside.length === 0) return [];
        return [
          {
            ...ofTimber(house, room, feature),
            seen: `${feature.name}: ${wordsOf(outside, timber.count).join('; ')}.`,
            says: 'A timber that is seen lies all within the room, and only what is added at its ends goes into walls and other timbers.',
            ask: 'the framer, and the structural engineer where it carries',
          },
        ];
      }),
    ),
};

const throughWords: Readonly<Record<TimberOutside['through'], string>> = {
  wall: 'past the wall',
  slope: 'past the upper end of the slope',
  ceiling: 'through the ceiling',
};

/** `3 of 3 pieces reach 6 5/8" through the ceiling, most at 0" from the west and 4'-0" from the south`. */
function wordsOf(outside: readonly TimberOutside[], count: number): readonly string[] {
  return (['wall', 'slope', 'ceiling'] as const).flatMap((through) => {
    const [first, ...more] = outside.filter((one) => one.through === through);
    if (!first) return [];
    const worst = more.reduce((most, one) => (one.by > most.by ? one : most), first);
    const pieces = new Set([first, ...more].map(({ piece }) => piece)).size;
    const where = `${printLength(worst.x)} from the west side of the room and ${printLength(worst.y)} from the south side`;
    return [
      `${pieces} of ${counted(count, 'piece')} ${pieces === 1 ? 'goes' : 'go'} ${printLength(worst.by)} ${throughWords[through]}, at ${where}`,
    ];
  });
}

function beam(underside: string): ExampleRooms {
  const place = { run: 'east-west', at: `5'`, from: `0"`, underside };
  const section = { count: 1, length: `10'`, width: '6"', depth: '10"', ends: ['0"', '0"'] };
  const stands = { x: '0"', y: '0"', size: [`10'`, `10'`] } as const;
  return { parlor: { stands, features: { beam: { kind: 'timber', ...section, place } } } };
}
