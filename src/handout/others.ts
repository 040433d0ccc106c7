import { groupBy, type BookSelection } from '../core/book/index.js';
import { sharePlace } from '../table/index.js';
import type { Work } from './work.js';

/** Selections of other trades, with something in them, that share a place with one of these; in the order of the Book. */
export function othersAt(work: Work, own: readonly BookSelection[]): readonly BookSelection[] {
  const { look, trade } = work;
  const rooms = [...groupBy(own, ({ room }) => room)].toSorted(([a], [b]) => look.orderOf(a) - look.orderOf(b));
  return rooms.flatMap(([slug, here]) => {
    const room = look.room(slug);
    return (room ? look.selectionsOf(room) : []).filter(
      (other) =>
        other.trade !== trade.slug && other.state !== 'none' && here.some((selection) => sharePlace(selection, other)),
    );
  });
}

/** Is the first category's work done before the second's? */
export function isBefore({ look }: Work, first: string, second: string): boolean {
  return (look.category(first)?.sequence ?? 0) < (look.category(second)?.sequence ?? 0);
}
