import { byText } from '../../base/units/index.js';
import type { LookUp } from '../../core/book/index.js';
import { choiceTitle } from '../../table/index.js';
import { openChoice, type OpenChoice } from './selection-row.js';

/** What is to be decided, for a pencil: a box before each option that is considered. */
export interface ToDecide {
  readonly choices: readonly (OpenChoice & { readonly room: string; readonly title: string })[];
}

/** Open places that have something to choose between, those that are due first before the others. */
export function makeToDecide(look: LookUp): ToDecide {
  const { rooms, selections } = look.book;
  const nameOf = new Map(rooms.map(({ slug, number, name }) => [slug, `${number} ${name}`]));
  const open = selections.filter(({ state, alternatives }) => state === 'open' && alternatives.length > 1);
  return {
    choices: open
      .toSorted((a, b) => byText(a.decision.by, b.decision.by))
      .map((selection) => ({
        ...openChoice(selection, look),
        room: nameOf.get(selection.room) ?? '',
        title: choiceTitle(selection, look),
      })),
  };
}
