import { jointsIn, trimJoints, type TrimJoint } from '../../fact/index.js';
import { specificationParts, type Option } from '../../model/index.js';
import { joinWords } from '../../../base/units/index.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { commonPractice } from './source.js';

/** Joints of trim are drawn by what its option records of them; whoever cuts them reads the specification. */
export const trimAsWritten: Rule = {
  id: 'trim-as-written',
  title: 'Joint of trim specified otherwise than it is drawn',
  source: commonPractice('a joint that the specification names is one of those that are recorded'),
  limits: () => [{ what: 'Joints that the specification names', text: 'among those that are recorded' }],
  examples: [
    {
      what: 'Casing recorded with a butt joint, its head over the legs, whose specification says glued miters',
      sees: 'mitered',
      rooms: casing('butt, head over legs', 'Nails in line, glued miters.'),
    },
    {
      what: 'The same specification, and a joint recorded as mitered',
      sees: null,
      rooms: casing('mitered', 'Nails in line, glued miters.'),
    },
  ],
  find: (house) => {
    const told = new Set<Option>();
    return house.rooms.flatMap((room) =>
      room.selections.flatMap(({ id, category, counted, places, placeText }) => {
        const place = places[0];
        if (!counted || !place || told.has(counted)) return [];
        told.add(counted);
        const recorded = recordedJoints(counted);
        const others = jointsIn(wordsOf(counted)).filter((joint) => !recorded.includes(joint));
        if (recorded.length === 0 || others.length === 0) return [];
        return [
          {
            room: room.slug,
            place: place.id,
            placeText,
            selections: [id],
            trades: [category.trade],
            seen: `The specification of ${counted.name} speaks of ${joinWords(others)}; its joints are recorded as ${joinWords(recorded)}.`,
            says: 'Joints are drawn as they are recorded. One of the two is not what was meant.',
            ask: 'the builder, before the trim is cut',
          },
        ];
      }),
    );
  },
};

/** What is butted with its head over the legs is both. */
function recordedJoints(option: Option): readonly TrimJoint[] {
  const { head, inside, outside } = trimJoints(option);
  const joints = [head, inside, outside].flatMap((joint) => joint ?? []);
  return [...new Set(joints.flatMap((joint) => (joint === 'head over legs' ? [joint, 'butt' as const] : [joint])))];
}

function wordsOf({ summary = '', specification }: Option): string {
  return [summary, ...specificationParts.map((part) => specification[part] ?? '')].join('\n');
}

function casing(joint: string, execution: string): ExampleRooms {
  const option = { specification: { execution } };
  return { parlor: { selections: [{ of: 'coated', at: 'north', facts: { joint }, option }] } };
}
