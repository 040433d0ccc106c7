import type { VNode } from 'preact';
import { makerText } from '../../core/fact/index.js';
import type { BookSelection } from '../../core/book/index.js';
import { describePush, describeSlack } from '../../core/calendar/index.js';
import { cautionWords, sourceText, type Caution } from '../../core/caution/index.js';
import { changeWords } from '../../sheet/index.js';
import { lower, printMoney, printMoneyChange } from '../../base/units/index.js';
import { choiceTitle } from '../../table/index.js';
import { candidatesOf, choiceRows, type Candidate } from '../choice-rows.js';
import { Swatch } from '../parts/drawing.js';
import { Day } from '../parts/figures.js';
import { ChoicePictures } from '../parts/choice-pictures.js';
import { ChoiceDays } from '../parts/choice-days.js';
import { ChoiceLink, OptionLink, PageLink, RoomLink, SelectionLink, SelectionSource } from '../parts/link.js';
import { Phrase, Told } from '../parts/prose.js';
import { TryHere, TryRoot } from '../parts/try-place.js';
import { RestWords } from '../parts/rest-words.js';
import { SideBySide } from '../parts/side-by-side.js';
import { StateMark } from '../parts/state-mark.js';
import { counted } from '../parts/words.js';
import { anchorOf, pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';

/** What could stand in one place, side by side: what each is, and what follows from it. Nothing is judged. */
export function ChoicePage({ selection }: { selection: BookSelection }): VNode {
  const view = useView();
  const candidates = candidatesOf(selection, view);
  const at = candidates.findIndex(({ alternative }) => alternative.option === selection.counted);
  const standard = candidates.findIndex(({ alternative }) => alternative.isStandard);
  const reference = Math.max(0, at < 0 ? standard : at);
  const reasons = new Set(candidates.map(({ alternative }) => alternative.decision.reason));
  const title = choiceTitle(selection, view);
  const cautions = view.book.cautions.filter((caution) => caution.selections.includes(selection.id));
  return (
    <>
      <ChoiceHead selection={selection} title={title} count={candidates.length} />
      <ChoicePictures selection={selection} />
      <TryHere selection={selection} />
      <section aria-labelledby="side-title">
        <h2 id="side-title">Side by side</h2>
        <p class="side-key">
          One figure across is the same for all. A bar at the left of a figure: it differs from{' '}
          {at >= 0 ? 'what the totals count today' : standard >= 0 ? 'the standard' : 'the first column'},{' '}
          {candidates[reference]?.option.name}.
        </p>
        <RestWords selection={selection} />
        <SideBySide
          id="side"
          caption={`${title}: ${counted(candidates.length, 'option')} side by side`}
          reference={reference}
          heads={candidates.map((candidate) => ({
            picture: <Swatch option={candidate.option} size="large" />,
            name: <CandidateName candidate={candidate} />,
          }))}
          groups={choiceRows(selection, candidates, view)}
        />
        <p class="why">Colors on a screen are not the sample. Choose by the sample.</p>
      </section>
      <section aria-labelledby="follows-title">
        <h2 id="follows-title">What follows from each</h2>
        <ul class={`follows follows-${Math.min(candidates.length, 4)}`}>
          {candidates.map((candidate) => (
            <Consequences
              candidate={candidate}
              isCounted={candidate.alternative.option === selection.counted}
              saysWhen={reasons.size > 1}
            />
          ))}
        </ul>
      </section>
      <ChoiceDays selection={selection} />
      {cautions.length > 0 && <Cautions cautions={cautions} />}
      <p class="choice-source">
        <SelectionSource selection={selection} />
      </p>
      <OpenNeighbours selection={selection} />
      <TryRoot />
    </>
  );
}

function ChoiceHead({ selection, title, count }: { selection: BookSelection; title: string; count: number }): VNode {
  const view = useView();
  const room = view.room(selection.room);
  const { decision, state } = selection;
  const standing = view.option(selection.category, selection.counted);
  const entry = view.book.money.allowances.find(({ id }) => id === selection.allowance);
  return (
    <header class="choice-page-head">
      <p class="cover-kind">{room && <RoomLink room={room} />}</p>
      <h1>{title}</h1>
      <p class="choice-page-state">
        <StateMark selection={selection} />
      </p>
      <p class="lead">
        {state === 'open' ? (
          <>
            {counted(count, 'option')} to choose from. Decide by <Day day={decision.by} />:{' '}
            {describeSlack(decision.slack)}.
          </>
        ) : (
          `${counted(count, 'option')} could stand here; ${standing ? standing.name : 'none'} is chosen.`
        )}
      </p>
      {state === 'open' && (
        <p class="why">
          {decision.reason}.{decision.pushes > 0 && ` ${describePush(decision)}.`}
        </p>
      )}
      {selection.note !== undefined && (
        <p class="note">
          <Phrase text={selection.note} />
        </p>
      )}
      {entry && (
        <p class="choice-counted">
          It draws on the allowance{' '}
          <PageLink to={`${pagePaths.money}#${anchorOf('allowance', entry.id)}`}>{entry.name}</PageLink>:{' '}
          {printMoney(entry.committed)} of {printMoney(entry.amount)} committed. {entry.coversText}
        </p>
      )}
      <p>
        <SelectionLink selection={selection}>Where it stands in the room</SelectionLink>
      </p>
    </header>
  );
}

function CandidateName({ candidate: { alternative, option } }: { candidate: Candidate }): VNode {
  const role = alternative.isChosen ? 'Chosen' : alternative.isStandard ? 'Standard' : 'Considered';
  return (
    <>
      <span class="role">
        {role}
        {alternative.isChosen && alternative.isStandard && ', the standard'}
      </span>
      <OptionLink option={option} />
      <span class="maker">{makerText(option)}</span>
    </>
  );
}

/** What one option brings with it, in words: where its money comes from, why its day, what must be there first, its care. */
function Consequences({
  candidate,
  isCounted,
  saysWhen,
}: {
  candidate: Candidate;
  isCounted: boolean;
  /** Where the day differs from one option to the next. */
  saysWhen: boolean;
}): VNode {
  const view = useView();
  const { alternative, option } = candidate;
  const { effects, againstToday, decision } = alternative;
  return (
    <li>
      <h3>
        <Swatch option={option} size="small" /> {option.name}
      </h3>
      {option.summary !== undefined && <p>{option.summary}</p>}
      <div>
        <h4>The total moves by {againstToday === 0 ? 'nothing' : printMoneyChange(againstToday, 'always')}</h4>
        {isCounted && againstToday === 0 ? (
          <p>The totals count it today.</p>
        ) : (
          <ul class="effects">
            {effects.map(({ what, amount, why }) => (
              <li>
                <p class="effect-line">
                  <span>{what}</span> <span class="figure">{changeWords(amount, 'always')}</span>
                </p>
                <p class="why">{why}.</p>
              </li>
            ))}
            {effects.length === 0 && <li>Nothing else changes.</li>}
          </ul>
        )}
      </div>
      {saysWhen && (
        <div>
          <h4>
            Decide by <Day day={decision.by} />
          </h4>
          <p>
            {decision.reason}.{decision.pushes > 0 && ` ${describePush(decision)}.`}
          </p>
        </div>
      )}
      <div>
        <h4>What must be there first</h4>
        {option.needs.length === 0 ? (
          <p>Nothing is recorded.</p>
        ) : (
          <ul class="plain-list">
            {option.needs.map((need) => (
              <li>
                {need.what}: {view.tradeName(need.by)}, before {view.milestoneName(need.before)}.
              </li>
            ))}
          </ul>
        )}
      </div>
      <div>
        <h4>Care</h4>
        <p>
          <Told text={option.care} />
        </p>
      </div>
    </li>
  );
}

function Cautions({ cautions }: { cautions: readonly Caution[] }): VNode {
  return (
    <section aria-labelledby="cautions-title">
      <h2 id="cautions-title">To check here before it is built</h2>
      <ul class="plain-list">
        {cautions.map(({ title, seen, says, source, locally, ask }) => (
          <li>
            <strong>{title}.</strong> {seen} {says}{' '}
            <span class="why">
              {cautionWords.source}: {sourceText(source)}.{locally !== '' && ` ${cautionWords.locally}: ${locally}.`}{' '}
              {cautionWords.ask}: {ask}
            </span>
          </li>
        ))}
      </ul>
      <p class="why">They speak of what the totals count today; another option may bring others.</p>
    </section>
  );
}

/** From one open choice to the next, in the order they are due. */
function OpenNeighbours({ selection }: { selection: BookSelection }): VNode | null {
  const view = useView();
  const open = view.openChoices();
  const index = open.findIndex(({ id }) => id === selection.id);
  if (index < 0) return null;
  const name = (other: BookSelection): string => `${view.roomName(other.room)}: ${lower(choiceTitle(other, view))}`;
  const [before, after] = [open[index - 1], open[index + 1]];
  return (
    <nav class="neighbours" aria-label="Open choices before and after, by the day they are due">
      {before && (
        <ChoiceLink selection={before} class="before">
          <span class="label">Due before</span> {name(before)}
        </ChoiceLink>
      )}
      {after && (
        <ChoiceLink selection={after} class="after">
          <span class="label">Due next</span> {name(after)}
        </ChoiceLink>
      )}
    </nav>
  );
}
