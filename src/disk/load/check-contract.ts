import { contractTerms, uncoveredTerms } from '../../core/compare/index.js';
import { problemAt, type Problem } from '../../base/problem/index.js';
import { firstContract } from './first-contract.js';
import type { OpenHouse } from './open-house.js';

/** Holds the terms of the contract against those of the first issue and of the change orders since. A term that nobody agreed to is an
 *  error; one that a proposed change order holds, a warning. */
export async function checkContract(open: OpenHouse): Promise<readonly Problem[]> {
  const { house, sources } = await open.current();
  if (!house) return [];
  const { issues, changes } = house.records;
  const first = await firstContract(open, issues);
  if (!first || 'why' in first) return [];
  const source = sources.find(({ path }) => path === 'content/house.md');
  return uncoveredTerms(first.terms, contractTerms(source), changes).map(({ what, path, agreed, is, proposed }) => {
    const message = `${what}: agreed is ${agreed}, as issue ${first.issue.number} and the approved change orders have it, and the record says ${is}`;
    const fix =
      proposed === undefined
        ? `draft a change order: bookmatch compare issue-${first.issue.number} HEAD --draft --reason "…"; or write back ${agreed}`
        : `change order ${proposed} says so and waits: bookmatch approve ${proposed} --by "…"`;
    const severity = proposed === undefined ? 'error' : 'warning';
    return problemAt(house.records.house.origin, path, 'contract-not-covered', message, { fix, severity });
  });
}
