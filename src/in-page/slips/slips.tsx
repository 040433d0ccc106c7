import { Fragment, type VNode } from 'preact';
import { useState } from 'preact/hooks';
import { printable } from '../../base/problem/index.js';
import { counted, printDay, printMoney, type IsoDate } from '../../base/units/index.js';
import { slipWords, type HeldWish } from '../../slip/index.js';
import { whatFollows } from '../../table/index.js';
import { TableHtml } from '../../write/index.js';
import { Follows } from '../follows.js';
import { linksHere } from '../page-links.js';
import { Send } from '../send.js';
import type { Trial } from '../trying.js';
import { DifferencePlace, whose } from './difference.js';
import type { Laid, Laying } from './laying.js';
import { slipTitle, type LaidSlip } from './read-slip.js';
import { ProblemList } from '../problem-list.js';

interface SlipsProps {
  readonly trial: Trial;
  readonly laying: Laying;
  readonly today: IsoDate;
  /** Has a sentence read out and shown where slips are laid down. */
  readonly say: (words: string) => void;
}

/** Slips that were laid down, over each other: who made them, what they come to, where they agree and differ, and the one slip that is made of them. */
export function Slips({ trial, laying, today, say }: SlipsProps): VNode | null {
  const laid = laying.now();
  const { slips, together, fitting } = laid;
  const { picks } = trial.now();
  const isAlone = slips.length === 1;
  const take = (choices: Laid['choices'], of: string): void => {
    trial.take(choices.map(({ selection, now }) => ({ selection, option: now })));
    say(`You are trying ${of} now: ${counted(choices.length, 'choice')}, at the foot of this page and of the others.`);
  };
  return (
    <>
      {picks.length > 0 && (
        <p>
          <button type="button" class="try-tool" onClick={() => say(laying.layTried())}>
            Lay down what I am trying here, {counted(picks.length, 'choice')}
          </button>
        </p>
      )}
      {slips.length > 0 && (
        <>
          <section aria-labelledby="slips-title">
            <h2 id="slips-title">{counted(slips.length, 'slip')} laid down</h2>
            <ol class="plain-list slip-list">
              {slips.map((slip, index) => (
                <SlipItem key={slip.line} slip={slip}>
                  {(fitting[index]?.length ?? 0) > 0 && (
                    <Tool press={() => take(fitting[index] ?? [], `slip ${index + 1}`)} of={`slip ${index + 1}`}>
                      Take as my tried choices
                    </Tool>
                  )}
                  <Tool press={() => say(laying.takeAway(slip))} of={`slip ${index + 1}`}>
                    Take away
                  </Tool>
                </SlipItem>
              ))}
            </ol>
            {isAlone && <p class="why">Lay down another one to see where the two differ.</p>}
          </section>
          <Money laid={laid} />
          <Differences
            laid={laid}
            settle={(...difference) => {
              laying.settle(...difference);
              say(settledWords(laying.now()));
            }}
          />
          <Wishes
            title={slips.length === 2 ? 'Wanted by both' : 'Wanted by more than one'}
            wishes={together.agreed}
            laid={laid}
            saysWhose
          />
          <Wishes
            title={isAlone ? 'What it chooses' : 'Wanted by one alone'}
            wishes={together.single}
            laid={laid}
            saysWhose={!isAlone}
          />
          <Wishes title="Chosen already" wishes={together.already} laid={laid} saysWhose={!isAlone} />
          <Wishes title="What no longer fits the records" wishes={together.refused} laid={laid} saysWhose={!isAlone}>
            It is left out of all figures and of the slip that is sent from here.
          </Wishes>
          <Together trial={trial} laid={laid} today={today} take={() => take(laid.choices, 'these choices')} />
        </>
      )}
    </>
  );
}

function Tool({ press, of, children }: { press: () => void; of: string; children: string }): VNode {
  return (
    <button type="button" class="try-tool" onClick={press}>
      {children}
      <span class="for-the-ear">: {of}</span>
    </button>
  );
}

function SlipItem({ slip, children }: { slip: LaidSlip; children: (VNode | false)[] | VNode }): VNode {
  const { note } = slip.slip;
  return (
    <li>
      <p>
        <strong>{slipTitle(slip)}</strong>
      </p>
      {note !== undefined && <p class="slip-note">“{printable(note)}”</p>}
      <p class="why">
        {slip.isOfThese
          ? 'Made from the records of these pages.'
          : 'Made from other records than those of these pages: what no longer fits is told below.'}
      </p>
      <div class="try-tools">{children}</div>
    </li>
  );
}

function Money({ laid: { money, problems } }: { laid: Laid }): VNode {
  return (
    <section aria-labelledby="slips-money-title">
      <h2 id="slips-money-title">What they come to</h2>
      <TableHtml table={money} links={() => undefined} />
      {problems.length > 0 && (
        <div class="try-older" role="alert">
          <p>
            <strong>Together these choices do not go,</strong> so that nothing was computed. Settle it otherwise, or
            take a slip away.
          </p>
          <ProblemList problems={problems} />
        </div>
      )}
    </section>
  );
}

