import type { ComponentChildren, VNode } from 'preact';
import { goneWords } from '../../core/fact/index.js';
import type { BookSelection } from '../../core/book/index.js';
import { printMoney } from '../../base/units/index.js';
import { lockOf, storeKey, triedOptions, tryFields, type TriedOption } from '../../try/index.js';
import { choiceTitle, movesWords } from '../../table/index.js';
import { pagePaths } from '../paths.js';
import { useSheet, useView } from '../sheet-context.js';
import type { View } from '../view.js';
import { Swatch } from './drawing.js';
import { PageLink } from './link.js';

/** What could stand in a place, to be picked: with a script the whole house follows at once; without one each option's total is there to be read. */
export function TryPlace({
  selection,
  legend,
  isBrief = false,
  children,
}: {
  selection: BookSelection;
  legend: string;
  /** One line an option. */
  isBrief?: boolean;
  /** What its figures stand on, where the page does not say it already. */
  children?: ComponentChildren;
}): VNode | null {
  const options = triedOptions(selection);
  if (!isTried(selection, useView())) return null;
  const lock = lockOf(selection);
  return (
    <fieldset class={isBrief ? 'try try-brief' : 'try'} {...{ [tryFields.place]: selection.id }}>
      <legend>{legend}</legend>
      {lock === undefined ? children : <p class="why">Locked. {lock}</p>}
      <div class="try-options">
        {options.map((one) => (
          <TryOption selection={selection} one={one} isLocked={lock !== undefined} isBrief={isBrief} />
        ))}
      </div>
    </fieldset>
  );
}

/** A table of options that are picked in its heads, and below it the room drawn as it would be. */
export function TryTable({ selection, children }: { selection: BookSelection; children: ComponentChildren }): VNode {
  const view = useView();
  if (!isTried(selection, view)) return <>{children}</>;
  const lock = lockOf(selection);
  const others = triedOptions(selection).filter(({ alternative }) => !alternative);
  return (
    <>
      <fieldset class="try try-table" {...{ [tryFields.place]: selection.id }}>
        <legend class="for-the-ear">{choiceTitle(selection, view)}</legend>
        {children}
        {others.length > 0 && (
          <div class="try-others">
            {others.map((one) => (
              <TryOption selection={selection} one={one} isLocked={lock !== undefined} isBrief />
            ))}
          </div>
        )}
        <p class="why">
          {lock === undefined ? (
            <>
              Pick one, here and elsewhere: the whole house follows at the foot of the page, and nothing is chosen by
              it. All places on one page: <PageLink to={pagePaths.try}>Try choices</PageLink>.
            </>
          ) : (
            `Locked. ${lock}`
          )}
        </p>
      </fieldset>
      <div class="look" hidden {...{ [tryFields.picture]: selection.room }} />
    </>
  );
}

/** An option's name, with its button where it can be picked. */
export function TryRadio({
  selection,
  option,
  children,
}: {
  selection: BookSelection;
  option: string;
  children: ComponentChildren;
}): VNode {
  const one = triedOptions(selection).find((each) => each.option === option);
  if (!one || !isTried(selection, useView())) return <span class="try-head">{children}</span>;
  return (
    <label class="try-head">
      <Radio
        selection={selection}
        one={one}
        isLocked={lockOf(selection) !== undefined}
        id={radioId(selection, option)}
      />{' '}
      {children}
    </label>
  );
}

/** All of an option's picture presses its button, where that can be pressed. It lies over the picture, which a label may not hold. */
export function TryPicture({ selection, option }: { selection: BookSelection; option: string }): VNode | null {
  const view = useView();
  const one = triedOptions(selection).find((each) => each.option === option);
  const isPressed =
    one && isTried(selection, view) && lockOf(selection) === undefined && !goneNow(selection, one, view);
  return isPressed ? <label class="try-over" for={radioId(selection, option)} /> : null;
}

function radioId({ id }: BookSelection, option: string): string {
  return `try-${id}-${option}`.replaceAll(/[^a-z0-9]+/giu, '-');
}

function isTried(selection: BookSelection, { beside }: View): boolean {
  return beside.trying !== undefined && triedOptions(selection).length > 1;
}

function Radio({
  selection,
  one,
  isLocked,
  id,
}: {
  selection: BookSelection;
  one: TriedOption;
  isLocked: boolean;
  id?: string;
}): VNode {
  const { option, stands } = one;
  const isGone = goneNow(selection, one, useView()) !== undefined;
  return (
    <input
      type="radio"
      id={id}
      name={`try ${selection.id}`}
      value={option ?? ''}
      checked={stands}
      disabled={isLocked || isGone}
    />
  );
}

/** Why an option is no longer there to be picked, on the day of the pages. */
function goneNow({ category }: BookSelection, { option, stands }: TriedOption, view: View): string | undefined {
  return stands ? undefined : goneWords(view.option(category, option ?? '') ?? {}, view.book.on);
}

function TryOption({
  selection,
  one,
  isLocked,
  isBrief,
}: {
  selection: BookSelection;
  one: TriedOption;
  isLocked: boolean;
  isBrief: boolean;
}): VNode {
  const view = useView();
  const { option: slug, alternative, stands } = one;
  const option = alternative && view.option(selection.category, alternative.option);
  const name = option?.name ?? (slug === 'none' ? 'Not wanted' : 'Leave it open');
  const radio = <Radio selection={selection} one={one} isLocked={isLocked} />;
  const gone = goneNow(selection, one, view);
  if (isBrief) {
    return (
      <label class="try-option">
        {radio}
        <span class="try-words">
          {name} {alternative && <span class="why">{gone ?? movesWords(alternative, selection.category, view)}</span>}
        </span>
      </label>
    );
  }
  return (
    <label class="try-option">
      {radio}
      {option && <Swatch option={option} size="small" />}
      <span class="try-words">
        <span class="try-name">{name}</span>
        <span class="why">{standing(selection, stands, alternative?.isStandard ?? false)}</span>
        {gone !== undefined && <span class="why">{gone}</span>}
        {alternative && (
          <span class="try-total">
            <span class="for-the-ear">, house total </span>
            <span class="figure">{printMoney(alternative.houseTotal)}</span>{' '}
            <span class="why">{movesWords(alternative, selection.category, view)}</span>
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
  const { path } = useSheet();
  if (!beside.trying) return null;
  return (
    <>
      <div id={tryFields.root} {...{ [tryFields.store]: storeKey(book.house), [tryFields.page]: path }} />
      <p id={tryFields.said} class="for-the-ear" role="status" aria-live="polite" />
    </>
  );
}
