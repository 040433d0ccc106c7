import type { BookSelection } from '../core/book/index.js';
import { sharePlace, type Work } from './work.js';

/** Selections of other trades, with something in them, that share a place with one of these. */
export function othersAt(work: Work, own: readonly BookSelection[]): readonly BookSelection[] {
  return work.look.book.selections.filter(
    (other) =>
      other.trade !== work.trade.slug &&
      other.state !== 'none' &&
      own.some((selection) => sharePlace(selection, other)),
  );
}

/** Is the first category's work done before the second's? */
export function isBefore({ look }: Work, first: string, second: string): boolean {
  return (look.category(first)?.sequence ?? 0) < (look.category(second)?.sequence ?? 0);
}
