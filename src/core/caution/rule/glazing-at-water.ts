import { fromInches, printLength } from '../../../base/units/index.js';
import { sillOverFloor, type OpeningMeasure } from '../../model/index.js';
import type { HouseView, RoomView } from '../view.js';
import type { ExampleRooms } from './example.js';
import { glassWords, lowGlass, openingLine, paneFinding, planDistance } from './glazing.js';
import type { Finding, Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R308.4.5 with its exception, from memory. */
const limit = { bottom: fromInches(60), beside: fromInches(60) };

export const glazingAtWater: Rule = {
  id: 'glazing-at-water',
  title: 'Glass beside a tub or shower',
  source: residentialCode('R308.4.5, from memory'),
  limits: () => [
    { what: 'Bottom of the glass above the floor, less than', text: printLength(limit.bottom) },
    { what: 'and from the water, level, at most', text: printLength(limit.beside) },
  ],
  examples: [
    { what: 'A window of a bath 48" from the tub', sees: '4\'-0" from Tub', rooms: bath('48"') },
    { what: 'A window 60" from it, at the limit', sees: '5\'-0" from Tub', rooms: bath('60"') },
    { what: 'A window 61" from it', sees: null, rooms: bath('61"') },
    { what: 'The window at 48" with its sill at 60"', sees: null, rooms: bath('48"', '60"') },
    { what: 'A low window of a bath without a recorded tub', sees: 'no tub or shower is recorded', rooms: bath() },
  ],
  find: (house) =>
    house.rooms.flatMap((room) => lowGlass(room, limit.bottom).flatMap((pane) => besideWater(house, room, pane))),
};

/** Where a bath records no wet place, its low windows are asked about. */
function besideWater(house: HouseView, room: RoomView, pane: OpeningMeasure): readonly Finding[] {
  const { measure, name, use } = room;
  const places = measure.features.flatMap(({ name: what, outline }) => (outline ? [{ what, outline }] : []));
  const line = openingLine(room, pane);
  const near = places
    .flatMap(({ what, outline }) => (line ? [{ what, away: planDistance(line, outline) }] : []))
    .filter(({ away }) => away <= limit.beside)
    .sort((a, b) => a.away - b.away)[0];
  const isAsked = places.length === 0 && use === 'bath';
  if (!near && !isAsked) return [];
  const where = near
    ? `is ${printLength(near.away)} from ${near.what}`
    : 'is in a bath where no tub or shower is recorded';
  const seen = `Window ${pane.mark} of ${name} ${where}, its bottom ${printLength(sillOverFloor(pane))} above the floor, and ${glassWords(pane)}.`;
  const says = `Glass within ${printLength(limit.beside)} of the water of a tub or shower, its bottom less than ${printLength(limit.bottom)} above where one stands, is safety glazing, tempered or laminated.`;
  return [paneFinding(house, room, pane, seen, says)];
}

/** A window in the right half of the north wall, and a tub so far before that wall. */
function bath(away?: string, sill = '36"'): ExampleRooms {
  const W1 = { kind: 'window', to: 'outside', at: '60"', width: '36"', height: '24"', sill } as const;
  const tub =
    away === undefined
      ? {}
      : {
          features: {
            Tub: { kind: 'wet-place', x: '60"', y: `${120 - 30 - Number.parseInt(away)}"`, width: '60"', depth: '30"' },
          },
        };
  return { bath: { use: 'bath', openings: { W1 }, ...tub } };
}
