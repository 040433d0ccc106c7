import type { Comparison } from '../core/compare/index.js';
import { lastIssue } from '../core/book/index.js';
import { pagePaths, relativeLink } from '../site/index.js';
import { Difference } from './difference.js';
import { deskPage, type DeskContext } from './frame.js';
import { deskPaths, deskTitles } from './paths.js';

/** What the records say otherwise than the last issue. `since` is undefined where that cannot be told. */
export function sincePage(context: DeskContext, since: Comparison | undefined): string {
  const { view } = context.standing;
  const link = (to: string): string => relativeLink(deskPaths.since, to);
  const issue = view && lastIssue(view.book);
  return deskPage(
    deskPaths.since,
    issue ? sinceWords(issue.number) : deskTitles.since,
    context,
    <>
      {since ? (
        <Difference of={since} link={link} />
      ) : (
        <p>It cannot be told: the records have errors, or git does not have those that were issued.</p>
      )}
      <p>
        What was agreed since stands on <a href={link(pagePaths.agreed)}>Issues and change orders</a>.
      </p>
    </>,
  );
}

/** What leads there. */
export function sinceWords(issue: number): string {
  return `What changed since issue ${issue}`;
}
