import type { ComponentChildren, VNode } from 'preact';
import type { BookSelection } from '../../core/book/index.js';
import { changeWords } from '../../sheet/index.js';
import { printMoney } from '../../base/units/index.js';
import { lockOf, storeKey, triedOptions, tryFields, type TriedOption } from '../../try/index.js';
import { choiceTitle } from '../../table/index.js';
import { pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';
import { Swatch } from './drawing.js';
import { PageLink } from './link.js';

/** What could stand in a place, to be picked: with a script the whole house follows at once; without one each option's total is there to be read. */
export function TryPlace({
  selection,
  legend,
  children,
}: {
  selection: BookSelection;
  legend: string;
  /** What its figures stand on, where the page does not say it already. */
  children?: ComponentChildren;
}): VNode | null {
  const { beside } = useView();
  const options = triedOptions(selection);
  if (!beside.trying || options.length < 2) return null;
  const lock = lockOf(selection);
  return (
    <fieldset class="try" {...{ [tryFields.place]: selection.id }}>
      <legend>{legend}</legend>
      {lock === undefined ? children : <p class="why">Locked. {lock}</p>}
      <div class="try-options">
        {options.map((one) => (
          <TryOption selection={selection} one={one} isLocked={lock !== undefined} />
        ))}
      </div>
    </fieldset>
  );
}

/** The same on the page of a choice, with its room drawn as it would be. */
export function TryHere({ selection }: { selection: BookSelection }): VNode | null {
  const { beside } = useView();
  if (!beside.trying || triedOptions(selection).length < 2) return null;
  return (
    <section aria-labelledby="try-title">
      <h2 id="try-title">Try it</h2>
      <p class="why">
        Pick one, here and elsewhere: the whole house follows at the foot of the page. Nothing is chosen by it. All
        places on one page: <PageLink to={pagePaths.try}>Try choices</PageLink>.
      </p>
      <TryPlace selection={selection} legend={choiceTitle(selection, useView())} />
      <div class="look" hidden {...{ [tryFields.picture]: selection.room }} />
    </section>
  );
}

function TryOption({
  selection,
  one: { option: slug, alternative, stands },
  isLocked,
}: {
  selection: BookSelection;
  one: TriedOption;
  isLocked: boolean;
}): VNode {
  const view = useView();
  const option = alternative && view.option(selection.category, alternative.option);
  return (
    <label class="try-option">
      <input type="radio" name={`try ${selection.id}`} value={slug ?? ''} checked={stands} disabled={isLocked} />
      {option && <Swatch option={option} size="small" />}
      <span class="try-words">
        <span class="try-name">{option?.name ?? (slug === 'none' ? 'Not wanted' : 'Leave it open')}</span>
        <span class="why">{standing(selection, stands, alternative?.isStandard ?? false)}</span>
        {alternative && (
          <span class="try-total">
            <span class="for-the-ear">, house total </span>
            <span class="figure">{printMoney(alternative.houseTotal)}</span>{' '}
            <span class="why">{changeWords(alternative.againstToday)}</span>
          </span>
        )}
      </span>
    </label>
  );
}

function standing({ state }: BookSelection, stands: boolean, isStandard: boolean): string {
  if (stands) return state === 'open' ? 'As it stands' : isStandard ? 'Chosen, the standard' : 'Chosen';
  return isStandard ? 'Standard' : '';
}

/** Where the bar stands, at the end of a page on which choices can be tried. */
export function TryRoot(): VNode | null {
  const { beside, book } = useView();
  if (!beside.trying) return null;
  return (
    <>
      <div id={tryFields.root} {...{ [tryFields.store]: storeKey(book.house) }} />
      <p id={tryFields.said} class="for-the-ear" role="status" aria-live="polite" />
    </>
  );
}
