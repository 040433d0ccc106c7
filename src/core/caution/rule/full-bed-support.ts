import { fromInches, printLength, printWeight, printWeightPer } from '../../../base/units/index.js';
import { breastOf } from '../look-up.js';
import type { RoomView, SelectionView } from '../view.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { overWords, stoneChoices, stoneFinding, weightWords } from './stone.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R703.8 and Table R703.8(1), as a state publishes it. */
const most = { pounds: 50, bed: fromInches(5) };

export const fullBedSupport: Rule = {
  id: 'full-bed-support',
  title: 'What full-bed stone stands on',
  source: residentialCode('R703.8, R703.8.2 and Table R703.8(1)'),
  limits: () => [
    { what: 'Weight with its mortar, at most', text: printWeightPer({ pounds: most.pounds, per: 'sq ft' }) },
    { what: 'Thickness, at most', text: printLength(most.bed) },
  ],
  examples: [
    {
      what: 'Stone 4" thick on its own bed, on a breast that bears on the framing of the floor',
      sees: 'it would stand on the framing of the floor',
      rooms: breastOn('framing'),
    },
    { what: 'The same stone on a breast that bears on concrete', sees: null, rooms: breastOn('concrete') },
  ],
  find: (house) =>
    stoneChoices(house, true).flatMap((choice) => {
      const { room, selection, option } = choice;
      const seen = [supportWords(room, selection), ...overWords(option, most)].filter((part) => part !== '');
      if (seen.length === 0) return [];
      const more =
        selection.counted === option && selection.pounds !== undefined
          ? ` In place it weighs ${printWeight(selection.pounds)}.`
          : '';
      const says = `The section speaks of outside walls and is a yardstick inside: stone on its own bed stands on concrete, or on framing that was designed for it; at most ${printLength(most.bed)} thick and ${weightWords(most.pounds)} with its mortar against wood framing.`;
      return [stoneFinding(house, choice, { seen, more, says, ask: 'the structural engineer, before the foundation' })];
    }),
};

/** Empty when it stands on concrete everywhere. */
function supportWords({ measure }: RoomView, { places }: SelectionView): string {
  const features = new Map(measure.features.map((feature) => [feature.id, feature]));
  const bears = places.map(({ id }) => {
    const feature = features.get(id.split('/')[0] ?? '');
    return feature && breastOf(feature)?.bearsOn;
  });
  if (bears.includes('framing')) return 'it would stand on the framing of the floor';
  return bears.includes(undefined) ? 'what it stands on is not recorded' : '';
}

function breastOn(bearsOn: string): ExampleRooms {
  const option = { weight: { pounds: 42, per: 'sq ft' } } as const;
  return {
    parlor: {
      features: { breast: { kind: 'chimney-breast', bearsOn } },
      selections: [{ of: 'stone', at: 'breast', facts: { kind: 'full bed', bed: '4"', 'mortar-weight': 6 }, option }],
    },
  };
}
