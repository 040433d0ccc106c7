import { fromInches, printLength, printWeightPer } from '../../../base/units/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import { optionWords } from '../words.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { overWords, stoneChoices, weightWords } from './stone.js';
import { code } from './source.js';

/** Source: TMS 402-16, 12.3, from memory; that 15 psf was raised in TMS 402-22 is told in public trade texts. */
const most = { pounds: 15, bed: fromInches(2.625) };

export const adheredFacing: Rule = {
  id: 'adhered-facing',
  title: 'Weight and thickness of adhered stone',
  source: code('TMS 402', '2016', '12.3, adhered veneer, limits from memory'),
  limits: () => [
    { what: 'Weight, at most', text: printWeightPer({ pounds: most.pounds, per: 'sq ft' }) },
    { what: 'Thickness, at most', text: printLength(most.bed) },
  ],
  examples: [
    { what: 'Thin stone of 17 lb on a square foot', sees: '17 lb on a square foot', rooms: thinStone(17) },
    { what: 'Thin stone of 13 lb on a square foot', sees: null, rooms: thinStone(13) },
  ],
  find: (house) =>
    stoneChoices(house, false).flatMap(({ room, selection, option }) => {
      const seen = [...overWords(option, most)].filter((part) => part !== '');
      if (seen.length === 0) return [];
      const [place] = selection.places;
      return [
        {
          room: room.slug,
          place: place?.id ?? 'walls',
          placeText: selection.placeText,
          selections: [selection.id],
          trades: [selection.category.trade, ...tradesOf(house, isFraming)],
          seen: `${optionWords(selection, option)}: ${seen.join(', ')}.`,
          says: `Stone that only mortar holds weighs at most ${weightWords(most.pounds)} and is at most ${printLength(most.bed)} thick by the simple way; later editions allow more with more proof. Mortar and lath come on top.`,
          ask: 'the structural engineer, with the mason',
        },
      ];
    }),
};

function thinStone(pounds: number): ExampleRooms {
  const option = { weight: { pounds, per: 'sq ft' } } as const;
  return {
    parlor: { selections: [{ of: 'stone', at: 'north', facts: { kind: 'thin natural', bed: '1"' }, option }] },
  };
}
