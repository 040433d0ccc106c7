import { sourceOf } from '../../base/problem/index.js';
import type { Contract } from '../model/index.js';
import { selectionText } from '../takeoff/index.js';
import { inSentence } from './place-words.js';
import type { ScopeFinding } from './scope.js';
import { isThere, type Selected } from './spot.js';

/** Who installs a selection: its category's trade, or for what the owner furnishes whoever is named, else the category's
 *  trade where the contract includes it. Undefined when nobody does. */
export function installerOf({ selection, category }: Selected, contract: Contract): string | undefined {
  if (selection.supply === 'contractor') return category.trade;
  if (selection.install !== undefined) return selection.install;
  return contract.ownerFurnishedInstall === 'contract' ? category.trade : undefined;
}

/** What the owner furnishes and nobody installs. */
export function findIdleInstallers(selections: readonly Selected[], contract: Contract): readonly ScopeFinding[] {
  return selections.flatMap((selected) => {
    const [place] = selected.places;
    if (!place || !isThere(selected) || installerOf(selected, contract) !== undefined) return [];
    const { room, selection, category, places, measure } = selected;
    const where = selectionText(selection, places, measure);
    return [
      {
        id: `no-installer/${room.slug}/${place.id}/${category.slug}`,
        kind: 'no-installer',
        room: room.slug,
        place: place.id,
        placeText: where,
        what: `The owner furnishes the ${category.name.toLowerCase()} and the contract does not install it: ${inSentence(where)}.`,
        fix: `Write install: with a trade, or install: owner.`,
        trades: [category.trade],
        ...sourceOf(room.origin, selection.path),
      },
    ];
  });
}
