import type { VNode } from 'preact';
import type { DoorRow, OpeningRow } from '../../book/index.js';
import { printLength } from '../../units/index.js';
import type { Length } from '../../units/index.js';
import { DataTable } from '../parts/data-table.js';
import { DoorSymbol } from '../parts/door-symbol.js';
import { AmountCell } from '../parts/figures.js';
import { PageLink, RoomLink } from '../parts/link.js';
import { Part } from '../parts/part.js';
import { ScheduledCell } from '../parts/scheduled.js';
import { capital, counted, lower } from '../parts/words.js';
import { anchorOf, pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';
import { HardwareTable } from './hardware-table.js';

const kinds = [
  { kind: 'window', title: 'Windows', caption: 'Window schedule' },
  { kind: 'cased', title: 'Cased openings', caption: 'Cased opening schedule' },
  { kind: 'open', title: 'Open passages', caption: 'Open passage schedule' },
] as const;

/** Each opening once, in the room that records it. */
export function OpeningsPage(): VNode {
  const { doors, openings, hardware } = useView().book.schedules;
  return (
    <>
      <h1>Doors and openings</h1>
      <p class="lead">
        {counted(doors.length + openings.length, 'opening')}, {counted(doors.length, 'door')}. Hinges are given as seen
        from the room named first; the little drawing shows that room below the wall. Hand is the side of the hinges as
        one pushes the door open; makers’ words differ, so order by the facts beside it. A rough opening is the door and
        what its maker’s sheet adds; the framer confirms it.
      </p>
      {doors.length > 0 && (
        <Part id="door" title="Doors">
          <DoorTable rows={doors} />
        </Part>
      )}
      {hardware.length > 0 && (
        <Part id="hardware" title="Hardware sets">
          <HardwareTable sets={hardware} />
        </Part>
      )}
      {kinds.map(({ kind, title, caption }) => {
        const own = openings.filter((row) => row.kind === kind);
        if (own.length === 0) return null;
        return (
          <Part id={kind} title={title}>
            <PlainTable kind={kind} caption={caption} rows={own} />
          </Part>
        );
      })}
      <p>
        Railings, stone, insulation and sound-rated walls are on{' '}
        <PageLink to={pagePaths.schedules}>the sheet of other schedules</PageLink>.
      </p>
    </>
  );
}

function DoorTable({ rows }: { rows: readonly DoorRow[] }): VNode {
  return (
    <DataTable<DoorRow>
      id="doors"
      caption="Door schedule"
      rows={rows}
      rowId={({ mark }) => anchorOf('opening', mark)}
      columns={[
        { head: 'Mark', names: true, class: 'narrow', cell: ({ mark }) => <span class="mark">{mark}</span> },
        { head: 'From', class: 'room-cell', cell: ({ room }) => <Side of={room} /> },
        { head: 'To', class: 'room-cell', cell: ({ to }) => <Side of={to} /> },
        { head: 'Width', numeric: true, cell: ({ width }) => printLength(width) },
        { head: 'Height', numeric: true, cell: ({ height }) => printLength(height) },
        { head: 'Leaf', numeric: true, cell: ({ thickness }) => <LengthCell length={thickness} /> },
        { head: 'Door', class: 'type-cell', cell: (row) => <DoorType row={row} /> },
        { head: 'Works', class: 'hand-cell', cell: (row) => <Hand row={row} /> },
        { head: 'Rough width', numeric: true, cell: ({ rough }) => <LengthCell length={rough?.width} /> },
        { head: 'Rough height', numeric: true, cell: ({ rough }) => <LengthCell length={rough?.height} /> },
        { head: 'Jamb', numeric: true, cell: ({ jamb }) => <LengthCell length={jamb.made} /> },
        { head: 'Wall', numeric: true, cell: ({ jamb }) => <LengthCell length={jamb.wall} /> },
        { head: 'Trim', class: 'type-cell', cell: ({ trim }) => <Trim trim={trim} /> },
        { head: 'Hardware', class: 'type-cell', cell: (row) => <Hardware row={row} /> },
        { head: 'Remarks', class: 'type-cell', cell: (row) => <Remarks row={row} /> },
      ]}
    />
  );
}

function LengthCell({ length }: { length: Length | undefined }): VNode {
  return length === undefined ? <span class="quiet">–</span> : <>{printLength(length)}</>;
}

function DoorType({ row }: { row: DoorRow }): VNode {
  const facts = [row.core === undefined ? undefined : `${row.core} core`, row.face].filter(
    (fact) => fact !== undefined,
  );
  return (
    <>
      <ScheduledCell scheduled={row.door} />
      {facts.length > 0 && <div class="quiet">{capital(facts.join(', '))}</div>}
    </>
  );
}

function Hand({ row }: { row: DoorRow }): VNode {
  const view = useView();
  const { operation, hinge, swing, hand } = row;
  if (operation !== 'swing' && operation !== 'double') return <>{capital(operation)}</>;
  const into = swing === undefined ? undefined : view.roomName(swing);
  const words = [
    operation === 'double' ? 'pair' : hinge !== undefined && `hinges ${hinge}`,
    into !== undefined && `into ${lower(into)}`,
    hand !== undefined && `${hand} hand`,
  ].filter((word) => word !== false);
  return (
    <span class="hand">
      <DoorSymbol opening={row} room={row.room} />
      <span>{capital(words.join(', '))}</span>
    </span>
  );
}

/** Trim on each side; alike on both sides is said once. */
function Trim({ trim }: { trim: DoorRow['trim'] }): VNode {
  const view = useView();
  if (trim.length === 0) return <span class="quiet">–</span>;
  const [first, ...rest] = trim;
  const isAlike = rest.every(({ option, standing }) => option === first?.option && standing === first?.standing);
  if (first && isAlike) return <KeyedTrim trim={first} />;
  return (
    <ul class="keys">
      {trim.map((each) => (
        <li>
          <span class="quiet">{view.room(each.room)?.number}</span> <KeyedTrim trim={each} />
        </li>
      ))}
    </ul>
  );
}

/** The key of the finish schedule, and what it means. */
function KeyedTrim({ trim }: { trim: DoorRow['trim'][number] }): VNode {
  return (
    <>
      {trim.key !== undefined && (
        <>
          <PageLink to={`${pagePaths.finishSchedule}#${anchorOf('key', trim.key)}`} class="mark">
            {trim.key}
          </PageLink>{' '}
        </>
      )}
      <ScheduledCell scheduled={trim} />
    </>
  );
}

function Hardware({ row }: { row: DoorRow }): VNode {
  const set = row.hardware?.set;
  return (
    <>
      {set !== undefined && (
        <>
          <a class="mark" href={`#${anchorOf('set', set)}`}>
            {set}
          </a>{' '}
        </>
      )}
      <ScheduledCell scheduled={row.hardware} />
    </>
  );
}

function Remarks({ row: { jamb, note, fits, madeHeight } }: { row: DoorRow }): VNode {
  const misfit = fits === false ? [misfitText(madeHeight)] : [];
  const wide = jamb.reaches === false ? ['The wall is deeper than the jamb: extension, or a deeper jamb'] : [];
  const remarks = [...(note === undefined ? [] : [note]), ...misfit, ...wide];
  return remarks.length === 0 ? <span class="quiet">–</span> : <>{remarks.join('. ')}</>;
}

function misfitText(madeHeight: Length | undefined): string {
  const made = madeHeight === undefined ? '' : ` (height made: ${printLength(madeHeight)})`;
  return `The door is not made in this size${made}: no rough opening until one of them changes`;
}

function PlainTable({ kind, caption, rows }: { kind: string; caption: string; rows: readonly OpeningRow[] }): VNode {
  return (
    <DataTable<OpeningRow>
      id={kind}
      caption={caption}
      rows={rows}
      rowId={({ mark }) => anchorOf('opening', mark)}
      columns={[
        { head: 'Mark', names: true, class: 'narrow', cell: ({ mark }) => <span class="mark">{mark}</span> },
        { head: 'Room', class: 'room-cell', cell: ({ room }) => <Side of={room} /> },
        { head: 'Wall', cell: ({ wall }) => wall },
        { head: 'To', class: 'room-cell', cell: ({ to }) => <Side of={to} /> },
        { head: 'Width', numeric: true, cell: ({ width }) => printLength(width) },
        { head: 'Height', numeric: true, cell: ({ height }) => printLength(height) },
        { head: 'Sill', numeric: true, cell: ({ sill }) => (sill === 0 ? '–' : printLength(sill)) },
        { head: 'Head', numeric: true, cell: ({ head }) => printLength(head) },
        { head: 'Area, sq ft', numeric: true, cell: ({ area }) => <AmountCell amount={area} /> },
        { head: 'Trim', class: 'type-cell', cell: ({ trim }) => <Trim trim={trim} /> },
        { head: 'Remarks', class: 'type-cell', cell: ({ note }) => note ?? <span class="quiet">–</span> },
      ]}
    />
  );
}

function Side({ of }: { of: string }): VNode {
  const room = useView().room(of);
  return room ? <RoomLink room={room} /> : <>{capital(of)}</>;
}
