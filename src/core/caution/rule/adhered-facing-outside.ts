import { fromInches, printLength, printWeightPer } from '../../../base/units/index.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { code } from './source.js';
import { isOutdoors, overAlone, stoneChoices, stoneFinding, weightWords } from './stone.js';

/** Units on an outside wall, without what they are set in. Source: TMS 402-16, 12.3, from memory; that 15 psf was raised in
 *  TMS 402-22 is told in public trade texts. */
const most = { pounds: 15, bed: fromInches(2.625) };

export const adheredFacingOutside: Rule = {
  id: 'adhered-facing-outside',
  title: 'Weight and thickness of adhered stone outside',
  source: code('TMS 402', '2016', '12.3, adhered veneer, limits from memory'),
  limits: () => [
    { what: 'Weight of the stone alone, at most', text: printWeightPer({ pounds: most.pounds, per: 'sq ft' }) },
    { what: 'Thickness, at most', text: printLength(most.bed) },
  ],
  examples: [
    {
      what: 'Thin stone of 17 lb on a square foot at a porch',
      sees: '17 lb on a square foot',
      rooms: thinStone(17, 'porch'),
    },
    { what: 'Thin stone of 15 lb on a square foot there, at the limit', sees: null, rooms: thinStone(15, 'porch') },
    { what: 'The stone of 17 lb on a square foot in a living room', sees: null, rooms: thinStone(17, 'living') },
  ],
  find: (house) =>
    stoneChoices(house, false)
      .filter(({ room }) => isOutdoors(room))
      .flatMap((choice) => {
        const seen = overAlone(choice.option, most);
        if (seen.length === 0) return [];
        const says = `On an outside wall, stone that only mortar holds weighs at most ${weightWords(most.pounds)} by itself and is at most ${printLength(most.bed)} thick by the simple way; later editions allow more with more proof. Mortar and lath come on top.`;
        return [stoneFinding(house, choice, { seen, says, ask: 'the structural engineer, with the mason' })];
      }),
};

function thinStone(pounds: number, use: 'porch' | 'living'): ExampleRooms {
  const option = { weight: { pounds, per: 'sq ft' } } as const;
  return {
    parlor: { use, selections: [{ of: 'stone', at: 'north', facts: { kind: 'thin natural', bed: '1"' }, option }] },
  };
}
