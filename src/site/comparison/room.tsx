import type { VNode } from 'preact';
import {
  daysWords,
  measureDifference,
  measureWords,
  roomPoundsWords,
  roomWords,
  sideWords,
  type MeasureChange,
  type PartChange,
  type RoomChange,
  type SelectionChange,
} from '../../core/compare/index.js';
import { fieldTable } from '../../table/index.js';
import { capital, printMoneyChange } from '../../base/units/index.js';
import { TableHtml } from '../../write/index.js';
import { DataTable } from '../parts/data-table.js';
import { Facts } from '../parts/facts.js';
import { MoneyCell } from '../parts/figures.js';
import { PageLink } from '../parts/link.js';
import type { ComparisonContext } from './context.js';
import { LookChanged } from './look.js';
import { Notices } from './notices.js';
import { recordOf, roomChangePath } from './place.js';
import { RecordDiff } from './records.js';
import { SelectionChanged } from './selection.js';
import { ShapeDrawings } from './shape-drawings.js';

/** One room, both sides: its shape, what was chosen anew, what moved without it, and its record's text. */
export function RoomChanged({ room, ...context }: ComparisonContext & { room: RoomChange }): VNode {
  const { comparison, to, from } = context;
  const own = room.selections.filter((selection) => selection.own);
  const moved = room.selections.filter((selection) => !selection.own);
  const record = recordOf(room, comparison.records);
  const level = (to.room(room.room) ?? from.room(room.room))?.level ?? '';
  const inRoom = ({ room: slug }: { room: string }): boolean => slug === room.room || slug === room.roomBefore;
  return (
    <>
      <header class="room-head">
        <p class="room-number">
          <span class="number-disc">{room.number}</span> {to.levelName(level)}
        </p>
        <h1>{room.name}</h1>
        <p class="room-sum">{capital(roomWords(room))}.</p>
        <Facts
          facts={[
            {
              label: 'Contract, by choices here',
              value: room.byChoice === 0 ? 'unchanged' : printMoneyChange(room.byChoice, 'always'),
            },
            {
              label: 'Cost in place',
              value: room.difference === 0 ? 'unchanged' : printMoneyChange(room.difference, 'always'),
            },
            { label: 'Weight', value: roomPoundsWords(room) },
          ]}
        />
      </header>
      {room.fields.length > 0 && (
        <section aria-labelledby="facts-title">
          <h2 id="facts-title">The room</h2>
          <TableHtml
            table={fieldTable('room-fields', 'Facts of the room', room.fields)}
            links={() => undefined}
            quietCaption
            cards
          />
        </section>
      )}
      <Shape room={room} context={context} />
      <LookChanged room={room} context={context} />
      {own.length > 0 && (
        <section aria-labelledby="choices-title">
          <h2 id="choices-title">Selections</h2>
          {own.map((change) => (
            <SelectionChanged change={change} context={context} />
          ))}
          <p class="why">Colors on a screen are not the sample. Choose by the sample.</p>
        </section>
      )}
      <Notices id="cautions" title="Cautions" notices={comparison.cautions.filter(inRoom)} context={context} />
      <Notices id="scope" title="Scope" notices={comparison.scope.filter(inRoom)} context={context} />
      <Moved changes={moved} />
      {record && (
        <section aria-labelledby="record-title">
          <h2 id="record-title">The record’s text</h2>
          <RecordDiff record={record} />
        </section>
      )}
      <Neighbours room={room} context={context} />
    </>
  );
}

function Shape({ room, context }: { room: RoomChange; context: ComparisonContext }): VNode | null {
  const { measures, parts, drawings } = room;
  if (measures.length + parts.length + drawings.length === 0) return null;
  return (
    <section class="drawings" aria-labelledby="shape-title">
      <h2 id="shape-title">Shape</h2>
      <ShapeDrawings room={room} context={context} />
      {measures.length > 0 && <Measures measures={measures} />}
      {parts.length > 0 && <Parts parts={parts} />}
    </section>
  );
}

function Measures({ measures }: { measures: readonly MeasureChange[] }): VNode {
  return (
    <DataTable
      id="measures"
      cards
      caption="Measured"
      rows={measures}
      columns={[
        { head: 'What', names: true, cell: ({ what }) => what },
        { head: 'Was', numeric: true, cell: (measure) => measureWords(measure, 'from') },
        { head: 'Now', numeric: true, cell: (measure) => measureWords(measure, 'to') },
        { head: 'Difference', numeric: true, cell: measureDifference },
      ]}
    />
  );
}

function Parts({ parts }: { parts: readonly PartChange[] }): VNode {
  return (
    <DataTable
      id="parts"
      cards
      caption="Openings and what stands in the room"
      rows={parts}
      columns={[
        { head: 'What', names: true, cell: ({ name }) => name },
        { head: 'Was', class: 'text-cell', cell: ({ from }) => from ?? 'not there' },
        { head: 'Now', class: 'text-cell', cell: ({ to }) => to ?? 'taken out' },
      ]}
    />
  );
}

function Moved({ changes }: { changes: readonly SelectionChange[] }): VNode | null {
  if (changes.length === 0) return null;
  return (
    <section aria-labelledby="moved-title">
      <h2 id="moved-title">Not chosen anew</h2>
      <p>These stand as they stood. Prices, terms, shared packs or the calendar move them.</p>
      <DataTable
        id="moved"
        cards
        called={({ placeText, categoryName }) => `${placeText}, ${categoryName.toLowerCase()}`}
        caption="What moves without a choice"
        quietCaption
        rows={changes}
        columns={[
          {
            head: 'Place',
            names: true,
            cell: ({ placeText, categoryName }) => `${placeText}, ${categoryName.toLowerCase()}`,
          },
          { head: 'Product', cell: ({ to, from }) => sideWords(to ?? from) },
          { head: 'Cost in place', numeric: true, cell: ({ cost }) => <MoneyCell cents={cost} change /> },
          {
            head: 'Contract',
            numeric: true,
            brief: true,
            cell: ({ contract }) => <MoneyCell cents={contract} change />,
          },
          { head: 'Days', class: 'text-cell', cell: daysWords },
        ]}
      />
    </section>
  );
}

function Neighbours({ room, context: { rooms, place } }: { room: RoomChange; context: ComparisonContext }): VNode {
  const index = rooms.indexOf(room);
  const [before, after] = [rooms[index - 1], rooms[index + 1]];
  return (
    <nav class="neighbours" aria-label="Changed rooms before and after">
      {before && (
        <PageLink to={roomChangePath(place, before)} class="before">
          <span class="label">Before</span> {before.number} {before.name}
        </PageLink>
      )}
      {after && (
        <PageLink to={roomChangePath(place, after)} class="after">
          <span class="label">Next</span> {after.number} {after.name}
        </PageLink>
      )}
      {!before && !after && <PageLink to={place.overview}>What changed in the house</PageLink>}
    </nav>
  );
}
