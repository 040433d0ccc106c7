import type { VNode } from 'preact';
import type { BookRoom, BookSelection } from '../../book/index.js';
import { printLength } from '../../units/index.js';
import { finishKeys, scheduleColumns } from '../finish-key.js';
import type { FinishKey, ScheduleColumn } from '../finish-key.js';
import { DataTable } from '../parts/data-table.js';
import { OptionLink, RoomLink, SelectionLink } from '../parts/link.js';
import { OwnerMark, State } from '../parts/state-mark.js';
import { capital, shownState } from '../parts/words.js';
import { anchorOf } from '../paths.js';
import { useView } from '../sheet-context.js';
import type { View } from '../view.js';

/** One row a room; keys resolve to the legend on the same sheet. */
export function FinishSchedulePage(): VNode {
  const view = useView();
  const keys = finishKeys(view);
  return (
    <>
      <h1>Room finish schedule</h1>
      <p class="lead">
        Keys are explained in the legend below. A key in brackets is the standard, counted while the choice is open.
        Where no place is named, the finish covers the whole floor, walls or ceiling.
      </p>
      <DataTable
        id="schedule"
        caption="Finishes by room"
        rows={view.book.rooms}
        columns={[
          { head: 'Room', names: true, cell: (room) => <RoomLink room={room} /> },
          ...scheduleColumns.map((column) => ({
            head: capital(column),
            cell: (room: BookRoom) => <ScheduleCell room={room} column={column} keys={keys} />,
            class: 'schedule-cell',
          })),
          {
            head: 'Ceiling height',
            numeric: true,
            cell: ({ measure }) =>
              measure.lowest === measure.highest
                ? printLength(measure.highest)
                : `${printLength(measure.lowest)} to ${printLength(measure.highest)}`,
          },
        ]}
      />
      <h2>Legend</h2>
      <DataTable
        id="legend"
        caption="Keys of this schedule"
        rows={[...keys.values()]}
        rowId={({ key }) => anchorOf('key', key)}
        columns={[
          { head: 'Key', names: true, class: 'narrow', cell: ({ key }) => <span class="mark">{key}</span> },
          { head: 'Finish', cell: ({ option }) => <OptionLink option={option} /> },
          { head: 'Kind', cell: ({ option }) => view.category(option.category)?.name },
          { head: 'Maker and model', cell: ({ option }) => `${option.maker} ${option.model}` },
          { head: 'Section', cell: ({ option }) => view.category(option.category)?.section },
        ]}
      />
    </>
  );
}

/** The column of a selection: its category's, but what goes on the ceiling alone stands under the ceiling. */
function columnOf(selection: BookSelection, view: View): ScheduleColumn | undefined {
  const column = view.category(selection.category)?.schedule;
  return column === 'walls' && selection.places.every((place) => place.id === 'ceiling') ? 'ceiling' : column;
}

/** Does it cover all that its column speaks of? Then the key says enough. */
function isWhole({ placeText }: BookSelection): boolean {
  return ['Floor', 'Base', 'Base of the walls', 'Walls', 'Ceiling'].includes(placeText);
}

interface CellProps {
  readonly room: BookRoom;
  readonly column: ScheduleColumn;
  readonly keys: ReadonlyMap<string, FinishKey>;
}

function ScheduleCell({ room, column, keys }: CellProps): VNode {
  const view = useView();
  const own = view.selectionsOf(room).filter((selection) => columnOf(selection, view) === column);
  if (own.length === 0) return <span class="quiet">–</span>;
  return (
    <ul class="keys">
      {own.map((selection) => {
        const key =
          selection.counted === undefined ? undefined : keys.get(`${selection.category}/${selection.counted}`);
        const open = selection.state === 'open';
        return (
          <li>
            {key && (
              <a class="mark" href={`#${anchorOf('key', key.key)}`}>
                {open ? `(${key.key})` : key.key}
              </a>
            )}
            {!key && selection.state === 'none' && 'none'}{' '}
            {!isWhole(selection) && <SelectionLink selection={selection}>{selection.placeText}</SelectionLink>}
            {open && (
              <>
                {' '}
                <State state={shownState(selection)} />
              </>
            )}
            {selection.supply === 'owner-furnished' && (
              <>
                {' '}
                <OwnerMark />
              </>
            )}
          </li>
        );
      })}
    </ul>
  );
}
