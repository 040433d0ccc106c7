import { contractTerms, type ContractTerm } from '../../core/compare/index.js';
import type { Issue } from '../../core/model/index.js';
import { inLocale, parseMoney, type Cents } from '../../base/units/index.js';
import { localeOfHouse } from '../../core/records/index.js';
import type { OpenHouse } from './open-house.js';

/** The contract as it was first issued. */
export interface FirstContract {
  readonly issue: Issue;
  readonly terms: readonly ContractTerm[];
  readonly sum?: Cents;
}

/** The contract of the first issue that was made under one: on its day or later. What was issued before was an offer. Undefined while there
 *  is none; `why` when the snapshot that would prove it cannot be had. */
export async function firstContract(
  open: Pick<OpenHouse, 'snapshot'>,
  issues: readonly Issue[],
): Promise<FirstContract | { readonly issue: Issue; readonly why: string } | undefined> {
  for (const issue of issues) {
    if (issue.void) continue;
    const snapshot = await open.snapshot(issue);
    if (!snapshot.ok) return { issue, why: snapshot.why };
    const house = snapshot.sources.find(({ path }) => path === 'content/house.md');
    const terms = contractTerms(house);
    const text = (id: string): string | undefined => terms.find((term) => term.id === id)?.text;
    if ((text('contract.date') ?? '') > issue.date) continue;
    const sum = inLocale(localeOfHouse(house), () => parseMoney(text('contract.sum') ?? ''));
    return { issue, terms, ...(sum.ok && { sum: sum.value }) };
  }
  return undefined;
}
