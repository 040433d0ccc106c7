import { carries, factOf } from '../../fact/index.js';
import type { Option } from '../../model/index.js';
import { printDay, printWeight } from '../../../base/units/index.js';
import { tradesOf, isFraming } from '../look-up.js';
import type { HouseView, SelectionView } from '../view.js';
import { optionWords } from '../words.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { commonPractice } from './source.js';

export const hungTimber: Rule = {
  id: 'hung-timber',
  title: 'Hung timber without backing',
  source: commonPractice('backing is framed before the board goes up'),
  limits: () => [{ what: 'Chosen', text: 'by the day on which its backing must be in' }],
  examples: [
    { what: 'A beam that carries nothing and needs no backing', sees: 'no backing is recorded', rooms: beam([]) },
    {
      what: 'The same beam, which needs blocking before the board is hung',
      sees: null,
      rooms: beam([{ what: 'Blocking', by: 'framing', before: 'drywall' }]),
    },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      room.selections.flatMap((selection) => {
        if (!carries(selection.category, 'timber', 'structural')) return [];
        const seen = selection.options.flatMap((option) => backingWords(house, selection, option));
        const [first] = selection.places;
        if (seen.length === 0 || !first) return [];
        const { pounds } = selection;
        const weight =
          pounds === undefined
            ? ' What it weighs in place is not recorded.'
            : ` In place it weighs ${printWeight(pounds)}.`;
        return [
          {
            room: room.slug,
            place: first.id,
            placeText: selection.placeText,
            selections: [selection.id],
            trades: [...new Set([selection.category.trade, ...tradesOf(house, isFraming)])],
            seen: `${seen.join(' ')}${weight}`,
            says: 'What hangs from a ceiling is screwed or bolted to framing that was put there for it, not to the board.',
            ask: 'the framer for the backing, the structural engineer for hangers and weight',
          },
        ];
      }),
    ),
};

/** Timber that carries is framing itself; what hangs needs something recorded by somebody before some day. That a choice
 *  is still open too late is told by the calendar. */
function backingWords({ milestones }: HouseView, selection: SelectionView, option: Option): readonly string[] {
  const structural = factOf(option, 'timber', 'structural');
  const name = optionWords(selection, option);
  if (structural === undefined) return [`${name}: whether it carries load is not recorded.`];
  if (structural) return [];
  if (option.needs.length === 0) return [`${name} is hung, and no backing is recorded among its needs.`];
  const { chosenOn } = selection;
  return option.needs.flatMap(({ what, before }) => {
    const milestone = milestones.get(before);
    if (!milestone || chosenOn === undefined || chosenOn <= milestone.date) return [];
    const due = `${what.toLowerCase()} had to be in before ${milestone.name}, ${printDay(milestone.date)}`;
    return [`${name}: ${due}; it was chosen on ${printDay(chosenOn)}.`];
  });
}

function beam(needs: Option['needs']): ExampleRooms {
  return { parlor: { selections: [{ of: 'timber', at: 'ceiling', facts: { structural: false }, option: { needs } }] } };
}
