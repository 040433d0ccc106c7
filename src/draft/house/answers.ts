import { didYouMean } from '../../base/problem/index.js';
import {
  currency,
  inLocale,
  isCurrency,
  isMetric,
  moneyNumber,
  parseDay,
  parseLength,
  parseMoney,
  printMoney,
  read,
  unread,
  withSign,
  type Cents,
  type Locale,
  type Reading,
} from '../../base/units/index.js';
import { readName } from '../record/name.js';

/** What a person answers about a new house, each as it was typed. */
export interface Typed {
  readonly name: string;
  readonly place: string;
  readonly units: string;
  readonly currency: string;
  readonly zone: string;
  readonly sum: string;
  readonly owner: string;
  readonly builder: string;
  readonly ceiling: string;
  readonly start: string;
}

export type Question = keyof Typed;

/** A new house's answers, read. Texts of sizes and money are as they are to be written. */
export interface HouseAnswers {
  readonly name: string;
  readonly place: string;
  readonly locale: Locale;
  /** Absent while it is not known. */
  readonly zone?: string;
  readonly sum: string;
  readonly owner: string;
  readonly builder: string;
  readonly ceiling: string;
  /** Day of the first milestone. */
  readonly start: string;
}

const units: Readonly<Record<string, Locale['units']>> = {
  feet: 'customary',
  ft: 'customary',
  customary: 'customary',
  metres: 'metric',
  meters: 'metric',
  m: 'metric',
  metric: 'metric',
};

/** Ceilings are no higher than this, in nanometres: 100 ft. */
const highest = 100 * 304_800_000;

/** Whoever decides has a letter in their name: an amount was meant for another question. */
function readPerson(text: string): Reading<string> {
  const name = readName(text);
  if (!name.ok || /\p{L}/u.test(name.value)) return name;
  return unread(`'${text.trim()}' is nobody's name`, 'write a name or a role, such as The owners');
}

/** Reads the answer to one question, in the locale in force; what comes back is how it is to be written. */
export const readTyped: Readonly<Record<Question, (text: string) => Reading<string>>> = {
  name: readName,
  place: readName,
  owner: readPerson,
  builder: readPerson,
  units: (text) => {
    const found = units[text.trim().toLowerCase()];
    return found ? read(found) : unread(`'${text}' is no unit of a house`, 'write feet or metres');
  },
  currency: (text) => {
    const code = text.trim().toUpperCase();
    if (/^[A-Z]{3}$/u.test(code) && isCurrency(code)) return read(code);
    const fix = didYouMean(code, ['USD', 'CAD', 'EUR', 'GBP', 'CHF']) ?? 'write its three letters, such as USD or EUR';
    return unread(`there is no currency '${text}'`, fix);
  },
  zone: (text) => {
    const zone = text.trim().toUpperCase();
    if (zone === '' || zone === 'UNKNOWN') return read('');
    if (/^[0-8][ABC]?$/u.test(zone)) return read(zone);
    return unread(`'${text}' is no climate zone`, 'write it like 5A or 6B; or unknown');
  },
  sum: (text) => {
    if (text.trim() === '') return read(writtenMoney(0 as Cents));
    const bare = /^\d[\d,.' ]*$/u.test(text.trim());
    const sum = parseMoney(bare ? withSign(text.trim()) : text);
    if (!sum.ok) return sum;
    return sum.value < 0 ? unread(`'${text}' is less than nothing`, 'write 0 or more') : read(writtenMoney(sum.value));
  },
  ceiling: (text) => {
    const height = parseLength(text);
    if (!height.ok) return height;
    if (height.value > 0 && height.value <= highest) return read(text.trim().replace(/\s+/gu, ' '));
    return unread(`'${text}' is no height of a ceiling`, `write it like ${usualCeiling()}`);
  },
  start: (text) => parseDay(text),
};

/** An amount as a record has it: as it is printed, but for the thousands where a comma could be read in two ways. */
export function writtenMoney(amount: Cents): string {
  const printed = printMoney(amount);
  const again = parseMoney(printed);
  return again.ok && again.value === amount ? printed : withSign(moneyNumber(amount).toFixed(currency().digits));
}

/** A common height, in the units in force. */
export function usualCeiling(): string {
  return isMetric() ? '2.50 m' : `9'-0"`;
}

/** An answer that cannot be taken. */
export interface Refused {
  readonly question: Question | 'room';
  /** Why, and what to write instead. */
  readonly why: string;
  readonly fix?: string;
}

/** Reads all answers: every one that cannot be taken is told at once. */
export function readAnswers(
  typed: Typed,
):
  { readonly ok: true; readonly answers: HouseAnswers } | { readonly ok: false; readonly refused: readonly Refused[] } {
  const [system, coin] = [readTyped.units(typed.units), readTyped.currency(typed.currency)];
  const locale: Locale = {
    units: system.ok && system.value === 'metric' ? 'metric' : 'customary',
    currency: coin.ok ? coin.value : 'USD',
  };
  return inLocale(locale, () => {
    const refused: Refused[] = [];
    const take = (question: Question): string => {
      const answer = readTyped[question](typed[question]);
      if (answer.ok) return answer.value;
      // Money of a currency that there is not cannot be read either.
      if (question !== 'sum' || coin.ok)
        refused.push({ question, why: answer.why, ...(answer.fix !== undefined && { fix: answer.fix }) });
      return '';
    };
    take('units');
    take('currency');
    const zone = take('zone');
    const answers = {
      name: take('name'),
      place: take('place'),
      locale,
      ...(zone !== '' && { zone }),
      sum: take('sum'),
      owner: take('owner'),
      builder: take('builder'),
      ceiling: take('ceiling'),
      start: take('start'),
    };
    return refused.length === 0 ? { ok: true, answers } : { ok: false, refused };
  });
}
