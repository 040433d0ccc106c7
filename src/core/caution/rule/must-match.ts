import { lower } from '../../../base/units/index.js';
import type { HouseView, Matching, RoomView, SelectionView } from '../view.js';
import { optionWords } from '../words.js';
import type { Example } from './example.js';
import type { Finding, Rule } from './rule.js';
import { commonPractice } from './source.js';

export const mustMatch: Rule = {
  id: 'must-match',
  title: 'Places that are to match',
  source: commonPractice('the house’s record says what is to match'),
  limits: () => [{ what: 'Options of places that are to match, at most', text: '1' }],
  examples: [
    {
      what: 'A stair in cable, a gallery in pickets',
      sees: 'Cable; north in loft: Pickets',
      ...railings('Cable', 'Pickets'),
    },
    { what: 'Cable in both', sees: null, ...railings('Cable', 'Cable') },
  ],
  find: (house) => house.matches.flatMap((match) => differing(house, match)),
};

interface Placed {
  readonly room: RoomView;
  readonly selection: SelectionView;
}

/** What is open and has no standard may still be the same: it is passed over. */
function differing(house: HouseView, { name, why, selections }: Matching): readonly Finding[] {
  const placed = selections.flatMap((id): readonly Placed[] =>
    house.rooms.flatMap((room) =>
      room.selections.filter((one) => one.id === id).map((selection) => ({ room, selection })),
    ),
  );
  const standing = placed.filter(({ selection }) => selection.state === 'none' || selection.counted);
  const [first] = standing;
  if (!first || new Set(standing.map(({ selection }) => selection.counted?.slug)).size < 2) return [];
  return [
    {
      room: first.room.slug,
      place: first.selection.places[0]?.id ?? 'walls',
      placeText: first.selection.placeText,
      selections: standing.map(({ selection }) => selection.id),
      trades: [first.selection.category.trade],
      seen: `${name} differ: ${standing.map(standingWords).join('; ')}.`,
      says: `The house says that they are to match: ${why}`,
      ask: 'the owners and the designer which of them stands, before any is ordered',
    },
  ];
}

/** `Gallery edge in Gallery: Horizontal cable`. */
function standingWords({ room, selection }: Placed, index: number): string {
  const place = index === 0 ? selection.placeText : lower(selection.placeText);
  const option = selection.counted ? optionWords(selection, selection.counted) : 'none';
  return `${place} in ${room.name}: ${option}`;
}

function railings(stair: string, loft: string): Pick<Example, 'rooms' | 'matches'> {
  const railing = (name: string) =>
    [{ of: 'railing', at: 'north', facts: {}, option: { name, slug: name.toLowerCase() } }] as const;
  return {
    rooms: { stair: { selections: railing(stair) }, loft: { selections: railing(loft) } },
    matches: [
      { name: 'Railings', why: 'They are seen together.', selections: ['stair/railing/north', 'loft/railing/north'] },
    ],
  };
}
