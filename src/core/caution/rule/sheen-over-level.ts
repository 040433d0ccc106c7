import { carries, factOf } from '../../fact/index.js';
import { selectionsAt } from '../look-up.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { yardstick } from './source.js';

/** Source: GA-214, the note at level 5, as drywall trade texts quote it. */
const least = 5;
const glossy = ['semi-gloss', 'gloss'];

export const sheenOverLevel: Rule = {
  id: 'sheen-over-level',
  title: 'High sheen over the finish level',
  source: yardstick('GA-214, Recommended Levels of Finish', '2007 to 2015', 'level 5'),
  limits: () => [{ what: `Under ${glossy.join(' or ')} paint, at least`, text: `level ${least}` }],
  examples: [
    { what: 'Semi-gloss paint over board finished to level 4', sees: 'semi-gloss, over', rooms: paintOver(4) },
    { what: 'The same paint over level 5', sees: null, rooms: paintOver(5) },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      room.selections.flatMap((selection) => {
        const { category, counted, places, placeText } = selection;
        const sheen = factOf(counted, 'paint', 'sheen');
        if (!counted || !carries(category, 'paint', 'sheen') || sheen === undefined || !glossy.includes(sheen))
          return [];
        const low = places.flatMap((place) =>
          selectionsAt(room, place.id).flatMap((below) => {
            if (!below.counted || !carries(below.category, 'texture', 'level')) return [];
            const level = factOf(below.counted, 'texture', 'level');
            return level !== undefined && level >= least ? [] : [{ place, below, level, name: below.counted.name }];
          }),
        );
        const [first] = low;
        if (!first) return [];
        const over = [
          ...new Set(
            low.map(
              ({ name, level }) => `${name}, ${level === undefined ? 'its level not recorded' : `level ${level}`}`,
            ),
          ),
        ];
        return [
          {
            room: room.slug,
            place: first.place.id,
            placeText,
            selections: [selection.id, ...new Set(low.map(({ below }) => below.id))],
            trades: [...new Set([category.trade, ...low.map(({ below }) => below.category.trade)])],
            seen: `${counted.name}, ${sheen}, over ${over.join('; ')}.`,
            says: `Level ${least}, a skim coat over all of it, is recommended under gloss, semi-gloss and enamel, and wherever light grazes the wall: joints show through otherwise.`,
            ask: 'the drywall foreman and the painter, before the board is taped',
          },
        ];
      }),
    ),
};

function paintOver(level: number): ExampleRooms {
  return {
    hall: {
      selections: [
        { of: 'paint', at: 'north', facts: { sheen: 'semi-gloss' } },
        { of: 'texture', at: 'north', facts: { level } },
      ],
    },
  };
}
