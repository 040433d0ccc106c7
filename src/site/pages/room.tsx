import { floorArea } from '../../core/model/index.js';
import type { VNode } from 'preact';
import { groupBy, placeGroup, placeGroups, type BookRoom, type BookSelection } from '../../core/book/index.js';
import { counted, printLength, printMoney, printMoneyChange, wholeMoney, type Cents } from '../../base/units/index.js';
import { cautionWords, countWords } from '../../core/caution/index.js';
import { groupWords } from '../../sheet/index.js';
import { wholeRange } from '../../table/index.js';
import { drawPlan } from '../drawings.js';
import { CautionCard } from '../parts/caution.js';
import { DrawingFigure } from '../parts/drawing.js';
import { Facts } from '../parts/facts.js';
import { AreaText } from '../parts/figures.js';
import { Finder } from '../parts/finder.js';
import { Fold } from '../parts/fold.js';
import { PageLink } from '../parts/link.js';
import { RoomPicture } from '../parts/picture.js';
import { Prose } from '../parts/prose.js';
import { RoomRow } from '../parts/room-row.js';
import { TryRoot } from '../parts/try-place.js';
import { shownState } from '../parts/words.js';
import { drawingsPath, figuresPath, roomPath } from '../paths.js';
import { useView } from '../sheet-context.js';

/** A room on one screen: how it will look, where it lies, what it comes to; then a row a choice, where people look for it. */
export function RoomPage({ room }: { room: BookRoom }): VNode {
  const view = useView();
  const selections = view.selectionsOf(room);
  const cautions = view.cautionsIn(room.slug);
  return (
    <>
      <RoomWay room={room} />
      <h1>
        {room.name} <OpenWords selections={selections} />
      </h1>
      <div class="room-see">
        <RoomPicture room={room}>
          <div class="room-plan-beside">
            <DrawingFigure drawing={drawPlan(room, view)} />
          </div>
        </RoomPicture>
        <div class="room-facts-beside">
          <Finder room={room} />
          <Sums room={room} selections={selections} />
        </div>
      </div>
      {room.body.trim() !== '' && (
        <Fold title="What the owners, the builder and the trades say">
          <Prose text={room.body} />
        </Fold>
      )}
      {cautions.length > 0 && (
        <Fold
          id="cautions"
          title={<h2>{countWords(cautions)}</h2>}
          of={[...new Set(cautions.map(({ title }) => title))].join(', ')}
        >
          <p class="why">{cautionWords.lead}</p>
          {cautions.map((caution) => (
            <CautionCard caution={caution} />
          ))}
        </Fold>
      )}
      <p class="fold">
        <PageLink to={drawingsPath(room)}>Walls, ceiling and sections drawn</PageLink> ·{' '}
        <PageLink to={figuresPath(room)}>Every quantity, step by step</PageLink>
      </p>
      {selections.length === 0 ? <p>No finish is recorded here yet.</p> : <Rows room={room} selections={selections} />}
      <TryRoot />
    </>
  );
}

/** Where the room is, and the way to the next. */
function RoomWay({ room }: { room: BookRoom }): VNode {
  const view = useView();
  const { rooms } = view.book;
  const index = rooms.findIndex(({ slug }) => slug === room.slug);
  const [before, after] = [rooms[index - 1], rooms[index + 1]];
  const to = (other: BookRoom): VNode => (
    <PageLink to={roomPath(other)}>
      {other.number} {other.name}
    </PageLink>
  );
  return (
    <nav class="room-way" aria-label="Rooms before and after">
      {view.levelName(room.level)} · {room.number}
      {before && <> · before {to(before)}</>}
      {after && <> · next {to(after)}</>}
    </nav>
  );
}

/** `two of 19 choices open, one late`. */
function OpenWords({ selections }: { selections: readonly BookSelection[] }): VNode | null {
  if (selections.length === 0) return null;
  const states = selections.map(shownState);
  const count = (...asked: readonly string[]): number => states.filter((state) => asked.includes(state)).length;
  const open = count('open', 'due-soon', 'late');
  if (open === 0) return <span class="room-state quiet">all {counted(selections.length, 'choice')} made</span>;
  const late = count('late');
  const soon = count('due-soon');
  return (
    <span class={late + soon > 0 ? 'room-state late' : 'room-state'}>
      {open} of {counted(selections.length, 'choice')} open
      {late > 0 && `, ${late} late`}
      {soon > 0 && `, ${soon} due soon`}
    </span>
  );
}

