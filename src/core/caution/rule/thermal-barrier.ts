import { carries, factOf } from '../../fact/index.js';
import { fromInches, printLength, type Length } from '../../../base/units/index.js';
import { selectionsAt, tradesOf } from '../look-up.js';
import type { RoomView } from '../view.js';
import { joinWords, optionWords } from '../words.js';
import type { ExampleRooms, ExampleSelection } from './example.js';
import type { Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R316.4. */
const least = fromInches(0.5);

export const thermalBarrier: Rule = {
  id: 'thermal-barrier',
  title: 'Foam plastic without a thermal barrier',
  source: residentialCode('R316.4'),
  limits: () => [{ what: 'Gypsum board over foam, at least', text: printLength(least) }],
  examples: [
    { what: 'Spray foam in a wall, and no board over it', sees: 'no board of known thickness over it', rooms: foam() },
    {
      what: 'The same foam under 1/2" of gypsum board',
      sees: null,
      rooms: foam({ of: 'gypsum-board', at: 'north', facts: { 'board-thickness': '1/2"' } }),
    },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      room.selections
        .filter(({ category }) => carries(category, 'insulation', 'needs-cover'))
        .flatMap((selection) => {
          const unknown = selection.options
            .filter((option) => factOf(option, 'insulation', 'needs-cover') === undefined)
            .map((option) => `${optionWords(selection, option)}: whether it is foam that wants cover is not recorded.`);
          const foams = selection.options.filter((option) => factOf(option, 'insulation', 'needs-cover'));
          const bare =
            foams.length === 0
              ? []
              : selection.places.flatMap((place) => {
                  const board = boardOver(room, place.id);
                  return board !== undefined && board >= least ? [] : [{ place, board }];
                });
          const foam = joinWords(foams.map((option) => optionWords(selection, option)));
          const seen = [
            ...unknown,
            ...bare.map(({ place, board }) =>
              board === undefined
                ? `${place.name}: ${foam}, and no board of known thickness over it.`
                : `${place.name}: ${foam}, under ${printLength(board)} of board.`,
            ),
          ];
          const place = bare[0]?.place ?? selection.places[0];
          if (seen.length === 0 || !place) return [];
          return [
            {
              room: room.slug,
              place: place.id,
              placeText: selection.placeText,
              selections: [selection.id],
              trades: [selection.category.trade, ...tradesOf(house, isBoard)],
              seen: seen.join(' '),
              says: `Foam plastic is kept from the room by a thermal barrier: ${printLength(least)} of gypsum board, or what was tested to do the same.`,
              ask: 'the insulation contractor for the test report, and the building office',
            },
          ];
        }),
    ),
};

export const isBoard = (category: Parameters<typeof carries>[0]): boolean =>
  carries(category, 'gypsum-board', 'board-thickness');

/** Thickness of all the gypsum board selected at a place; undefined when there is none or one is unknown. */
export function boardOver(room: RoomView, place: string): Length | undefined {
  const boards = selectionsAt(room, place).filter(({ category, state }) => isBoard(category) && state !== 'none');
  const layers = boards.map(
    ({ counted }) => counted && (factOf(counted, 'gypsum-board', 'board-thickness') ?? counted.thickness),
  );
  if (layers.length === 0 || layers.includes(undefined)) return undefined;
  return layers.reduce<number>((sum, layer) => sum + (layer ?? 0), 0) as Length;
}

function foam(...over: readonly ExampleSelection[]): ExampleRooms {
  return { study: { selections: [{ of: 'insulation', at: 'north', facts: { 'needs-cover': true } }, ...over] } };
}
