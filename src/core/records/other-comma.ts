import { isMetric } from '../../base/units/index.js';
import type { Notation } from './formats.js';

/** Where decimals follow a comma, or thousands a point, as they do elsewhere: what it is here. A metric house reads both. */
export function otherComma(
  { read }: Notation,
  text: string,
  said: string,
): { readonly why: string; readonly fix: string } | undefined {
  if (isMetric()) return undefined;
  const turned = text.replace(/[.,]/gu, (sign) => (sign === ',' ? '.' : ','));
  const meant = (plain: string): string => `decimals follow a point, thousands may have commas: did you mean ${plain}?`;
  if (/\d(?:\.\d{3})+,\d|\d(?:\.\d{3}){2,}/u.test(text) && read(turned).ok)
    return { why: `'${text}' has points between its thousands`, fix: meant(turned) };
  if (/\d,(?!\d{3}(?!\d))\d/u.test(text) && read(turned).ok)
    return { why: `'${text}' has a comma before its decimals`, fix: meant(turned) };
  const bare = text.replace(/(?<=\d),(?=\d)/gu, '');
  if (bare === text || said.includes('comma') || !read(bare).ok) return undefined;
  return { why: `'${text}' has a comma in the wrong place`, fix: meant(bare) };
}
