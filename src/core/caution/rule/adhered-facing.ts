import { fromInches, printLength, printWeightPer } from '../../../base/units/index.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { code } from './source.js';
import { isOutdoors, overWords, stoneChoices, stoneFinding, weightWords } from './stone.js';

/** Inside a house. Source: IBC 2018, 1404.10.3 (1405.10.3 before), and for the thickness TMS 402-16, 12.3, both from memory. The
 *  residential code has no figure of its own for stone inside, as far as is known here. */
const most = { pounds: 20, bed: fromInches(2.625) };

export const adheredFacing: Rule = {
  id: 'adhered-facing',
  title: 'Weight and thickness of adhered stone inside',
  source: code(
    'International Building Code',
    '2018',
    '1404.10.3, interior adhered masonry veneer, and for thickness TMS 402-16, 12.3; from memory, a yardstick for houses',
  ),
  limits: () => [
    {
      what: 'Weight of stone, mortar and lath inside, at most',
      text: printWeightPer({ pounds: most.pounds, per: 'sq ft' }),
    },
    { what: 'Thickness, at most', text: printLength(most.bed) },
  ],
  examples: [
    {
      what: 'Thin stone that comes to 21 lb on a square foot with its mortar and lath',
      sees: '21 lb on a square foot (13 of stone, 6 of mortar and 2 of lath and scratch coat)',
      rooms: thinStone(13, 6),
    },
    {
      what: 'Thin stone that comes to 20 lb on a square foot with them, at the limit',
      sees: null,
      rooms: thinStone(12, 6),
    },
    {
      what: 'Thin stone of 12 lb on a square foot, its mortar not recorded',
      sees: '12 lb on a square foot, the stone alone',
      rooms: thinStone(12),
    },
  ],
  find: (house) =>
    stoneChoices(house, false)
      .filter(({ room }) => !isOutdoors(room))
      .flatMap((choice) => {
        const seen = overWords(choice.option, most);
        if (seen.length === 0) return [];
        const says = `Inside, stone that only mortar holds weighs at most ${weightWords(most.pounds)} with its mortar and lath, and is at most ${printLength(most.bed)} thick; wood framing that carries it bends at most a 600th of its span.`;
        return [stoneFinding(house, choice, { seen, says, ask: 'the structural engineer, with the mason' })];
      }),
};

function thinStone(pounds: number, mortar?: number): ExampleRooms {
  const option = { weight: { pounds, per: 'sq ft' } } as const;
  const setting = mortar === undefined ? {} : { 'mortar-weight': mortar, 'lath-weight': 2 };
  return {
    parlor: {
      selections: [{ of: 'stone', at: 'north', facts: { kind: 'thin natural', bed: '1"', ...setting }, option }],
    },
  };
}
