import { joinWords, printDay } from '../base/units/index.js';
import type { HandoutCard, HandoutComing, HandoutCover, HandoutPerson } from './handout.js';

/** What a handout says of its own standing, for cover and foot. */
export interface Standing {
  /** `Issue 3`, or `Not issued`. */
  readonly issue: string;
  /** `Issued for construction on 20 April 2026`, or `Records of 20 April 2026`. */
  readonly words: string;
  /** What to do with it; empty when it is issued for construction. */
  readonly limit: string;
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

/** Is it a role that a trade calls? */
export function isCalled(role: string): boolean {
  return /\b(?:builder|superintendent|site lead|foreman|project manager|architect|designer|engineer)\b/iu.test(role);
}

/** Whom a trade asks, the site first: those of the parties that it calls. */
export function whomToAsk({ people }: HandoutCover): readonly HandoutPerson[] {
  const rank = ({ role }: HandoutPerson): number => {
    const at = [/superintendent|site lead|foreman/iu, /builder|project manager/iu].findIndex((of) => of.test(role));
    return at < 0 ? 2 : at;
  };
  return people.filter(({ role }) => isCalled(role)).toSorted((a, b) => rank(a) - rank(b));
}

/** When it is there: `before Drywall hung, 18 September 2026`, `was due before Foundation, 8 April 2026`. */
export function firstWords({ by, milestone, date, isPast, onlyIf }: HandoutCard['first'][number]): string {
  const due = `${isPast ? 'was due before' : 'before'} ${milestone}${date === undefined ? '' : `, ${printDay(date)}`}`;
  return [by, due, onlyIf.length === 0 ? '' : `if ${ifWords(onlyIf)} is chosen`]
    .filter((part) => part !== '')
    .join('; ');
}

function ifWords(names: readonly string[]): string {
  if (names.length > mostNamed) return `one of ${names.length} products`;
  return joinWords(names, 'or');
}

const mostNamed = 3;

/** `on site by 29 July 2026, for Rough-in starts`, or since when it could be. */
export function nextWords({ milestone, date, isPast }: HandoutComing): { readonly day: string; readonly why: string } {
  const day = date === undefined ? '' : printDay(date);
  return { day: isPast ? `since ${day}` : day, why: milestone };
}
