import type { VNode } from 'preact';
import type { BookRoom, BookSelection } from '../../book/index.js';
import type { OpeningMeasure } from '../../model/index.js';
import { printLength } from '../../units/index.js';
import type { View } from '../view.js';
import { DataTable } from '../parts/data-table.js';
import { DoorSymbol } from '../parts/door-symbol.js';
import { AmountCell } from '../parts/figures.js';
import { OptionLink, RoomLink } from '../parts/link.js';
import { State } from '../parts/state-mark.js';
import { capital, counted, shownState, lower } from '../parts/words.js';
import { anchorOf } from '../paths.js';
import { useView } from '../sheet-context.js';

interface Row {
  readonly room: BookRoom;
  readonly opening: OpeningMeasure;
}

const kinds = [
  { kind: 'door', title: 'Doors', caption: 'Door schedule' },
  { kind: 'window', title: 'Windows', caption: 'Window schedule' },
  { kind: 'cased', title: 'Cased openings', caption: 'Cased opening schedule' },
  { kind: 'open', title: 'Open passages', caption: 'Open passage schedule' },
] as const;

/** Each opening once, in the room that records it. */
export function OpeningsPage(): VNode {
  const view = useView();
  const rows = view.book.rooms.flatMap((room) =>
    room.measure.openings.filter((opening) => opening.own).map((opening): Row => ({ room, opening })),
  );
  rows.sort((a, b) => (a.opening.mark < b.opening.mark ? -1 : a.opening.mark > b.opening.mark ? 1 : 0));
  const doors = rows.filter(({ opening }) => opening.kind === 'door');
  return (
    <>
      <h1>Doors and openings</h1>
      <p class="lead">
        {counted(rows.length, 'opening')}, {counted(doors.length, 'door')}. Hinges are given as seen from the room named
        first; the little drawing shows that room below the wall. Rough openings come from the maker’s sheet.
      </p>
      {kinds.map(({ kind, title, caption }) => {
        const own = rows.filter(({ opening }) => opening.kind === kind);
        if (own.length === 0) return null;
        return (
          <section aria-labelledby={`${kind}-title`}>
            <h2 id={`${kind}-title`}>{title}</h2>
            {kind === 'door' ? <DoorTable rows={own} /> : <PlainTable kind={kind} caption={caption} rows={own} />}
          </section>
        );
      })}
    </>
  );
}

function DoorTable({ rows }: { rows: readonly Row[] }): VNode {
  const view = useView();
  return (
    <DataTable<Row>
      id="doors"
      caption="Door schedule"
      rows={rows}
      rowId={({ opening }) => anchorOf('opening', opening.mark)}
      columns={[
        { head: 'Mark', names: true, class: 'narrow', cell: ({ opening }) => <span class="mark">{opening.mark}</span> },
        { head: 'From', class: 'room-cell', cell: ({ room }) => <RoomLink room={room} /> },
        { head: 'To', class: 'room-cell', cell: ({ opening }) => <OtherSide to={opening.to} /> },
        { head: 'Width', numeric: true, cell: ({ opening }) => printLength(opening.width) },
        { head: 'Height', numeric: true, cell: ({ opening }) => printLength(opening.height) },
        { head: 'Works', class: 'hand-cell', cell: ({ room, opening }) => <Hand room={room} opening={opening} /> },
        { head: 'Chosen for it', class: 'wide-cell', cell: (row) => <OpeningChoices row={row} view={view} /> },
      ]}
    />
  );
}

function Hand({ room, opening }: Row): VNode {
  const view = useView();
  const { operation, hinge, swing } = opening;
  if (operation !== 'swing' && operation !== 'double') return <>{capital(operation)}</>;
  const into = swing === 'outside' ? 'outside' : view.room(swing ?? '')?.name;
  const words = [
    operation === 'double' ? 'pair' : hinge !== undefined && `hinges ${hinge}`,
    into !== undefined && `into ${lower(into)}`,
  ].filter((word) => word !== false);
  return (
    <span class="hand">
      <DoorSymbol opening={opening} room={room.slug} />
      <span>{capital(words.join(', '))}</span>
    </span>
  );
}

function PlainTable({ kind, caption, rows }: { kind: string; caption: string; rows: readonly Row[] }): VNode {
  const view = useView();
  return (
    <DataTable<Row>
      id={kind}
      caption={caption}
      rows={rows}
      rowId={({ opening }) => anchorOf('opening', opening.mark)}
      columns={[
        { head: 'Mark', names: true, class: 'narrow', cell: ({ opening }) => <span class="mark">{opening.mark}</span> },
        { head: 'Room', class: 'room-cell', cell: ({ room }) => <RoomLink room={room} /> },
        { head: 'Wall', cell: ({ opening }) => opening.wall },
        { head: 'To', class: 'room-cell', cell: ({ opening }) => <OtherSide to={opening.to} /> },
        { head: 'Width', numeric: true, cell: ({ opening }) => printLength(opening.width) },
        { head: 'Height', numeric: true, cell: ({ opening }) => printLength(opening.height) },
        { head: 'Sill', numeric: true, cell: ({ opening }) => (opening.sill === 0 ? '–' : printLength(opening.sill)) },
        { head: 'Area, sq ft', numeric: true, cell: ({ opening }) => <AmountCell amount={opening.area} /> },
        { head: 'Chosen for it', class: 'wide-cell', cell: (row) => <OpeningChoices row={row} view={view} /> },
      ]}
    />
  );
}

function OtherSide({ to }: { to: string }): VNode {
  const room = useView().room(to);
  return room ? <RoomLink room={room} /> : <>{capital(to)}</>;
}

/** Selections of either room whose places hold this opening, each finish once. */
function OpeningChoices({ row: { opening }, view }: { row: Row; view: View }): VNode {
  const all = view.book.selections.filter((selection) => selection.places.some((place) => place.id === opening.mark));
  const own = new Map(
    all.map((selection) => [`${selection.category}/${selection.counted ?? ''} ${shownState(selection)}`, selection]),
  );
  if (own.size === 0) return <span class="quiet">–</span>;
  return (
    <ul class="keys">
      {[...own.values()].map((selection) => (
        <li>
          <Choice selection={selection} />
        </li>
      ))}
    </ul>
  );
}

function Choice({ selection }: { selection: BookSelection }): VNode {
  const view = useView();
  const option = view.option(selection.category, selection.counted);
  return (
    <>
      {view.category(selection.category)?.name}:{' '}
      {option ? <OptionLink option={option} /> : selection.state === 'open' ? 'not chosen' : 'none'}
      {selection.state === 'open' && (
        <>
          {' '}
          <State state={shownState(selection)} />
        </>
      )}
    </>
  );
}
