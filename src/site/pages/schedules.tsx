import type { VNode } from 'preact';
import type { InsulationRow, RailingRow, SoundRow, StoneRow } from '../../book/index.js';
import { capital, printAmount, printLength } from '../../units/index.js';
import type { Length } from '../../units/index.js';
import { DataTable } from '../parts/data-table.js';
import { AmountCell } from '../parts/figures.js';
import { PageLink, RoomLink } from '../parts/link.js';
import { Part } from '../parts/part.js';
import { ScheduledCell } from '../parts/scheduled.js';
import { counted } from '../parts/words.js';
import { anchorOf, pagePaths } from '../paths.js';
import { useView } from '../sheet-context.js';

/** Railings, stone, insulation by assembly, sound-rated walls. */
export function SchedulesPage(): VNode {
  const { railings, stone, insulation, sound } = useView().book.schedules;
  return (
    <>
      <h1>Other schedules</h1>
      <p class="lead">
        Railings, stone, insulation and sound-rated walls, as measured, without waste. Finishes are on{' '}
        <PageLink to={pagePaths.finishSchedule}>the finish schedule</PageLink>, doors with their hardware on{' '}
        <PageLink to={pagePaths.openings}>doors and openings</PageLink>.
      </p>
      {railings.rows.length > 0 && (
        <Part id="railings" title="Railings">
          <RailingTable />
        </Part>
      )}
      {stone.length > 0 && (
        <Part id="stone" title="Stone">
          <StoneTable rows={stone} />
        </Part>
      )}
      {insulation.length > 0 && (
        <Part id="insulation" title="Insulation by assembly">
          <p>
            R-values of the layers of an assembly are added up; the path through the framing is not reckoned. The
            climate zone is {useView().book.house.climateZone}.
          </p>
          <InsulationTable rows={insulation} />
        </Part>
      )}
      {sound.length > 0 && (
        <Part id="sound" title="Sound-rated walls">
          <p>
            The rating is of the wall that was tested, with the board named. It holds only where the wall is built as
            tested, and gaps, boxes and doors lower it.
          </p>
          <SoundTable rows={sound} />
        </Part>
      )}
    </>
  );
}

function RailingTable(): VNode {
  const { rows, length, posts } = useView().book.schedules.railings;
  return (
    <DataTable<RailingRow>
      id="railing-table"
      caption="Railing schedule"
      rows={rows}
      columns={[
        { head: 'Run', names: true, cell: ({ name }) => name, foot: counted(rows.length, 'run') },
        { head: 'Room', class: 'room-cell', cell: ({ room }) => <Room slug={room} /> },
        { head: 'Railing', class: 'type-cell', cell: ({ railing }) => <ScheduledCell scheduled={railing} /> },
        { head: 'Level or rake', cell: ({ kind, slope }) => <Rake kind={kind} slope={slope} /> },
        { head: 'Length', numeric: true, cell: (row) => printLength(row.length), foot: printLength(length) },
        { head: 'Pieces', numeric: true, cell: ({ pieces }) => pieces.length },
        { head: 'Posts', numeric: true, cell: (row) => row.posts ?? '–', foot: posts },
        { head: 'Height', numeric: true, cell: ({ height }) => <LengthCell length={height} /> },
        { head: 'Clear opening', numeric: true, cell: ({ clearOpening }) => <LengthCell length={clearOpening} /> },
        { head: 'Drop', numeric: true, cell: ({ drop }) => <LengthCell length={drop} /> },
        { head: 'Mount', cell: ({ mount }) => mount ?? '–' },
      ]}
    />
  );
}

function Rake({ kind, slope }: Pick<RailingRow, 'kind' | 'slope'>): VNode {
  return <>{slope === undefined ? capital(kind) : `${capital(kind)}, rises ${printAmount(slope, 2)} for 1`}</>;
}

