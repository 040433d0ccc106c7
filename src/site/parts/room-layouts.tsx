import type { VNode } from 'preact';
import type { HouseBlock } from '../../sheet/index.js';
import { TableHtml, type Links } from '../../write/index.js';

/** Boards and sheets as laid out in a room: what to buy, where courses begin, and the cut lists. */
export function RoomLayouts({ tables, links }: { tables: readonly HouseBlock[]; links: Links }): VNode | null {
  const [laid, courses, cuts] = tables;
  if (!laid || !courses || !cuts) return null;
  return (
    <section aria-labelledby="laid-title">
      <h2 id="laid-title">Laid out</h2>
      <p>
        Course by course on the true surfaces, cut from the lengths that can be bought, off-cuts used again. Of the two
        counts, pieces and area, one is the order and the other its check: which, stands at each.
      </p>
      <TableHtml table={laid} links={links} />
      <TableHtml table={courses} links={links} />
      <details>
        <summary>{cuts.caption}: what is cut from each length</summary>
        <TableHtml table={cuts} links={links} quietCaption />
      </details>
    </section>
  );
}
