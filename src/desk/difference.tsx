import type { VNode } from 'preact';
import { isTold, type Comparison } from '../core/compare/index.js';
import { roomPath } from '../site/index.js';
import { comparisonSections as parts } from '../table/index.js';
import { BlocksHtml, type Links } from '../write/index.js';
import { deskPaths } from './paths.js';

/** What records say otherwise than others: every change and its money, and what follows from it. `isFolded`: to be opened, beside what is said. `link` leads
 *  from the page to a path of the desk. */
export function Difference({
  of: comparison,
  link,
  level = 2,
  isFolded = false,
}: {
  of: Comparison;
  link: (to: string) => string;
  level?: number;
  isFolded?: boolean;
}): VNode {
  const links: Links = ({ to, id }) =>
    to === 'room'
      ? link(roomPath(id))
      : to === 'record'
        ? `${link(deskPaths.record)}?path=${encodeURIComponent(id)}`
        : undefined;
  const rooms = parts.rooms(comparison.rooms.filter(isTold));
  const others = [parts.days, parts.priceBook, parts.allowances, parts.terms, parts.moved, parts.trades];
  const follows = [...rooms, ...others.flatMap((part) => part(comparison))];
  const agreed = parts.changes(comparison);
  const changes = <BlocksHtml blocks={[...agreed, ...parts.money(comparison)]} links={links} level={level} cards />;
  return (
    <div class="desk-difference">
      {isFolded ? (
        <details>
          <summary>What changes, and its money</summary>
          {changes}
        </details>
      ) : (
        changes
      )}
      {follows.length > 0 && (
        <details open={agreed.length === 0 && !isFolded}>
          <summary>All else that differs, and what follows from it</summary>
          <BlocksHtml blocks={follows} links={links} level={level} cards />
        </details>
      )}
    </div>
  );
}
