import { once } from './keep.js';

/** What the people of a house write and read: their units, their one currency, the form of their days. */
export interface Locale {
  readonly units: 'customary' | 'metric';
  /** Code of ISO 4217, such as `USD` or `CHF`. */
  readonly currency: string;
  /** Tag of BCP 47 by which days are written, such as `en-GB`; absent: `4 May 2026`. */
  readonly language?: string;
  /** What they call money, beside the words that every house has. */
  readonly moneyWords?: readonly string[];
}

export const usualLocale: Locale = { units: 'customary', currency: 'USD' };

/** Is it a tag of BCP 47 for a language whose form of days is known? */
export function isLanguage(tag: string): boolean {
  try {
    return Intl.DateTimeFormat.supportedLocalesOf(tag).length > 0;
  } catch {
    return false;
  }
}

let inForce = usualLocale;

/** The locale in force. Readers and printers of lengths, areas, money and days ask it, so that none of the hundreds of places which
 *  say a figure has to be told whose house it is. */
export function locale(): Locale {
  return inForce;
}

/** Feet and dollars, in which schemas and help give their examples. */
export function isUsual(): boolean {
  return !isMetric() && inForce.currency === usualLocale.currency;
}

export function isMetric(): boolean {
  return inForce.units === 'metric';
}

/** Puts the locale of the one house that a command works on in force, to the end of the work that it is part of. */
export function speakAs(of: Locale): void {
  inForce = of;
}

/** Does some work in the locale of a house and puts the one before back in force, also when the work fails or takes its time. A
 *  program works on one house at a time: work that takes time must have ended before that on a house of another locale begins. */
export function inLocale<T>(of: Locale, work: () => T): T {
  const before = inForce;
  const after = (): void => {
    inForce = before;
  };
  inForce = of;
  let done: T;
  try {
    done = work();
  } catch (error) {
    after();
    throw error;
  }
  if (done instanceof Promise) return done.finally(after) as T;
  after();
  return done;
}

/** What is worked out when somebody first asks for it, in the locale that is in force now. */
export function later<T>(work: () => T): () => T {
  const of = inForce;
  return once(() => inLocale(of, work));
}

/** Adds parts to an object that are worked out when they are first read, each once. They read as any other property; copied by a spread, they are
 *  worked out then. */
export function withLater<Now extends object, Later extends object>(
  now: Now,
  parts: { readonly [Key in keyof Later]: () => Later[Key] },
): Now & Later {
  for (const key of Object.keys(parts) as (keyof Later)[])
    Object.defineProperty(now, key, { enumerable: true, configurable: true, get: later(parts[key]) });
  return now as Now & Later;
}

/** A copy with some of its parts replaced, in which what is still to be worked out still is. */
export function withParts<T extends object>(of: T, parts: Partial<T>): T {
  const all = { ...Object.getOwnPropertyDescriptors(of), ...Object.getOwnPropertyDescriptors(parts) };
  return Object.defineProperties({}, all) as T;
}
