import type { VNode } from 'preact';
import { makerText, withoutLabor } from '../../core/fact/index.js';
import type { BookSelection } from '../../core/book/index.js';
import { describePush, describeSlack } from '../../core/calendar/index.js';
import { cautionWords, sourceText, type Caution } from '../../core/caution/index.js';
import { lower, printMoney, notPricedYet } from '../../base/units/index.js';
import { choiceTitle } from '../../table/index.js';
import { pictureWords } from '../../draw/index.js';
import { candidatesOf, choiceRows, type Candidate } from '../choice-rows.js';
import { Swatch } from '../parts/drawing.js';
import { Day } from '../parts/figures.js';
import { Fold } from '../parts/fold.js';
import { ChoiceDays } from '../parts/choice-days.js';
import { ChoiceLink, PageLink, RoomLink, SelectionLink, SelectionSource } from '../parts/link.js';
import { Follows } from '../parts/follows.js';
import { FilePicture } from '../parts/picture.js';
import { PhotoFigure } from '../parts/photo.js';
import { Phrase } from '../parts/prose.js';
import { TryPicture, TryRadio, TryRoot, TryTable } from '../parts/try-place.js';
import { RestWords } from '../parts/rest-words.js';
import { SideBySide } from '../parts/side-by-side.js';
import { StateMark } from '../parts/state-mark.js';
import { StoneAndTimber } from '../parts/stone-and-timber.js';
import { counted } from '../parts/words.js';
import { allowancePath, cautionPath, optionPath } from '../paths.js';
import { alike, choicePictures, type OptionPicture } from '../pictures.js';
import { useSheet, useView } from '../sheet-context.js';

/** What could stand in one place, side by side: what each is, and what follows from it. Nothing is judged. */
export function ChoicePage({ selection }: { selection: BookSelection }): VNode {
  const view = useView();
  const candidates = candidatesOf(selection, view);
  const at = candidates.findIndex(({ alternative }) => alternative.option === selection.counted);
  const standard = candidates.findIndex(({ alternative }) => alternative.isStandard);
  const reference = Math.max(0, at < 0 ? standard : at);
  const title = choiceTitle(selection, view);
  const cautions = view.cautionsOf(selection.id);
  const pictures = choicePictures(selection, view);
  const { first, groups } = choiceRows(selection, candidates, view);
  const caption = `${title}: ${counted(candidates.length, 'option')} side by side`;
  return (
    <>
      <ChoiceHead selection={selection} title={title} count={candidates.length} />
      <TryTable selection={selection}>
        <SideBySide
          id="side"
          caption={caption}
          reference={reference}
          heads={headsOf(selection, candidates, pictures)}
          rows={first}
        />
      </TryTable>
      {useSheet().desk?.choice}
      <AlikeWords pictures={pictures} />
      <StoneAndTimber selection={selection} candidates={candidates} />
      <div class="side-key">
        <p>
          One figure across is the same for all. A bar at the left of a figure: it differs from{' '}
          {at >= 0 ? 'what the totals count today' : standard >= 0 ? 'the standard' : 'the first column'},{' '}
          {candidates[reference]?.option.name}. {pictureWords}
        </p>
        <RestWords selection={selection} />
      </div>
      <ChoiceDays selection={selection} />
      <section aria-labelledby="else-title">
        <h2 id="else-title">Everything else</h2>
        <Fold title="What follows from each" of="where its money comes from, what must be there first, its care">
          <Follows selection={selection} candidates={candidates} />
        </Fold>
        {groups.map((group, index) => (
          <Fold title={group.title} of={group.rows.map(({ label }) => lower(label)).join(', ')}>
            <SideBySide
              id={`side-${index}`}
              caption={`${caption}: ${lower(group.title)}`}
              reference={reference}
              heads={candidates.map(({ option }) => ({ name: option.name }))}
              rows={group.rows}
            />
          </Fold>
        ))}
        {cautions.length > 0 && (
          <Fold title="To check here before it is built" of={cautions.map((each) => lower(each.title)).join(', ')}>
            <Cautions cautions={cautions} />
          </Fold>
        )}
      </section>
      <p class="choice-source">
        <SelectionSource selection={selection} />
      </p>
      <OpenNeighbours selection={selection} />
      <TryRoot />
    </>
  );
}

