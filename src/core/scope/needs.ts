import type { Need, Option } from '../model/index.js';
import type { Names } from './names.js';
import { selectionText } from '../takeoff/index.js';
import type { ScopeFinding } from './scope.js';
import { isThere, type Selected } from './spot.js';

interface Asked {
  readonly need: Need;
  readonly option: Option;
  /** Position in the option's record. */
  readonly index: number;
  readonly by: Set<Selected>;
}

/** What options need that no trade carries, once for each need. While a choice is open, everything that is considered
 *  counts: what it needs may have to be there before the choice. */
export function findUncarriedNeeds(selections: readonly Selected[], names: Names): readonly ScopeFinding[] {
  const asked = new Map<string, Asked>();
  for (const selected of selections) {
    for (const option of possible(selected)) {
      option.needs.forEach((need, index) => {
        if (need.id === undefined || names.carriers(need.id).length > 0) return;
        const found = asked.get(need.id) ?? { need, option, index, by: new Set() };
        found.by.add(selected);
        asked.set(need.id, found);
      });
    }
  }
  return [...asked.values()].flatMap((each) => findingOf(each, names) ?? []);
}

/** Options that may still be built here. */
export function possible({ selection, options }: Selected): readonly Option[] {
  const { chosen } = selection;
  if (chosen === undefined) return [...options.values()].map(({ option }) => option);
  const option = options.get(chosen)?.option;
  return option ? [option] : [];
}

function findingOf({ need, option, index, by }: Asked, names: Names): ScopeFinding | undefined {
  const users = [...by].filter(isThere);
  const [first] = users;
  const [place] = first?.places ?? [];
  if (!first || !place) return undefined;
  const more = users.length === 1 ? '' : `, and ${users.length - 1} more`;
  const sure = users.some(({ selection }) => selection.chosen === option.slug) ? '' : ' (not chosen yet)';
  return {
    id: `need-without-trade/${first.room.slug}/${place.id}/${need.id ?? ''}`,
    kind: 'need-without-trade',
    room: first.room.slug,
    place: place.id,
    placeText: `${selectionText(first.selection, first.places, first.measure)}${more}`,
    what: `${option.name}${sure} asks this of ${names.tradeName(need.by)}, whose scope does not carry it: ${need.what}.`,
    fix: `Write ${need.id ?? ''} under what ${names.tradeName(need.by)} carries, or change the need here.`,
    trades: [...new Set([need.by, first.category.trade])],
    source: option.origin.file,
    line: option.origin.at(['needs', index]).line,
  };
}
