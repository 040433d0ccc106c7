import { unitName, shown } from '../../base/units/index.js';
import { floorArea } from '../../core/model/index.js';
import type { VNode } from 'preact';
import { DataTable } from '../parts/data-table.js';
import { AmountCell, MoneyCell } from '../parts/figures.js';
import { RoomLink } from '../parts/link.js';
import { RoomGrid } from '../parts/room-grid.js';
import { useView } from '../sheet-context.js';

export function RoomsPage(): VNode {
  const view = useView();
  const { rooms, money } = view.book;
  return (
    <>
      <h1>Rooms</h1>
      <RoomGrid heading="h2" />
      <h2>All rooms</h2>
      <DataTable
        id="rooms-table"
        caption="Area, volume, cost of finishes and change by room"
        rows={rooms}
        columns={[
          { head: 'Room', names: true, cell: (room) => <RoomLink room={room} />, foot: 'House' },
          { head: 'Level', cell: (room) => view.levelName(room.level) },
          {
            head: `Floor, ${unitName('sq ft')}`,
            numeric: true,
            cell: (room) => <AmountCell {...shown(floorArea(room.measure.floor), 'sq ft')} />,
          },
          {
            head: `Ceiling, ${unitName('sq ft')}`,
            numeric: true,
            cell: (room) => <AmountCell {...shown(room.measure.ceiling.net, 'sq ft')} />,
          },
          {
            head: `Volume, ${unitName('cu ft')}`,
            numeric: true,
            cell: (room) => <AmountCell {...shown(room.measure.volume, 'cu ft', 0)} />,
          },
          { head: 'Open', numeric: true, cell: (room) => (room.open === 0 ? '–' : room.open) },
          {
            head: 'Finishes',
            numeric: true,
            cell: (room) => <MoneyCell cents={room.cost.total} />,
            foot: <MoneyCell cents={money.finishes.total} />,
          },
          { head: 'Change', numeric: true, cell: (room) => <MoneyCell cents={room.change} change /> },
        ]}
      />
    </>
  );
}
