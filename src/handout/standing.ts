import { printDay } from '../base/units/index.js';
import type { HandoutCover, HandoutPerson } from './handout.js';

/** What a handout says of its own standing, for cover and foot. */
export interface Standing {
  /** `Issue 3`, or `Not issued`. */
  readonly issue: string;
  /** `Issued for construction on 20 April 2026`, or `Records of 20 April 2026`. */
  readonly words: string;
  /** What to do with it; empty when it is issued for construction. */
  readonly limit: string;
}

/** Who a party is and how to reach it; a party without a name is reached by way of the builder. */
export function reachWords({ name, contact, phone, mail }: HandoutPerson): string {
  return [name, contact, phone, mail].filter((part) => part !== undefined).join(', ') || 'by way of the builder';
}

export function standingOf({ stamp, on }: HandoutCover): Standing {
  if (!stamp) {
    return {
      issue: 'Not issued',
      words: `Records of ${printDay(on)}`,
      limit: 'For reading and quoting. Build from an issue for construction only.',
    };
  }
  const limits = {
    pricing: 'For pricing. Build from an issue for construction only.',
    'sign-off': 'For sign-off. Build from an issue for construction only.',
    construction: '',
  };
  return {
    issue: `Issue ${stamp.number}`,
    words: `Issued for ${stamp.purpose} on ${printDay(stamp.date)}`,
    limit: limits[stamp.purpose],
  };
}
