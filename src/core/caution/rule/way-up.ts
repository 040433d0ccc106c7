import { printArea } from '../../../base/units/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import { joinWords } from '../words.js';
import { floorsAbove } from './floors-above.js';
import type { Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R311.4, from memory. */
export const wayUp: Rule = {
  id: 'way-up',
  title: 'No way up is recorded',
  source: residentialCode('R311.4'),
  limits: () => [{ what: 'Stairs up to each floor, at least', text: '1' }],
  examples: [
    {
      what: 'A loft without a stair or ladder that leads to it',
      sees: 'No stair up to this level is recorded',
      rooms: { hall: {}, loft: { level: 'upper', use: 'gallery', floor: 300 } },
    },
    {
      what: 'A loft with a ladder from the room below',
      sees: null,
      rooms: {
        hall: { features: { ladder: { kind: 'stair', rise: `9'`, risers: 12, rails: 0, going: '5"', width: '24"' } } },
        loft: { level: 'upper', use: 'gallery', floor: 300 },
      },
    },
  ],
  find: (house) =>
    floorsAbove(house)
      .filter(({ ways }) => ways.length === 0)
      .map(({ first, words, area }) => ({
        room: first.slug,
        place: 'floor',
        placeText: 'Way up',
        selections: [],
        trades: tradesOf(house, (category) => category.measure.by === 'stair' || isFraming(category)),
        seen: `No stair up to ${words} is recorded; it holds ${printArea(area)} of floor.${unknownWords(house, first)}`,
        says: 'A level that is lived on and has no door to the outside is reached by a stair or a ramp.',
        ask: 'the architect: which way leads up, and how steep it is',
      })),
};

/** Stairs that may lead here: their records leave it open. */
function unknownWords({ reach, levels }: HouseView, { level }: RoomView): string {
  const unknown = reach.flights.filter(
    (flight) => !flight.floor && levels.indexOf(flight.level) < levels.indexOf(level),
  );
  if (unknown.length === 0) return '';
  return ` Where ${joinWords(unknown.map(({ feature }) => feature.name))} leads is not recorded: write to: with the room at the head of it.`;
}
