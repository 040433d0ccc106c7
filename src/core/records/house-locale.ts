import type { Source } from '../model/index.js';
import { isCurrency, isLanguage, usualLocale, type Locale } from '../../base/units/index.js';
import { readFrontMatter } from './front-matter.js';

/** The locale that a house's record asks for, as far as it can be read: other records are read in it. Where its YAML is broken its lines
 *  still say it, so that not every amount of the house becomes a problem. */
export function localeOfHouse(house: Source | undefined): Locale {
  if (!house) return localeOfData();
  const data = readFrontMatter(house).value?.data;
  if (data) return localeOfData(data);
  const lines = [...house.text.matchAll(/^(units|currency|language):[ \t]*["']?([A-Za-z-]+)/gmu)];
  return localeOfData(Object.fromEntries(lines.map(([, key = '', value = '']) => [key, value])));
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
