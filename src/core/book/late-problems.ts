import { printDay } from '../../base/units/index.js';
import { describePush, describeSlack } from '../calendar/index.js';
import { problemAt, type Problem } from '../../base/problem/index.js';
import type { BookSelection } from './book.js';
import type { Draft } from './draft.js';

/** A warning at each selection whose decide-by day is past while it is open: how late, and what it pushes. */
export function lateProblems(
  drafts: readonly { readonly draft: Draft }[],
  selections: readonly BookSelection[],
): readonly Problem[] {
  return drafts.flatMap(({ draft }, index) => {
    const decision = selections[index]?.decision;
    if (decision?.state !== 'late') return [];
    const { room, category, selection } = draft;
    const what = `${category.name}, ${room.name}: to be decided by ${printDay(decision.by)}, ${describeSlack(decision.slack)}`;
    return [
      problemAt(room.origin, selection.path, 'decide-late', what, {
        fix: `${describePush(decision)}. Write chosen, or date the milestone anew in content/house.md`,
        severity: 'warning',
      }),
    ];
  });
}
