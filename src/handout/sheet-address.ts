import { codeAddress } from '../core/book/index.js';
import type { HandoutCover } from './handout.js';

/** What the code on each printed sheet opens: the handout's first page on the house's site, where `assets/handout.js` answers. Undefined where the house
 *  names no site. */
export function sheetAddress({ site, trade, stamp }: HandoutCover): string | undefined {
  if (site === undefined) return undefined;
  return codeAddress({ page: `${site}/${firstPage(trade.slug)}`, of: 'issue', ...(stamp && { stamp }) });
}

/** A handout's first page, by its path on the house's site. */
function firstPage(slug: string): string {
  return `handout/${slug}/index.html`;
}

/** The trade whose first page stands at a path of the house's site, by its slug; undefined for any other path. */
export function tradeAt(path: string): string | undefined {
  const slug = /^handout\/([a-z0-9-]{1,80})\//u.exec(path)?.[1];
  return slug !== undefined && path === firstPage(slug) ? slug : undefined;
}
