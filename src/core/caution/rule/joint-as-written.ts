import { timberOf, type Timber } from '../../feature/index.js';
import { fromFeet, printLength, type Length } from '../../../base/units/index.js';
import { ofTimber } from '../look-up.js';
import type { ExampleRooms } from './example.js';
import type { Rule } from './rule.js';
import { commonPractice } from './source.js';

/** Drawings and the cut list go by what is added at the ends; who cuts the joint goes by what is written beside it. */
export const jointAsWritten: Rule = {
  id: 'joint-as-written',
  title: 'Joint written otherwise than it is drawn',
  source: commonPractice('what is added at an end of a timber is its tenon or its bearing'),
  limits: () => [{ what: 'Tenon or bearing in the joinery', text: 'as long as what is added at one of the ends' }],
  examples: [
    {
      what: 'A post whose joinery says a tenon of 2", with 1 1/2" added at one end',
      sees: 'a tenon of 2"',
      rooms: post('Stub tenon of 2 inches in the sill', ['1 1/2"', '0"']),
    },
    {
      what: 'A beam whose joinery says a bearing of 5 1/2", with 5 1/2" added at both ends',
      sees: null,
      rooms: post('Bears 5 1/2 inches on the posts; seats let in 1 1/2 inches', ['5 1/2"', '5 1/2"']),
    },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      room.measure.features.flatMap((feature) => {
        const timber = timberOf(feature);
        const odd = timber ? jointsIn(timber.joinery ?? '').filter(({ by }) => !isAdded(by, timber)) : [];
        if (!timber || odd.length === 0) return [];
        const said = odd.map(({ what, by }) => `${what} of ${printLength(by)}`).join(' and ');
        const [first, second] = timber.ends;
        return [
          {
            ...ofTimber(house, room, feature),
            seen: `The joinery of ${feature.name} says ${said}; ${printLength(first)} and ${printLength(second)} are added at its ends.`,
            says: 'Pieces are drawn, cut and ordered by what is added at their ends. One of the two is not what was meant.',
            ask: 'the framer, and the structural engineer where it carries',
          },
        ];
      }),
    ),
};

interface Joint {
  readonly what: 'a tenon' | 'a bearing';
  readonly by: Length;
}

const nanometresPerMillimetre = 1_000_000;
const amount = String.raw`(?<whole>\d+)?(?:[ -]?(?<over>\d+)\/(?<under>\d+))?\s*(?<unit>inch(?:es)?|["″”]|mm)`;
const forms = [
  { what: 'a tenon', pattern: new RegExp(String.raw`\btenons?(?: of)? ${amount}`, 'giu') },
  { what: 'a bearing', pattern: new RegExp(String.raw`\bbear(?:s|ing)?(?: of| by)? ${amount}`, 'giu') },
] as const;

/** Tenons and bearings whose length the words tell. */
function jointsIn(joinery: string): readonly Joint[] {
  return forms.flatMap(({ what, pattern }) =>
    [...joinery.matchAll(pattern)].flatMap(({ groups = {} }) => {
      const { whole, over, under, unit } = groups;
      if (whole === undefined && over === undefined) return [];
      const count = Number(whole ?? 0) + Number(over ?? 0) / Number(under ?? 1);
      return [{ what, by: unit === 'mm' ? ((count * nanometresPerMillimetre) as Length) : fromFeet(count / 12) }];
    }),
  );
}

/** Within what a saw leaves. */
const isAdded = (by: Length, { ends }: Timber): boolean =>
  ends.some((end) => Math.abs(end - by) <= fromFeet(1 / 12 / 32));

function post(joinery: string, ends: readonly [string, string]): ExampleRooms {
  const section = { count: 1, length: `8'`, width: '6"', depth: '6"', ends: [...ends] };
  return { parlor: { features: { post: { kind: 'timber', ...section, joinery } } } };
}
