import { commitOf, inOrderOfDecision } from '../../core/compare/index.js';
import type { ChangeOrder, Issue } from '../../core/model/index.js';
import { isWithin } from '../history/index.js';

/** Where a draft begins, and the approved change orders that lie before. */
interface DraftStart {
  /** `issue-N`, or the whole id of a commit; as it was asked for when no approved change order goes on from there. */
  readonly version: string;
  /** One going on from where the other ended. */
  readonly covered: readonly ChangeOrder[];
}

/** What approved change orders cover is left out of a draft: it begins where they end. One that ends beyond the draft's newer version leaves nothing out,
 *  since it has what that version lacks. Versions are `issue-N` or whole ids of commits. */
export async function draftStart(
  houseDir: string,
  { from, to }: { readonly from: string; readonly to: string },
  { changeOrders, issues }: { readonly changeOrders: readonly ChangeOrder[]; readonly issues: readonly Issue[] },
): Promise<DraftStart> {
  const left = [...inOrderOfDecision(changeOrders)].reverse();
  const covered: ChangeOrder[] = [];
  let version = from;
  for (;;) {
    const next = left.findIndex((order) => commitOf(order.from, issues) === commitOf(version, issues));
    const [order] = next < 0 ? [] : left.splice(next, 1);
    if (!order) return { version, covered };
    if (!(await isWithin(houseDir, commitOf(order.to, issues), commitOf(to, issues)))) continue;
    covered.push(order);
    version = order.to;
  }
}
