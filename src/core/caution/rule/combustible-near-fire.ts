import { factOf } from '../../fact/index.js';
import { fromInches, printLength, type Length } from '../../../base/units/index.js';
import { selectionsAt } from '../look-up.js';
import { joinWords, optionWords } from '../words.js';
import { fireplacesOf, type Fireplace } from './fireplace.js';
import type { ExampleRooms } from './example.js';
import type { Finding, Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC R1001.11, exception 4 (2006: R1003.12), as quoted in a trade forum; figures also from memory. */
const clear = { all: fromInches(6), projecting: fromInches(12), projectionPerInch: 1 / 8 };

export const combustibleNearFire: Rule = {
  id: 'combustible-near-fire',
  title: 'What can burn near a firebox',
  source: residentialCode("R1001.11, exception 4, figures from memory; a listed unit's own clearances"),
  limits: () => [
    { what: 'Nothing that burns nearer than', text: printLength(clear.all) },
    {
      what: `From there to ${printLength(clear.projecting)}, it stands out at most`,
      text: 'an eighth of its distance',
    },
  ],
  examples: [
    {
      what: 'A wooden mantel 5" above the opening of a fireplace',
      sees: 'is 5" above the opening',
      rooms: mantelAt('41"'),
    },
    { what: 'The same mantel 14" above it', sees: null, rooms: mantelAt('50"') },
  ],
  find: (house) => fireplacesOf(house).flatMap((fireplace) => [...facings(fireplace), ...mantel(fireplace)]),
};

/** What is selected on the face around the opening and on the hearth touches the opening. */
function facings(fireplace: Fireplace): readonly Finding[] {
  const { room, feature } = fireplace;
  return ['', '/front', '/hearth'].flatMap((face) =>
    selectionsAt(room, `${feature.id}${face}`)
      .filter(({ category }) => category.layer === 'finish' || category.layer === 'edge')
      .flatMap((selection) => {
        const seen = selection.options.flatMap((option) => {
          const burns = factOf(option, 'hearth-facing', 'is-combustible');
          if (burns === undefined) return [`${optionWords(selection, option)}: whether it can burn is not recorded.`];
          return burns ? [`${optionWords(selection, option)} can burn, and goes up to the opening.`] : [];
        });
        if (seen.length === 0) return [];
        return [
          finding(fireplace, { place: `${feature.id}${face}`, placeText: selection.placeText, seen: seen.join(' ') }, [
            selection.id,
            selection.category.trade,
          ]),
        ];
      }),
  );
}

function mantel(fireplace: Fireplace): readonly Finding[] {
  const { breast, feature, unit, options } = fireplace;
  const { mantel: shelf, firebox } = breast;
  if (!shelf || shelf.isCombustible === false) return [];
  const gap = (shelf.height - firebox.sill - firebox.height) as Length;
  const size = `The mantel of ${feature.name} is ${printLength(gap)} above the opening and stands out ${printLength(shelf.projection)}`;
  const unknown = shelf.isCombustible === undefined ? ['Whether the mantel can burn is not recorded.'] : [];
  const listed = options.flatMap((option) => {
    const listing = factOf(option, 'fireplace', 'mantel-clearance');
    if (listing === undefined || !unit || !option) return [];
    return gap < listing ? [`${optionWords(unit, option)} is listed for ${printLength(listing)}.`] : [];
  });
  const near = gap < clear.all || (gap < clear.projecting && shelf.projection > gap * clear.projectionPerInch);
  if (!near && listed.length === 0) return unknown.length === 0 ? [] : [atMantel(`${size}. ${unknown.join(' ')}`)];
  return [atMantel([`${size}.`, ...listed, ...unknown].join(' '))];

  function atMantel(seen: string): Finding {
    return finding(fireplace, { place: `${feature.id}/mantel`, placeText: `${feature.name}, mantel`, seen }, []);
  }
}

function finding(
  { room, unit }: Fireplace,
  at: Pick<Finding, 'place' | 'placeText' | 'seen'>,
  [selection, trade]: readonly string[],
): Finding {
  return {
    room: room.slug,
    ...at,
    selections: [selection, unit?.id].filter((id) => id !== undefined),
    trades: [...new Set([trade, unit?.category.trade].filter((slug) => slug !== undefined))],
    says: `Nothing that burns within ${printLength(clear.all)} of the opening; within ${printLength(clear.projecting)} of it, it stands out no more than an eighth of its distance. A listed unit's own figure comes first.`,
    ask: joinWords(["the mason, with the unit's listing", 'the building office']),
  };
}

/** The opening ends 36" above the floor. */
function mantelAt(height: string): ExampleRooms {
  const firebox = { width: '36"', height: '24"', sill: '12"' };
  const shelf = { height, projection: '8"', isCombustible: true };
  return { parlor: { features: { breast: { kind: 'chimney-breast', firebox, mantel: shelf } } } };
}
