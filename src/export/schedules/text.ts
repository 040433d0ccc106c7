import type { Scheduled } from '../../book/index.js';
import { printLength } from '../../units/index.js';
import type { Length } from '../../units/index.js';

export function lengthText(length: Length | undefined): string {
  return length === undefined ? '' : printLength(length);
}

/** What stands, and whether it was chosen: `Flat alder (standard for now)`. */
export function standingText(scheduled: Scheduled | undefined): string {
  if (!scheduled) return '';
  const { standing, name = '' } = scheduled;
  if (standing === 'standard') return `${name} (standard for now)`;
  return standing === 'chosen' ? name : standing;
}

export function supplyText(scheduled: Scheduled | undefined): string {
  return scheduled?.supply === 'owner-furnished' ? 'owner' : scheduled ? 'contractor' : '';
}