function Sums({ room, selections }: { room: BookRoom; selections: readonly BookSelection[] }): VNode {
  const view = useView();
  const { measure, cost, change, signed } = room;
  const decisions = [...new Set(selections.flatMap(({ id }) => view.decisionOf(id) ?? []))];
  const own = decisions.filter(({ choices }) =>
    choices.every(({ selection }) => view.selection(selection)?.room === room.slug),
  );
  const sum = (of: (decision: (typeof own)[number]) => number): Cents =>
    own.reduce((total, decision) => total + of(decision), 0) as Cents;
  const walls = measure.walls.reduce((total, { net }) => total + net, 0);
  const shared = decisions.length - own.length;
  return (
    <Facts
      class="sums"
      facts={[
        { label: 'Finishes of this room', value: printMoney(cost.total) },
        { label: 'Moves the contract by', value: change === 0 ? 'nothing' : printMoneyChange(change) },
        own.length > 0 && {
          label: shared > 0 ? 'Open here alone moves it by' : 'What is open moves it by',
          value: wholeRange({ low: sum(({ low }) => low.change), high: sum(({ high }) => high.change) }),
        },
        { label: 'Floor', value: <AreaText area={floorArea(measure.floor)} /> },
        { label: 'Ceiling', value: <AreaText area={measure.ceiling.gross} /> },
        { label: 'Walls less openings', value: <AreaText area={walls as typeof measure.floor.net} /> },
        {
          label: 'Ceiling height',
          value:
            measure.lowest === measure.highest
              ? printLength(measure.highest)
              : `${printLength(measure.lowest)} to ${printLength(measure.highest)}`,
        },
        signed && {
          label: `Issue ${signed.issue}`,
          value: signed.state === 'signed' ? 'as signed' : signed.state === 'changed' ? 'changed since' : 'not in it',
        },
      ]}
    />
  );
}

/** Choices by where people look for them; what has something open comes first. */
function Rows({ room, selections }: { room: BookRoom; selections: readonly BookSelection[] }): VNode {
  const groups = groupBy(selections, (selection) => placeGroup(selection, room));
  const isOpen = (group: string): boolean => groups.get(group)?.some(({ state }) => state === 'open') ?? false;
  const order = placeGroups.filter((group) => groups.has(group));
  const whole = (cents: number): string => printMoney(wholeMoney(cents as Cents));
  return (
    <div class="rows">
      <div class="row-heads" aria-hidden="true">
        <span class="row-place">Choice and place</span>
        <span class="row-finish">Finish</span>
        <span class="row-measured">Measured</span>
        <span class="row-cost">In place</span>
        <span class="row-change">Contract</span>
        <span class="row-state">Where it stands</span>
      </div>
      {[...order.filter(isOpen), ...order.filter((group) => !isOpen(group))].map((group) => {
        const own = groups.get(group) ?? [];
        const cost = own.reduce((total, selection) => total + selection.cost.total, 0);
        const change = own.reduce((total, selection) => total + selection.change, 0);
        const open = own.filter(({ state }) => state === 'open').length;
        return (
          <section class="row-group" aria-labelledby={`group-${group}`}>
            <div class="row-group-head">
              <h2 id={`group-${group}`}>{groupWords[group]}</h2>
              <span class="why">
                {counted(own.length, 'choice')}
                {open > 0 && `, ${open} open`}
              </span>
              <span class="row-cost">{cost === 0 ? '' : whole(cost)}</span>
              <span class="row-change">{change === 0 ? '' : printMoneyChange(wholeMoney(change as Cents))}</span>
            </div>
            {[...own]
              .sort((a, b) => Number(b.state === 'open') - Number(a.state === 'open'))
              .map((selection) => (
                <RoomRow selection={selection} />
              ))}
          </section>
        );
      })}
      <p class="why">
        Contract: what a choice moves the contract by; of an open one, against today. Colors on a screen are not the
        sample. Choose by the sample.
      </p>
    </div>
  );
}
