import { codeAddress, type CodeSays } from '../core/book/index.js';
import { pagePaths } from './paths.js';

/** What the code on each printed sheet of the book (`issue`), or of a change order (`change`), opens: the page of what was agreed in the owner's book on the
 *  house's site, which says whether the paper is current. The address holds no more than the number and the digest's first digits. Undefined where the house
 *  names no site. */
export function agreedCode(
  { site }: { readonly site?: string },
  of: CodeSays['of'],
  stamp?: CodeSays['stamp'],
): string | undefined {
  return site === undefined ? undefined : codeAddress({ page: `${site}/${agreedAt}`, of, ...(stamp && { stamp }) });
}

/** That page, by its path on the house's site. */
const agreedAt = `book/${pagePaths.agreed}`;

/** Is it that page's path? */
export function isAgreedAt(path: string): boolean {
  return path === agreedAt;
}
