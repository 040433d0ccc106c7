import { carries, factOf } from '../../fact/index.js';
import { fromInches, printLength, type Length } from '../../../base/units/index.js';
import { knownAround, type OpeningMeasure } from '../../model/index.js';
import { selectionsAt } from '../look-up.js';
import type { HouseView, RoomView, SelectionView } from '../view.js';
import { joinWords } from '../words.js';
import { acrossFrom } from './doors.js';
import type { ExampleRooms } from './example.js';
import type { Finding, Rule } from './rule.js';
import { boardOver } from './thermal-barrier.js';
import { commonPractice } from './source.js';

/** Source: door shops' sheets (4 9/16" for a 3 1/2" stud and half-inch board on both sides); the tolerance is common practice. */
const wall = { stud: fromInches(3.5), play: fromInches(0.125) };

export const jambDepth: Rule = {
  id: 'jamb-depth',
  title: 'Jamb against the thickness of the wall',
  source: commonPractice('a jamb is as deep as the finished wall'),
  limits: () => [
    { what: 'Stud of an inside wall', text: printLength(wall.stud) },
    { what: 'Jamb deeper or shallower than the wall by at most', text: printLength(wall.play) },
    { what: "or than what the two rooms' tapes leave for it", text: printLength(wall.play) },
  ],
  examples: [
    {
      what: 'A jamb of 4 9/16" in a wall with 5/8" of board on both sides',
      sees: 'Finished wall at D1 4 3/4"',
      rooms: boardsOf('5/8"'),
    },
    { what: 'The same jamb with 1/2" of board on both sides', sees: null, rooms: boardsOf('1/2"') },
    {
      what: 'The same jamb and board, and rooms whose tapes leave 4 1/4" for the wall',
      sees: 'the rooms\' tapes leave 4 1/4"',
      rooms: boardsOf('1/2"', '4 1/4"'),
    },
    { what: 'The same where they leave 4 7/16", at the limit', sees: null, rooms: boardsOf('1/2"', '4 7/16"') },
    { what: 'The same where they leave 4 1/2"', sees: null, rooms: boardsOf('1/2"', '4 1/2"') },
  ],
  find: (house) =>
    house.rooms.flatMap((room) => room.selections.flatMap((selection) => compare(house, room, selection))),
};

function compare(house: HouseView, room: RoomView, selection: SelectionView): readonly Finding[] {
  const { category, counted, places } = selection;
  if (!counted || !carries(category, 'door', 'jamb')) return [];
  const jamb = factOf(counted, 'door', 'jamb');
  const at = { room: room.slug, placeText: selection.placeText, selections: [selection.id], trades: [category.trade] };
  const says =
    'Casing lies flat only when the jamb is as deep as the finished wall: stud, board on both sides, and what sound insulation adds.';
  const ask = 'the door shop, before jambs are made; the framer for studs other than 2x4';
  const [first] = places;
  if (jamb === undefined)
    return first
      ? [{ ...at, place: first.id, seen: `${counted.name}: depth of the jamb not recorded.`, says, ask }]
      : [];
  const marks = new Set(places.map(({ id }) => id));
  const wrong = room.measure.openings.flatMap((opening) => {
    if (!marks.has(opening.mark)) return [];
    const [thick, laid] = [thickness(house, room, opening), thicknessAsLaid(room, opening)];
    const isOff = (depth: Length | undefined): boolean => depth !== undefined && Math.abs(depth - jamb) > wall.play;
    return isOff(thick) || isOff(laid) ? [{ mark: opening.mark, words: wallWords(thick, laid) }] : [];
  });
  const [place] = wrong;
  if (!place) return [];
  const walls = joinWords(wrong.map(({ mark, words }) => `${mark} ${words}`));
  return [
    {
      ...at,
      place: place.mark,
      seen: `Finished wall at ${walls}; the jamb of ${counted.name} is ${printLength(jamb)}.`,
      says,
      ask,
    },
  ];
}

/** `4 3/4"`, with what is laid out where that is another. */
function wallWords(thick: Length | undefined, laid: Length | undefined): string {
  const tapes = laid === undefined ? '' : `the rooms' tapes leave ${printLength(laid)}`;
  if (thick === undefined) return `(${tapes})`;
  return laid === undefined || Math.abs(laid - thick) <= wall.play
    ? printLength(thick)
    : `${printLength(thick)} (${tapes})`;
}

/** From face to face where an opening is, by both rooms' tapes. */
function thicknessAsLaid({ measure }: RoomView, { wall: id, at, width, to }: OpeningMeasure): Length | undefined {
  const stretches = knownAround(measure)?.walls.find((one) => one.wall === id)?.stretches ?? [];
  const middle = at + width / 2;
  const found = stretches.find(({ from, to: end, behind }) => behind?.room === to && from <= middle && middle <= end);
  return found?.behind?.thickness;
}

/** Undefined where the board of a side is not known: that is for the scope to find. */
function thickness(house: HouseView, room: RoomView, opening: OpeningMeasure): Length | undefined {
  const across = acrossFrom(house, opening);
  const near = boardOver(room, opening.wall);
  const far = across && boardOver(across.room, across.wall);
  if (!across || near === undefined || far === undefined) return undefined;
  const added = [...selectionsAt(room, opening.wall), ...selectionsAt(across.room, across.wall)].reduce(
    (sum, { counted }) => sum + (factOf(counted, 'sound-insulation', 'wall-adds') ?? 0),
    0,
  );
  return (wall.stud + near + far + added) as Length;
}

function boardsOf(thickness: string, laidThick?: string): ExampleRooms {
  const board = { of: 'gypsum-board', at: 'north', facts: { 'board-thickness': thickness } } as const;
  const door = { of: 'door', at: 'D1', facts: { jamb: '4 9/16"' } } as const;
  return {
    hall: {
      openings: { D1: { to: 'study' } },
      selections: [door, board],
      ...(laidThick !== undefined && { laidThick }),
    },
    study: { selections: [board] },
  };
}
