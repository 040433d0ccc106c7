import { shortDigest } from '../base/units/index.js';
import type { Stamp } from '../core/book/index.js';

/** What every sheet says of its standing. A book made from records alone is nobody's agreement. */
export function standingOf(stamp: Stamp | undefined): { readonly standing: string; readonly digest: string } {
  if (!stamp) return { standing: 'Not issued', digest: '–' };
  return { standing: `Issue ${stamp.number}, ${stamp.purpose}`, digest: shortDigest(stamp.digest) };
}
