import { isMetric, printQuantity } from '../../../base/units/index.js';
import { carries, factOf } from '../../fact/index.js';
import type { HouseView, RoomView } from '../view.js';
import { joinWords, optionWords } from '../words.js';
import type { ExampleRooms } from './example.js';
import type { Finding, Rule } from './rule.js';
import { commonPractice } from './source.js';

/** Btu an hour for a cubic foot: the upper end of the 20 to 50 for a square foot of floor that the trade reckons with, under a ceiling of 8 ft. No
 *  standard stands behind it. */
const most = 50 / 8;

export const heatForRoom: Rule = {
  id: 'heat-for-room',
  title: 'Heat of a fire against its room',
  source: commonPractice('heat by the volume of the room'),
  limits: () => [{ what: 'Heat for the volume of the room and those open to it, at most', text: rateText() }],
  examples: [
    {
      what: 'A stove of 5,700 Btu / h in a room of 900 cu ft',
      sees: 'parlor has 900 cu ft',
      rooms: stove(5700),
    },
    { what: 'A stove of 5,625 Btu / h there, at the limit', sees: null, rooms: stove(5625) },
    { what: 'A stove of 5,000 Btu / h there', sees: null, rooms: stove(5000) },
    {
      what: 'The stove of 5,700 Btu / h, the room open to another of its size',
      sees: null,
      rooms: { ...stove(5700, 'hall'), hall: {} },
    },
  ],
  find: (house) => house.rooms.flatMap((room) => heatIn(house, room)),
};

function heatIn(house: HouseView, room: RoomView): readonly Finding[] {
  const heaters = room.selections.filter(({ category }) => carries(category, 'fireplace', 'heat-output'));
  if (heaters.length === 0) return [];
  const beside = openTo(house, room);
  const volume = [room, ...beside].reduce((sum, { measure }) => sum + measure.volume, 0);
  return heaters.flatMap((selection) => {
    const over = selection.options.flatMap((option) => {
      const heat = factOf(option, 'fireplace', 'heat-output');
      return heat !== undefined && heat > volume * most ? [{ option, heat }] : [];
    });
    if (over.length === 0) return [];
    const units = over.map(
      ({ option, heat }) => `${optionWords(selection, option)}: ${printQuantity(heat, 'Btu / h', 0)}`,
    );
    const size = `has ${printQuantity(volume, 'cu ft', 0)}`;
    const space =
      beside.length === 0
        ? `${room.name} ${size}`
        : `${room.name} ${size} with ${joinWords(beside.map(({ name }) => name))}, which it is open to`;
    return [
      {
        room: room.slug,
        place: selection.places[0]?.id ?? 'floor',
        placeText: selection.placeText,
        selections: [selection.id],
        trades: [selection.category.trade],
        seen: `${units.join('. ')}. ${space}, for which the rule of thumb gives ${printQuantity(volume * most, 'Btu / h', 0)} at most.`,
        says: `More than about ${rateText()} makes a room too hot to sit in before the fire burns well. The insulation of the house moves the figure either way.`,
        ask: 'whoever figures the heating, and the hearth shop for a smaller unit',
      },
    ];
  });
}

/** Rooms that it has an open side or an opening without a leaf to, each once. */
function openTo(house: HouseView, { slug, measure }: RoomView): readonly RoomView[] {
  const others = new Set([
    ...measure.walls.flatMap(({ openTo: to }) => to ?? []),
    ...measure.openings.flatMap(({ kind, to }) => (kind === 'cased' || kind === 'open' ? [to] : [])),
  ]);
  others.delete(slug);
  return [...others].flatMap((to) => house.bySlug.get(to) ?? []);
}

/** `6.25 Btu / h for a cubic foot`. */
function rateText(): string {
  return isMetric() ? printQuantity(most, 'Btu / h cu ft', 0) : `${most} Btu / h for a cubic foot`;
}

function stove(heat: number, to?: string): ExampleRooms {
  const O1 = { kind: 'open', to: to ?? '' } as const;
  return {
    parlor: {
      selections: [{ of: 'fireplace', at: 'floor', facts: { 'heat-output': heat } }],
      ...(to !== undefined && { openings: { O1 } }),
    },
  };
}
