import type { ComponentChildren, VNode } from 'preact';
import { useState } from 'preact/hooks';
import { counted, printDay, printMoney, printMoneyChange, type Cents, type IsoDate } from '../base/units/index.js';
import { tryFields } from '../try/index.js';
import type { Links } from '../write/index.js';
import { Follows } from './follows.js';
import { Send } from './send.js';
import type { Trial, Trying } from './trying.js';
import { whereWords } from './where-words.js';
import { ProblemList } from './problem-list.js';

interface BarProps {
  readonly trial: Trial;
  readonly trying: Trying;
  /** The day in the reader's calendar. */
  readonly today: IsoDate;
  /** Does the page itself show what follows? */
  readonly isShownInPage: boolean;
  /** Where things are, from this page. */
  readonly links: Links;
}

/** What is tried, at the foot of the page: the total before and after, what follows, and what can be done with it. */
export function Bar({ trial, trying, today, isShownInPage, links }: BarProps): VNode | null {
  const [isOpen, setOpen] = useState(false);
  const [isSending, setSending] = useState(false);
  const { picks, follows, older, problems } = trying;
  if (picks.length === 0 && !older && trying.on === trial.house.on) return null;
  const open = isOpen && follows !== undefined && !isShownInPage;
  return (
    <section class="try-bar" aria-label="Trying choices">
      {open && follows && (
        <div class="try-panel" id="try-panel" role="region" aria-label="What follows" tabIndex={0}>
          <p class="try-summary">{follows.summary}</p>
          <Follows follows={follows} links={links} />
        </div>
      )}
      {older && <Older trial={trial} trying={trying} />}
      {problems.length > 0 && <Refused trying={trying} />}
      <div class="try-line">
        <Sum trying={trying} />
        <div class="try-tools">
          {follows && !isShownInPage && (
            <Tool
              press={() => setOpen(!isOpen)}
              aria={{ 'aria-expanded': open, ...(open && { 'aria-controls': 'try-panel' }) }}
            >
              {open ? 'Close' : 'What follows'}
            </Tool>
          )}
          {follows && isShownInPage && (
            <a class="try-tool" href={`#${tryFields.followsTitle}`}>
              What follows
            </a>
          )}
          {follows && (
            <Tool press={() => setSending(true)} main>
              Send these choices
            </Tool>
          )}
          {picks.length > 0 && <Tool press={trial.clear}>Clear</Tool>}
        </div>
      </div>
      {follows && follows.besidePrices !== '' && <p class="try-day">{follows.besidePrices}</p>}
      <Computed trial={trial} on={trying.on} today={today} />
      {isSending && follows && <Send trial={trial} trying={trying} today={today} close={() => setSending(false)} />}
    </section>
  );
}

function Tool({
  press,
  main = false,
  aria = {},
  children,
}: {
  press: () => void;
  main?: boolean;
  aria?: Readonly<Record<string, string | boolean>>;
  children: ComponentChildren;
}): VNode {
  return (
    <button type="button" class={main ? 'try-tool try-main' : 'try-tool'} onClick={press} {...aria}>
      {children}
    </button>
  );
}

function Sum({ trying: { picks, from, to, follows } }: { trying: Trying }): VNode {
  const [before, after] = [from.money.today, to.money.today];
  const moved = (after - before) as Cents;
  return (
    <p class="try-sum">
      <span class="try-count">
        {picks.length === 0 ? 'Nothing is tried.' : `Trying ${counted(picks.length, 'choice')}.`}
      </span>{' '}
      {follows ? (
        <>
          <span class="for-the-ear">House total </span>
          <span class="figure try-before">{printMoney(before, 'always')}</span>
          <span aria-hidden="true"> → </span>
          <span class="for-the-ear"> becomes </span>
          <strong class="figure">{printMoney(after, 'always')}</strong>{' '}
          <span class="figure try-moved">{moved === 0 ? 'no change' : printMoneyChange(moved, 'always')}</span>
        </>
      ) : (
        <span class="figure">House total {printMoney(before, 'always')}</span>
      )}
    </p>
  );
}

/** For which day the figures are, with a way to the reader's own. */
function Computed({ trial, on, today }: { trial: Trial; on: IsoDate; today: IsoDate }): VNode {
  const own = trial.house.on;
  return (
    <p class="try-day">
      Computed for {printDay(on)}
      {on === own ? ', the day of these pages.' : `; these pages are of ${printDay(own)}.`}{' '}
      {on !== today && (
        <button type="button" class="try-link" onClick={() => trial.computeFor(today)}>
          Compute for today, {printDay(today)}
        </button>
      )}
      {on !== own && (
        <button type="button" class="try-link" onClick={() => trial.computeFor(own)}>
          Compute for the day of these pages
        </button>
      )}
    </p>
  );
}

/** What was picked from other records, one by one. */
function Older({ trial, trying: { older, from } }: { trial: Trial; trying: Trying }): VNode | null {
  if (!older) return null;
  const { fit, unfit } = older;
  return (
    <div class="try-older" role="alert">
      <p>
        <strong>The records have moved on since you picked.</strong> What you picked was taken back.
      </p>
      <ul class="plain-list">
        {unfit.map(({ pick, why }) => (
          <li>
            {whereWords(pick, from)} no longer fits: {why}.
          </li>
        ))}
        {fit.map((pick) => (
          <li>{whereWords(pick, from)} still fits.</li>
        ))}
      </ul>
      <div class="try-tools">
        {fit.length > 0 && (
          <Tool press={trial.takeUpOlder} main>
            Try again what still fits
          </Tool>
        )}
        <Tool press={trial.forgetOlder}>{fit.length > 0 ? 'Forget all of it' : 'Understood'}</Tool>
      </div>
    </div>
  );
}

function Refused({ trying: { problems } }: { trying: Trying }): VNode {
  return (
    <div class="try-older" role="alert">
      <p>
        <strong>These choices do not go together,</strong> so that nothing was computed. Pick otherwise, or clear them.
      </p>
      <ProblemList problems={problems} />
    </div>
  );
}
