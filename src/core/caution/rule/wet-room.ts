import { carries, factOf } from '../../fact/index.js';
import type { Option } from '../../model/index.js';
import { selectionsAt } from '../look-up.js';
import type { RoomView, SelectionView } from '../view.js';
import { joinWords } from '../words.js';
import { isBoard } from './thermal-barrier.js';
import type { ExampleRooms } from './example.js';
import type { Finding, Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Boards for a bath away from the water, and what tile is set on where water runs. Source: IRC 2018, R702.3.7 and
 *  R702.4.2 with its table. */
const moist = ['moisture', 'backer'];
const backers = ['cement backer', 'fiber-cement backer', 'glass-mat gypsum', 'mortar bed'];
const says = `Where water runs, wall tile is set on ${joinWords(backers)}, not on paper-faced board, moisture board among it. Elsewhere in a bath moisture board, washable paint and a floor rated for wet feet are common practice.`;

export const wetRoom: Rule = {
  id: 'wet-room',
  title: 'Board and finish in a wet room',
  source: residentialCode('R702.3.7 and R702.4.2; paint and floor are common practice'),
  limits: () => [
    { what: 'Board in a bath', text: moist.join(', ') },
    { what: 'Behind wall tile', text: backers.join(', ') },
  ],
  examples: [
    {
      what: 'Wall tile of a bath that is set on moisture board',
      sees: 'set on moisture board',
      rooms: tileOn('moisture board'),
    },
    { what: 'The same tile set on cement backer', sees: null, rooms: tileOn('cement backer') },
  ],
  find: (house) =>
    house.rooms
      .filter(({ use }) => use === 'bath')
      .flatMap((room) => room.selections.flatMap((selection) => look(room, selection))),
};

function look(room: RoomView, selection: SelectionView): readonly Finding[] {
  const { category, counted, places, placeText } = selection;
  if (!counted) return [];
  const seen = [
    ...(isBoard(category) ? boardWords(room, selection, counted) : []),
    ...(carries(category, 'tile', 'wet-floor') ? tileWords(selection, counted) : []),
    ...(carries(category, 'paint', 'sheen') ? paintWords(counted) : []),
    ...(category.schedule === 'floor' && factOf(counted, 'flooring', 'kind') === 'carpet'
      ? [`${counted.name} on the floor.`]
      : []),
  ];
  const [first] = places;
  if (seen.length === 0 || !first) return [];
  const ask = 'the tile setter and the drywall foreman, before board is ordered';
  return [
    {
      room: room.slug,
      place: first.id,
      placeText,
      selections: [selection.id],
      trades: [category.trade],
      seen: seen.join(' '),
      says,
      ask,
    },
  ];
}

function boardWords(room: RoomView, { places }: SelectionView, board: Option): readonly string[] {
  const type = factOf(board, 'gypsum-board', 'type');
  if (type === undefined) return [`${board.name}: what kind of board it is is not recorded.`];
  const tiled = places.filter(({ id }) =>
    selectionsAt(room, id).some(({ category, counted }) => counted && carries(category, 'tile', 'wet-floor')),
  );
  const onWalls = tiled.filter(({ id }) => id !== 'floor');
  return [
    ...(moist.includes(type) ? [] : [`${board.name}, a ${type} board.`]),
    ...(onWalls.length > 0 && type !== 'backer'
      ? [`Tile and ${board.name} are both selected at ${joinWords(onWalls.map(({ name }) => name))}.`]
      : []),
  ];
}

function tileWords({ places }: SelectionView, tile: Option): readonly string[] {
  const onFloor = places.some(({ id }) => id === 'floor');
  const onWalls = places.some(({ id }) => id !== 'floor');
  const [substrate, rated] = [factOf(tile, 'tile', 'substrate'), factOf(tile, 'tile', 'wet-floor')];
  const wall = substrate === undefined ? 'what it is set on is not recorded' : `set on ${substrate}`;
  const floor =
    rated === undefined
      ? 'whether its maker rates it for wet floors is not recorded'
      : 'not rated by its maker for wet floors';
  return [
    ...(onWalls && (substrate === undefined || !backers.includes(substrate)) ? [`${tile.name}: ${wall}.`] : []),
    ...(onFloor && rated !== true ? [`${tile.name}: ${floor}.`] : []),
  ];
}

function paintWords(paint: Option): readonly string[] {
  const sheen = factOf(paint, 'paint', 'sheen');
  if (sheen === undefined) return [`${paint.name}: the sheen is not recorded.`];
  return sheen === 'flat' || sheen === 'matte' ? [`${paint.name}, ${sheen}.`] : [];
}

function tileOn(substrate: string): ExampleRooms {
  return { bath: { use: 'bath', selections: [{ of: 'tile', at: 'north', facts: { substrate } }] } };
}
