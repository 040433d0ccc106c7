import type { VNode } from 'preact';
import type { BookRoom, BookSelection } from '../../core/book/index.js';
import { quantitiesOfRoom, quantityLines, roomCosts, roomSupplies } from '../../table/index.js';
import { TableHtml } from '../../write/index.js';
import { placeLinks } from '../place-links.js';
import { useSheet } from '../sheet-context.js';

/** What a room needs and what that costs, with the options that are counted today. */
export function RoomQuantities({ room, selections }: { room: BookRoom; selections: readonly BookSelection[] }): VNode {
  const { view, path } = useSheet();
  const links = placeLinks(view, path);
  const lines = quantityLines(view, view.selectionsOf(room));
  return (
    <section aria-labelledby="quantities-title">
      <h2 id="quantities-title">Quantities</h2>
      <TableHtml table={quantitiesOfRoom(room.name, lines, view)} links={links} />
      {room.supplies && room.supplies.length > 0 && <TableHtml table={roomSupplies(room, view)} links={links} />}
      <TableHtml table={roomCosts(room, selections, view)} links={links} />
    </section>
  );
}
