import type { Book } from '../core/book/index.js';
import { changeList, type Comparison } from '../core/compare/index.js';
import type { ReplacedPage } from '../core/model/index.js';
import { roomDigests } from './digest/index.js';

/** Pages of the rooms in which something changed, by their digests on both sides. The older digest of an issue is that in its record, as
 *  it is printed on the page. */
export function replacedPages(
  comparison: Comparison,
  { from, to }: { readonly from: Book; readonly to: Book },
): readonly ReplacedPage[] {
  const { from: label, rooms } = comparison;
  const printed = to.issues.find(({ number }) => label.label === `issue-${number}`)?.rooms;
  const [before, after] = [printed ?? roomDigests(from), roomDigests(to)];
  const told = new Set(changeList(comparison).flatMap(({ room }) => room ?? []));
  return rooms
    .filter(({ room }) => told.has(room))
    .map(({ room, roomBefore }) => {
      const [was, is] = [roomBefore === undefined ? undefined : before[roomBefore], after[room]];
      return { room, ...(was !== undefined && { from: was }), ...(is !== undefined && { to: is }) };
    })
    .filter((page) => page.from !== page.to);
}
