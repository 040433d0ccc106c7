import type { VNode } from 'preact';
import type { FinishGroup, FinishRow } from '../../book/index.js';
import { scheduleColumns } from '../../model/index.js';
import { capital, printLength } from '../../units/index.js';
import { DataTable } from '../parts/data-table.js';
import { OptionLink, RoomLink, SelectionLink } from '../parts/link.js';
import { OwnerMark, State } from '../parts/state-mark.js';
import { shownState } from '../parts/words.js';
import { anchorOf } from '../paths.js';
import { useView } from '../sheet-context.js';

/** One row a room; keys resolve to the legend on the same sheet. */
export function FinishSchedulePage(): VNode {
  const view = useView();
  const { legend, rows, notes } = view.book.schedules.finish;
  return (
    <>
      <h1>Room finish schedule</h1>
      <p class="lead">
        Keys are explained in the legend below, and a key means the same finish in every room. A key in brackets is the
        standard, counted while the choice is open. Finishes stand in working order; where no place is named, they cover
        the whole floor, all walls or the whole ceiling.
      </p>
      <DataTable<FinishRow>
        id="schedule"
        caption="Finishes by room"
        rows={rows}
        columns={[
          { head: 'Room', names: true, cell: (row) => <RoomCell slug={row.room} /> },
          ...scheduleColumns.map((column) => ({
            head: capital(column),
            cell: (row: FinishRow) => <ScheduleCell groups={row.cells[column]} />,
            class: 'schedule-cell',
          })),
          {
            head: 'Ceiling height',
            numeric: true,
            cell: ({ lowest, highest }) =>
              lowest === highest ? printLength(highest) : `${printLength(lowest)} to ${printLength(highest)}`,
          },
          { head: 'Remarks', cell: (row) => <Remarks numbers={row.notes} /> },
        ]}
      />
      <h2>Legend</h2>
      <DataTable
        id="legend"
        caption="Keys of this schedule"
        rows={legend}
        rowId={({ key }) => anchorOf('key', key)}
        columns={[
          { head: 'Key', names: true, class: 'narrow', cell: ({ key }) => <span class="mark">{key}</span> },
          { head: 'Finish', cell: ({ option, name }) => <Finish id={option} name={name} /> },
          { head: 'Kind', cell: ({ category }) => view.categoryName(category) },
          { head: 'Maker and model', cell: ({ product }) => product },
          { head: 'Section', cell: ({ section }) => section },
        ]}
      />
      {notes.length > 0 && (
        <>
          <h2>Remarks</h2>
          <DataTable
            id="remarks"
            caption="Remarks of this schedule"
            rows={notes}
            rowId={({ number }) => anchorOf('remark', String(number))}
            columns={[
              { head: 'No.', names: true, class: 'narrow', cell: ({ number }) => number },
              { head: 'Room', class: 'room-cell', cell: ({ room }) => <RoomCell slug={room} /> },
              { head: 'Place', cell: ({ placeText }) => placeText },
              { head: 'Remark', class: 'wide-cell', cell: ({ text }) => text },
            ]}
          />
        </>
      )}
    </>
  );
}

function RoomCell({ slug }: { slug: string }): VNode {
  const room = useView().room(slug);
  return room ? <RoomLink room={room} /> : <>{slug}</>;
}

function Finish({ id, name }: { id: string; name: string }): VNode {
  const option = useView().optionById(id);
  return option ? <OptionLink option={option} /> : <>{name}</>;
}

function Remarks({ numbers }: { numbers: readonly number[] }): VNode {
  if (numbers.length === 0) return <span class="quiet">–</span>;
  return (
    <>
      {numbers.map((number, index) => (
        <>
          {index > 0 && ', '}
          <a href={`#${anchorOf('remark', String(number))}`} aria-label={`Remark ${number}`}>
            {number}
          </a>
        </>
      ))}
    </>
  );
}

function ScheduleCell({ groups }: { groups: readonly FinishGroup[] }): VNode {
  if (groups.length === 0) return <span class="quiet">–</span>;
  return (
    <ul class="keys">
      {groups.map(({ at, finishes }) => (
        <li>
          {finishes.map((finish) => (
            <>
              <Key finish={finish} />{' '}
            </>
          ))}
          {at !== '' && <span class="quiet">{at}</span>}
          <Marks finishes={finishes} />
        </li>
      ))}
    </ul>
  );
}

/** A key leads to the legend; what has none leads to its choice. */
function Key({ finish }: { finish: FinishGroup['finishes'][number] }): VNode {
  const selection = useView().selection(finish.selection);
  if (finish.key !== undefined) {
    return (
      <a class="mark" href={`#${anchorOf('key', finish.key)}`}>
        {finish.standing === 'standard' ? `(${finish.key})` : finish.key}
      </a>
    );
  }
  const word = finish.standing === 'none' ? 'none' : 'not chosen';
  return selection ? <SelectionLink selection={selection}>{word}</SelectionLink> : <>{word}</>;
}

/** States of what is open here, each once. */
function Marks({ finishes }: { finishes: FinishGroup['finishes'] }): VNode {
  const view = useView();
  const open = finishes.filter(({ standing }) => standing === 'standard' || standing === 'open');
  const states = new Set(open.flatMap(({ selection }) => view.selection(selection) ?? []).map(shownState));
  return (
    <>
      {[...states].map((state) => (
        <>
          {' '}
          <State state={state} />
        </>
      ))}
      {finishes.some(({ supply }) => supply === 'owner-furnished') && (
        <>
          {' '}
          <OwnerMark />
        </>
      )}
    </>
  );
}