function StoneTable({ rows }: { rows: readonly StoneRow[] }): VNode {
  const view = useView();
  return (
    <DataTable<StoneRow>
      id="stone-table"
      caption="Stone schedule"
      rows={rows}
      columns={[
        { head: 'Place', names: true, cell: ({ placeText }) => placeText },
        { head: 'Room', class: 'room-cell', cell: ({ room }) => <Room slug={room} /> },
        { head: 'Stone', class: 'type-cell', cell: ({ stone }) => <ScheduledCell scheduled={stone} /> },
        {
          head: 'Faces, sq ft',
          class: 'type-cell',
          cell: ({ faces }) => (
            <ul class="keys">
              {faces.map(({ name, gross, net }) => (
                <li>
                  {name}: {printAmount(net, 1)}
                  {net !== gross && <span class="quiet"> of {printAmount(gross, 1)}</span>}
                </li>
              ))}
            </ul>
          ),
        },
        { head: 'Flats, sq ft', numeric: true, cell: ({ flats }) => <AmountCell amount={flats} /> },
        { head: 'Corners, lin ft', numeric: true, cell: ({ corners }) => <AmountCell amount={corners} /> },
        { head: 'Bed', numeric: true, cell: ({ bed }) => <LengthCell length={bed} /> },
        {
          head: 'Weight, lb',
          numeric: true,
          cell: ({ pounds }) => (pounds === undefined ? '–' : printAmount(pounds, 0)),
        },
        { head: 'lb / sq ft', numeric: true, cell: (row) => row.poundsPerSqFt ?? '–' },
        { head: 'Set on', cell: ({ setting, joint }) => [setting, joint].filter(Boolean).join('; ') },
        {
          head: 'What carries it',
          class: 'wide-cell',
          cell: ({ support }) => support.map(({ what, by }) => `${what} (${view.tradeName(by)})`).join('; '),
        },
      ]}
    />
  );
}

function InsulationTable({ rows }: { rows: readonly InsulationRow[] }): VNode {
  return (
    <DataTable<InsulationRow>
      id="insulation-table"
      caption="Insulation schedule"
      rows={rows}
      columns={[
        { head: 'Where', names: true, cell: ({ where }) => capital(where) },
        {
          head: 'Layers',
          class: 'type-cell',
          cell: ({ layers }) => layers.map((layer) => <ScheduledCell scheduled={{ ...layer, selection: '' }} />),
        },
        { head: 'R', numeric: true, cell: ({ r }) => printAmount(r, 1) },
        {
          head: 'Depth',
          numeric: true,
          cell: ({ layers }) => layers.map(({ thickness }) => <LengthCell length={thickness} />),
        },
        { head: 'Area, sq ft', numeric: true, cell: ({ area }) => <AmountCell amount={area} /> },
        { head: 'Vapor retarder', cell: ({ layers }) => layers.map(({ retarder }) => retarder).join('; ') },
        {
          head: 'Cover against fire',
          cell: ({ layers }) => (layers.some(({ mustBeCovered }) => mustBeCovered === true) ? 'must be covered' : '–'),
        },
        { head: 'Rooms', class: 'wide-cell', cell: ({ rooms }) => <RoomNumbers rooms={rooms} /> },
      ]}
    />
  );
}

function SoundTable({ rows }: { rows: readonly SoundRow[] }): VNode {
  return (
    <DataTable<SoundRow>
      id="sound-table"
      caption="Schedule of sound-rated walls"
      rows={rows}
      columns={[
        { head: 'Room', names: true, class: 'room-cell', cell: ({ room }) => <Room slug={room} /> },
        { head: 'Walls', cell: ({ placeText }) => placeText },
        { head: 'Insulation', class: 'type-cell', cell: ({ batt }) => <ScheduledCell scheduled={batt} /> },
        { head: 'STC', numeric: true, cell: ({ stc }) => stc },
        { head: 'Tested with', class: 'wide-cell', cell: ({ assembly }) => assembly ?? '–' },
        { head: 'Depth', numeric: true, cell: ({ thickness }) => <LengthCell length={thickness} /> },
        { head: 'Area, sq ft', numeric: true, cell: ({ area }) => <AmountCell amount={area} /> },
        { head: 'Openings in it', cell: ({ openings }) => <Marks marks={openings} /> },
      ]}
    />
  );
}

function Marks({ marks }: { marks: readonly string[] }): VNode {
  if (marks.length === 0) return <span class="quiet">–</span>;
  return (
    <>
      {marks.map((mark, index) => (
        <>
          {index > 0 && ', '}
          <PageLink to={`${pagePaths.openings}#${anchorOf('opening', mark)}`} class="mark">
            {mark}
          </PageLink>
        </>
      ))}
    </>
  );
}

function RoomNumbers({ rooms }: { rooms: readonly string[] }): VNode {
  const view = useView();
  return <>{rooms.map((room) => view.room(room)?.number ?? room).join(', ')}</>;
}

function Room({ slug }: { slug: string }): VNode {
  const room = useView().room(slug);
  return room ? <RoomLink room={room} /> : <>{slug}</>;
}

function LengthCell({ length }: { length: Length | undefined }): VNode {
  return length === undefined ? <span class="quiet">–</span> : <>{printLength(length)}</>;
}
