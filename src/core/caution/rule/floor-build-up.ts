import { factOf } from '../../fact/index.js';
import { isDownToFloor } from '../../model/index.js';
import { fromInches, printLength, type Length } from '../../../base/units/index.js';
import type { HouseView, RoomView, SelectionView } from '../view.js';
import { optionWords, sideWords } from '../words.js';
import type { ExampleRooms } from './example.js';
import { floorFinish } from './floor-finish.js';
import type { Finding, Rule } from './rule.js';
import { yardstick } from './source.js';

/** Source: ADA Standards 2010, 303.2: no treatment up to 1/4". No rule for a private house: a yardstick of what a foot and a
 *  wheel notice. */
const most = { plain: fromInches(0.25) };

export const floorBuildUp: Rule = {
  id: 'floor-build-up',
  title: 'Floors that meet at different heights',
  source: yardstick('ADA Standards for Accessible Design', '2010', '303.2 and 303.3, as a yardstick'),
  limits: () => [{ what: 'Difference at a door without a strip, at most', text: printLength(most.plain) }],
  examples: [
    {
      what: 'Boards 3/4" high that meet tile 1 1/2" high at a door',
      sees: 'They meet 3/4" apart',
      rooms: floorsOf('3/4"', '1 1/2"'),
    },
    { what: 'The same boards and tile 7/8" high', sees: null, rooms: floorsOf('3/4"', '7/8"') },
    { what: 'The same boards and tile 1" high, at the limit', sees: null, rooms: floorsOf('3/4"', '1"') },
    {
      what: 'The same boards and tile 1 1/8" high, over the limit',
      sees: 'They meet 3/8" apart',
      rooms: floorsOf('3/4"', '1 1/8"'),
    },
  ],
  find: (house) => house.rooms.flatMap((room) => meetings(house, room).flatMap((meeting) => stepAt(room, meeting))),
};

interface Meeting {
  readonly place: string;
  readonly placeText: string;
  readonly beside: RoomView;
}

/** Where floors of one level meet, each place once: openings in the room that records them, open sides in the first room. */
function meetings({ bySlug }: HouseView, { slug, level, measure }: RoomView): readonly Meeting[] {
  const kinds: Readonly<Record<string, string>> = { door: 'Door', cased: 'Cased opening', open: 'Opening' };
  const openings = measure.openings.flatMap((opening) => {
    const { own, kind, to, mark } = opening;
    const beside = bySlug.get(to);
    if (!own || kind === 'window' || !isDownToFloor(opening) || beside?.level !== level) return [];
    return [{ place: mark, placeText: `${kinds[kind] ?? 'Opening'} ${mark}`, beside }];
  });
  const sides = measure.walls.flatMap(({ id, name, openTo }) => {
    const beside = openTo === undefined ? undefined : bySlug.get(openTo);
    return beside?.level === level && slug < beside.slug
      ? [{ place: id, placeText: sideWords(name, beside.name), beside }]
      : [];
  });
  return [...openings, ...sides];
}

function stepAt(room: RoomView, { place, placeText, beside }: Meeting): readonly Finding[] {
  const [here, there] = [floorOf(room), floorOf(beside)];
  if (!here || !there) return [];
  const selections = [here.selection.id, there.selection.id];
  const trades = [...new Set([here.selection.category.trade, there.selection.category.trade])];
  const at = { room: room.slug, place, placeText, selections, trades };
  const says = `Up to ${printLength(most.plain)} floors meet without a strip. Beyond that a strip or a bevel is chosen, or one of them is built up or let in.`;
  const ask = 'the flooring and the tile foreman, before the deck is covered';
  // A floor of unknown height meets each neighbour: it is told once, at the floor.
  const unknown = [
    { floor: here, owner: room },
    { floor: there, owner: beside },
  ].filter(({ floor }) => floor.height === undefined);
  if (here.height === undefined || there.height === undefined)
    return unknown.map(({ floor, owner }) => ({
      room: owner.slug,
      place: 'floor',
      placeText: 'Floor',
      selections: [floor.selection.id],
      trades: [floor.selection.category.trade],
      seen: `${floor.name}: how high it builds is not recorded.`,
      says,
      ask,
    }));
  const step = Math.abs(here.height - there.height) as Length;
  if (step <= most.plain) return [];
  const seen = `${room.name}: ${here.name}, ${printLength(here.height)} in all. ${beside.name}: ${there.name}, ${printLength(there.height)}. They meet ${printLength(step)} apart.`;
  return [{ ...at, seen, says, ask }];
}

/** What lies on a room's floor today, and how high it builds. */
function floorOf(
  room: RoomView,
): { readonly selection: SelectionView; readonly name: string; readonly height: Length | undefined } | undefined {
  const floor = floorFinish(room);
  if (!floor) return undefined;
  const { selection, counted } = floor;
  return { selection, name: optionWords(selection, counted), height: factOf(counted, 'flooring', 'build-up') };
}

function floorsOf(boards: string, tile: string): ExampleRooms {
  const floor = (height: string) => [{ of: 'flooring', at: 'floor', facts: { 'build-up': height } }] as const;
  return { hall: { openings: { D1: { to: 'bath' } }, selections: floor(boards) }, bath: { selections: floor(tile) } };
}