function Differences({ laid, settle }: { laid: Laid; settle: Laying['settle'] }): VNode | null {
  const { together, unsettled } = laid;
  if (together.differing.length === 0) return null;
  const left = unsettled.length === 0 ? 'all settled' : `${unsettled.length} to settle`;
  return (
    <section aria-labelledby="slips-differ-title">
      <h2 id="slips-differ-title">
        They differ in {counted(together.differing.length, 'place')}: {left}
      </h2>
      <p class="why">
        Pick what it shall be. The total beside an option is that of the house with this one alone, as on Try choices.
      </p>
      {together.differing.map((difference) => (
        <DifferencePlace key={difference.selection} difference={difference} laid={laid} settle={settle} />
      ))}
    </section>
  );
}

interface WishesProps {
  readonly title: string;
  readonly wishes: readonly HeldWish[];
  readonly laid: Laid;
  readonly saysWhose: boolean;
  readonly children?: string;
}

function Wishes({ title, wishes, laid, saysWhose, children }: WishesProps): VNode | null {
  if (wishes.length === 0) return null;
  const words = slipWords(laid.from, { choices: wishes.map(({ held }) => held.choice) }).choices;
  return (
    <section>
      <h2>
        {title}: {counted(wishes.length, 'place')}
      </h2>
      {children !== undefined && <p class="why">{children}</p>}
      <ul class="plain-list">
        {wishes.map((wish, index) => {
          const { where = '', was = '', now = '' } = words[index] ?? {};
          const { held } = wish;
          return (
            <li>
              {printable(where)}: {held.is === 'open to it' && was !== now && `${printable(was)} → `}
              <strong>{printable(now)}</strong>
              {saysWhose && <span class="why">, {whose(wish, laid)}</span>}
              {held.is === 'refused' && <Fragment>. {printable(held.why)}</Fragment>}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** What is said when a difference is settled. */
function settledWords({ from, to, ...laid }: Laid): string {
  const left = leftWords(laid);
  if (!to) return 'Together these choices do not go.';
  const total = `All together: ${printMoney(to.money.today, 'always')}, as it stands ${printMoney(from.money.today, 'always')}.`;
  return `${total} ${left}`;
}

function leftWords({ unsettled }: Pick<Laid, 'unsettled'>): string {
  if (unsettled.length === 0) return 'All is settled.';
  return `${counted(unsettled.length, 'place is', 'places are')} still to settle.`;
}

interface TogetherProps {
  readonly trial: Trial;
  readonly laid: Laid;
  readonly today: IsoDate;
  readonly take: () => void;
}

/** The one slip that is made of them, once all is settled. */
function Together({ trial, laid, today, take }: TogetherProps): VNode | null {
  const [isSending, setSending] = useState(false);
  const { from, to, choices, unsettled, slips } = laid;
  if (choices.length === 0) return <p>{unsettled.length > 0 ? leftWords(laid) : 'Nothing is left of it to send.'}</p>;
  if (!to) return null;
  const selections = choices.map(({ selection }) => selection);
  const follows = whatFollows({ from, to, selections, signedRooms: trial.house.signedRooms });
  return (
    <section aria-labelledby="slips-together-title">
      <h2 id="slips-together-title">{slips.length > 1 ? 'All together' : 'With this slip'}</h2>
      <p class="slip-total">{follows.summary}</p>
      {unsettled.length > 0 && (
        <p class="why">{leftWords(laid)} Until then it counts as it stands, and there is nothing to send.</p>
      )}
      <div class="try-tools">
        {unsettled.length === 0 && (
          <button type="button" class="try-tool try-main" onClick={() => setSending(true)}>
            Send these choices
          </button>
        )}
        <button type="button" class="try-tool" onClick={take}>
          Take them as my tried choices
        </button>
      </div>
      <details>
        <summary>What follows from them</summary>
        <Follows follows={follows} links={linksHere(from)} />
      </details>
      {isSending && (
        <Send
          trial={trial}
          trying={{ from, to, picks: choices }}
          today={today}
          {...sentAs(slips)}
          close={() => setSending(false)}
        />
      )}
    </section>
  );
}

/** Letters that a sentence of a slip may have. */
const longestNote = 300;

/** What a slip made of slips begins with: their maker where all have one, their sentences, and whose they were. */
function sentAs(slips: readonly LaidSlip[]): { begin: { by?: string; note: string }; origin: string } {
  const [by, ...others] = new Set(slips.map((slip) => slip.slip.by));
  const notes = slips.flatMap(({ slip: { note } }) => (note === undefined ? [] : [sentence(printable(note))]));
  const makers = slips.map((slip) => `${slip.by}, ${printDay(slip.slip.on)}`);
  return {
    begin: {
      ...(by !== undefined && others.length === 0 && { by }),
      note: [...new Set(notes)].join(' ').slice(0, longestNote),
    },
    origin: `Made of ${counted(slips.length, 'slip')}: ${makers.join('; ')}.`,
  };
}

function sentence(note: string): string {
  return /[.!?…]$/u.test(note) ? note : `${note}.`;
}
