import type { Book, BookSelection, SignedState } from '../core/book/index.js';
import { compare, type Aspect, type Comparison } from '../core/compare/index.js';
import { withParts } from '../base/units/index.js';
import { roomDigests, roomDigestsWithoutSums } from './digest/index.js';

/** The Book with each room and selection marked as signed in an issue, changed since, or new. `then` is the Book of the
 *  signed issue's own records, made by this same program, so that a newer program does not make everything look changed. */
export function markSigned(book: Book, then: Book, issue: number): Book {
  const comparison = compare({ from: then, to: book, labels: { from: `issue-${issue}`, to: 'now' } });
  // Under the same terms and prices a sum moves by shares of what the whole house orders: that is no change in the room.
  const digests = comparison.contract.length === 0 ? roomDigestsWithoutSums : roomDigests;
  const [before, now] = [digests(then), digests(book)];
  const changed = changedSelections(comparison);
  const selections = book.selections.map((selection) =>
    withParts(selection, { signed: selectionState(selection, issue, changed.get(selection.id)) }),
  );
  const rooms = book.rooms.map((room) => {
    const was = before[room.slug];
    const changes = comparison.rooms.filter((change) => change.room === room.slug);
    const own = changes.some(({ fields, measures, parts }) =>
      [fields, measures, parts].some((list) => list.length > 0),
    );
    const what = changes
      .flatMap((change) => change.selections)
      .filter((change) => agreedAspects(change.aspects).length > 0)
      .map((change) => change.placeText);
    return {
      ...room,
      signed: roomState(issue, was, now[room.slug], [...new Set([...(own ? ['shape or notes'] : []), ...what])]),
    };
  });
  return withParts(book, { rooms, selections });
}

function roomState(
  issue: number,
  was: string | undefined,
  is: string | undefined,
  what: readonly string[],
): SignedState {
  if (was === undefined) return { issue, state: 'new', what: [] };
  if (was === is) return { issue, state: 'signed', what: [] };
  return { issue, state: 'changed', what: what.length > 0 ? what : ['prices or terms'] };
}

function selectionState({ state }: BookSelection, issue: number, aspects: readonly string[] | undefined): SignedState {
  if (aspects?.includes('added')) return { issue, state: 'new', what: [] };
  if (aspects !== undefined) return { issue, state: 'changed', what: aspects };
  // Nothing was agreed where nothing was chosen.
  return { issue, state: state === 'open' ? 'new' : 'signed', what: [] };
}

/** What changed in each selection that a signature agreed to, in words. */
function changedSelections(comparison: Comparison): Map<string, readonly string[]> {
  return new Map(
    comparison.rooms
      .flatMap((room) => room.selections)
      .map((change) => [change.selection, agreedAspects(change.aspects)] as const)
      .filter(([, aspects]) => aspects.length > 0),
  );
}

/** Orders placed, days moved and cents that shared packs move are no change of what was agreed. */
function agreedAspects(aspects: readonly Aspect[]): readonly string[] {
  return aspects.filter((aspect) => aspect !== 'state' && aspect !== 'cost' && aspect !== 'decide-by');
}
