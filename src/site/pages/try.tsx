import type { VNode } from 'preact';
import type { Book, BookSelection } from '../../core/book/index.js';
import { printDay, printMoney } from '../../base/units/index.js';
import { choiceTitle } from '../../table/index.js';
import { lockOf, triedOptions, tryFields, type Pick } from '../../try/index.js';
import { ChoiceLink, PageLink, RoomLink } from '../parts/link.js';
import { pagePaths } from '../paths.js';
import { RestWords } from '../parts/rest-words.js';
import { TryPlace, TryRoot } from '../parts/try-place.js';
import { counted } from '../parts/words.js';
import { useView } from '../sheet-context.js';
import type { View } from '../view.js';

/** Everything that is still open, in one page, by the day it is due; what is decided is picked where its room stands. */
export function TryPage(): VNode {
  const view = useView();
  const { book } = view;
  const open = view.openChoices();
  const isOpen = new Set(open.map(({ id }) => id));
  const rooms = book.rooms
    .map((room) => ({
      room,
      selections: view
        .selectionsOf(room)
        .filter((selection) => !isOpen.has(selection.id) && triedOptions(selection).length > 1),
    }))
    .filter(({ selections }) => selections.length > 0);
  return (
    <>
      <h1>Try choices</h1>
      <p class="lead">
        Pick what you would like, in as many places as you like: the whole house is computed anew with it, here in your
        browser. Nothing is chosen by it, and nothing leaves this page before you send it.
      </p>
      <p>
        The total today is {printMoney(book.money.today)}, computed for {printDay(book.on)}. Beside each option stands
        what the house comes to with that one alone.
      </p>
      <p>
        Two of you pick, or somebody sent you a choice slip? Lay slips over each other:{' '}
        <PageLink to={pagePaths.slips}>Choice slips</PageLink>.
      </p>
      <p class="note unscripted">
        Picking needs a script, which this browser does not run. What each option alone comes to can be read all the
        same.
      </p>
      <TrySets />
      <section aria-labelledby="try-open-title">
        <h2 id="try-open-title">Still open: {counted(open.length, 'choice')}</h2>
        {open.length === 0 && <p>Everything that can be compared is decided.</p>}
        {open.map((selection) => (
          <TryOpen selection={selection} />
        ))}
      </section>
      <section aria-labelledby={tryFields.followsTitle}>
        <h2 id={tryFields.followsTitle}>What follows</h2>
        <p class="why">From all that is picked together. Until something is picked there is nothing to tell.</p>
        <div id={tryFields.follows} />
      </section>
      {rooms.length > 0 && (
        <section aria-labelledby="try-decided-title">
          <h2 id="try-decided-title">Decided, with something else to compare</h2>
          <p class="why">
            They are picked on the page of their room, where each of its rows opens. What is picked there counts here.
          </p>
          <ul class="plain-list">
            {rooms.map(({ room, selections }) => (
              <li>
                <RoomLink room={room} />: {counted(selections.length, 'choice')}
                {lockedWords(selections)}
              </li>
            ))}
          </ul>
        </section>
      )}
      <TryRoot />
    </>
  );
}

/** To begin with what somebody has thought through: the named sets of choices. */
function TrySets(): VNode | null {
  const view = useView();
  const { book } = view;
  if (book.alternatives.length === 0) return null;
  return (
    <section class="scripted-only" aria-labelledby="try-sets-title">
      <h2 id="try-sets-title">Begin with a set of choices</h2>
      <p class="why">
        Its choices are picked, and can be picked otherwise one by one. What each set comes to:{' '}
        <PageLink to={pagePaths.alternatives}>Alternatives</PageLink>.
      </p>
      <div class="try-tools">
        {book.alternatives.map((set) => (
          <button type="button" class="try-tool" {...{ [tryFields.set]: JSON.stringify(picksOf(set, view)) }}>
            {set.name}
          </button>
        ))}
      </div>
    </section>
  );
}

/** What a set chooses itself; where the rest of an allowance stands meanwhile is no choice of its. */
function picksOf({ lines }: Book['alternatives'][number], { optionById }: View): readonly Pick[] {
  return lines
    .filter(({ isRest }) => !isRest)
    .map(({ selection, option = '' }) => ({ selection, option: optionById(option)?.slug ?? 'none' }));
}

function TryOpen({ selection }: { selection: BookSelection }): VNode {
  const view = useView();
  const room = view.room(selection.room);
  return (
    <div class="try-place">
      <p class="try-where">
        {room && <RoomLink room={room} />} · decide by {printDay(selection.decision.by)} ·{' '}
        <ChoiceLink selection={selection} />
      </p>
      <TryPlace selection={selection} legend={choiceTitle(selection, view)}>
        <RestWords selection={selection} />
      </TryPlace>
    </div>
  );
}

function lockedWords(selections: readonly BookSelection[]): string {
  const locked = selections.filter((selection) => lockOf(selection) !== undefined).length;
  return locked === 0 ? '' : `, ${locked} locked`;
}
