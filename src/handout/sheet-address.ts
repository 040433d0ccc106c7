import type { HandoutCover } from './handout.js';

/** How much of the digest a printed sheet carries: hexadecimal digits, as many as `current/…svg` tells. */
const digits = 5;

/** What the code on each printed sheet opens: the handout's first page on the house's site, asked for the sheet's issue and how the digest begins
 *  (`?issue=2&digest=1a2b3`; `?issue=none` of what was not issued). `assets/handout.js` there answers. Undefined where the house names no site. */
export function sheetAddress({ site, trade, stamp }: HandoutCover): string | undefined {
  if (site === undefined) return undefined;
  const query = stamp ? `issue=${stamp.number}&digest=${stamp.digest.slice(0, digits)}` : 'issue=none';
  return `${site}/handout/${trade.slug}/index.html?${query}`;
}
