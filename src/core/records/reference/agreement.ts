import { problemAt, problemIn, type Problem } from '../../../base/problem/index.js';
import { recordNumber } from '../../../base/units/index.js';
import type { Checked } from '../checked-record.js';
import type { Draft } from '../draft.js';

/** Numbers of issues and change orders have no gap: one that is void keeps its record. A warning, as the number of a record that
 *  was taken away is never given again. */
export function numberReferences({ changes, issues, slugs }: Draft): readonly Problem[] {
  return [
    ...gaps(slugs.changes, changes, 'change order', 'a void one keeps its record with state: void'),
    ...gaps(slugs.issues, issues, 'issue', 'bring its record back from git; an issue is never taken away'),
  ];
}

/** A change order goes from one version to another that are there. */
export function changeOrderReferences({ changes, slugs }: Draft): readonly Problem[] {
  return changes.flatMap(({ record }) =>
    (['from', 'to'] as const).flatMap((key) => {
      const version = record.raw[key];
      if (!record.sound([key]) || !version.startsWith('issue-')) return [];
      const name = recordNumber(Number(version.slice('issue-'.length)));
      if (slugs.issues.has(name)) return [];
      const message = `there is no ${version}`;
      return [problemAt(record.origin, [key], 'issue-unknown', message, { fix: fixForUnknown(name, slugs.issues) })];
    }),
  );
}

/** An issue before the last one was there once: its record was taken away. */
function fixForUnknown(name: string, issues: ReadonlySet<string>): string {
  const last = Math.max(0, ...[...issues].map(Number));
  if (Number(name) < last)
    return `its record content/issues/${name}.md was taken away: git restore content/issues/${name}.md, or an older commit, brings it back`;
  return last === 0 ? 'nothing was issued yet' : `the last issue is issue-${last}`;
}

function gaps(
  names: ReadonlySet<string>,
  drafts: readonly { readonly record: Checked<unknown> }[],
  what: string,
  fix: string,
): readonly Problem[] {
  const numbers = [...names].map(Number).sort((a, b) => a - b);
  return numbers.flatMap((number, index) => {
    const before = numbers[index - 1] ?? 0;
    if (number === before + 1) return [];
    const missing = number - before > 2 ? `${what}s ${before + 1} to ${number - 1} are` : `${what} ${before + 1} is`;
    const record = drafts.find((draft) => Number(draft.record.slug) === number)?.record;
    if (!record) return [];
    return [
      problemIn(record.origin, { line: 1, column: 1 }, 'number-gap', `${missing} missing`, {
        fix,
        severity: 'warning',
      }),
    ];
  });
}
