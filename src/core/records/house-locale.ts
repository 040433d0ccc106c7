import type { Source } from '../model/index.js';
import { isCurrency, isLanguage, usualLocale, type Locale } from '../../base/units/index.js';
import { readFrontMatter } from './front-matter.js';

/** The locale that a house's record asks for, as far as it can be read: other records are read in it. */
export function localeOfHouse(house: Source | undefined): Locale {
  return localeOfData(house && readFrontMatter(house).value?.data);
}

/** The same, of its front matter. */
export function localeOfData(house: Readonly<Record<string, unknown>> = {}): Locale {
  const { units, currency, language } = house;
  return {
    units: units === 'metric' ? units : 'customary',
    currency: typeof currency === 'string' && isCurrency(currency) ? currency : usualLocale.currency,
    ...(typeof language === 'string' && isLanguage(language) && { language }),
  };
}
