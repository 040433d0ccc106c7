import type { VNode } from 'preact';
import type { BookSelection } from '../core/book/index.js';
import { counted } from '../base/units/index.js';
import { choiceTitle } from '../table/index.js';
import type { View } from '../site/index.js';
import { askConsider } from './ask-consider.js';
import { askRemark } from './ask-note.js';
import { askChoice } from './ask-place.js';
import type { Ask } from './ask.js';
import { AskForm } from './form.js';
import type { Standing } from './standing.js';

/** Open choices of a room that have no page of their own, as there is nothing to compare yet. */
export function loneChoices(view: View, room: string): readonly BookSelection[] {
  return view.book.selections.filter(
    (one) => one.room === room && one.state === 'open' && view.choicePath(one) === undefined,
  );
}

/** What could stand in a place, where that is one thing or nothing. */
export function loneWords(selection: BookSelection, view: View): string {
  const [only] = selection.alternatives;
  const name = only && view.option(selection.category, only.option)?.name;
  return name === undefined ? 'nothing to choose from yet' : `${name} alone to choose from`;
}

/** The forms that these have on the page of their room. */
export function LoneChoices({
  selections,
  standing,
  view,
  page,
}: {
  selections: readonly BookSelection[];
  standing: Standing;
  view: View;
  page: { readonly secret: string; readonly link: (to: string) => string; readonly back: string };
}): VNode | null {
  if (selections.length === 0) return null;
  return (
    <details>
      <summary>{counted(selections.length, 'choice')} with nothing to compare yet</summary>
      {selections.map((selection) => (
        <section>
          <h3>
            {choiceTitle(selection, view)} <span class="desk-hint">{loneWords(selection, view)}</span>
          </h3>
          {asksOf(selection, standing).map((ask) => (
            <details>
              <summary>{ask.title}</summary>
              <AskForm ask={ask} {...page} />
            </details>
          ))}
        </section>
      ))}
    </details>
  );
}

function asksOf(selection: BookSelection, standing: Standing): readonly Ask[] {
  const consider = askConsider(selection, standing);
  return [inNoPicture(askChoice(selection, standing)), ...(consider ? [consider] : []), askRemark(selection)];
}

function inNoPicture({ chooses: _, ...ask }: Ask): Ask {
  return ask;
}