/** Each option with the room as it would be, else with its sample; to be picked where that can be. */
function headsOf(selection: BookSelection, candidates: readonly Candidate[], pictures: readonly OptionPicture[]) {
  return candidates.map((candidate) => {
    const picture = pictures.find(({ option }) => option.id === candidate.option.id);
    return {
      picture: (
        <>
          {picture ? <FilePicture picture={picture} alt="" /> : <Swatch option={candidate.option} size="large" />}
          <PhotoFigure option={candidate.option} isSmall />
          <TryPicture selection={selection} option={candidate.option.slug} />
        </>
      ),
      name: <CandidateName selection={selection} candidate={candidate} hasPicture={picture !== undefined} />,
    };
  });
}

/** Pictures that show the same are said to. */
function AlikeWords({ pictures }: { pictures: readonly OptionPicture[] }): VNode | null {
  const same = alike(pictures).filter((group) => group.length > 1);
  if (same.length === 0) return null;
  return (
    <>
      {same.map((group) => (
        <p>These cannot be told apart in the drawing: {group.map(({ option }) => option.name).join('; ')}.</p>
      ))}
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
      <p class="room-way">
        {room && <RoomLink room={room} />} ·{' '}
        <SelectionLink selection={selection}>where it stands in the room</SelectionLink>
      </p>
      <h1>{title}</h1>
      <p class="choice-page-state">
        <StateMark selection={selection} />{' '}
        {state === 'open' ? (
          <>
            Decide by <Day day={decision.by} />, {describeSlack(decision.slack)}. {decision.reason}.
            {decision.pushes > 0 && <strong> {describePush(decision)}.</strong>}
          </>
        ) : (
          `${counted(count, 'option')} could stand here; ${standing ? standing.name : 'none'} is chosen.`
        )}
      </p>
      {selection.note !== undefined && (
        <p class="note">
          <Phrase text={selection.note} />
        </p>
      )}
      {entry && (
        <p class="choice-counted">
          It draws on the allowance <PageLink to={allowancePath(entry)}>{entry.name}</PageLink>:{' '}
          {printMoney(entry.committed)} of {printMoney(entry.amount)} committed. {entry.coversText}
        </p>
      )}
    </header>
  );
}

function CandidateName({
  selection,
  candidate: { alternative, option },
  hasPicture,
}: {
  selection: BookSelection;
  candidate: Candidate;
  hasPicture: boolean;
}): VNode {
  const role = alternative.isChosen ? 'Chosen' : alternative.isStandard ? 'Standard' : 'Considered';
  return (
    <>
      <TryRadio selection={selection} option={option.slug}>
        {hasPicture && <Swatch option={option} size="small" />} {option.name}
      </TryRadio>
      <span class="role">
        {role}
        {alternative.isChosen && alternative.isStandard && ', the standard'}
        {withoutLabor(option) && `, labor ${notPricedYet}`}
      </span>
      <span class="maker">{makerText(option)}</span>
      <span class="maker">
        <PageLink to={optionPath(option)}>
          More<span class="for-the-ear"> of {option.name}</span>
        </PageLink>
      </span>
    </>
  );
}

function Cautions({ cautions }: { cautions: readonly Caution[] }): VNode {
  return (
    <>
      <ul class="plain-list">
        {cautions.map(({ id, room, title, seen, says, source, locally, ask }) => (
          <li>
            <strong>
              <PageLink to={cautionPath({ id, room })}>{title}</PageLink>.
            </strong>{' '}
            {seen} {says}{' '}
            <span class="why">
              {cautionWords.source}: {sourceText(source)}.{locally !== '' && ` ${cautionWords.locally}: ${locally}.`}{' '}
              {cautionWords.ask}: {ask}
            </span>
          </li>
        ))}
      </ul>
      <p class="why">They speak of what the totals count today; another option may bring others.</p>
    </>
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
