import { locale } from '../base/units/index.js';
import { coins, currencyCodes, moneyWordsOf } from './money-words.js';

/** A whole figure, with its thousands and decimals as any country writes them; `500,-` too. */
const figure = "\\d(?:[\\d.,'’ ]*\\d)?(?:[.,][-–—])?";

/** A figure in words: 'eleven hundred', 'a thousand and five'. */
const spelt = (() => {
  const tens = 'twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety';
  const teens = 'ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen';
  const ones = 'an?|one|two|three|four|five|six|seven|eight|nine';
  const word = `${tens}|${teens}|${ones}|hundred|thousand|million|half|few|couple`;
  return `\\b(?:${word})(?:[\\s-]+(?:${word}|and|of))*\\b`;
})();

const big = '(?:\\w+[\\s-]+)?(?:hundred|thousand)';

const code = `(?:${currencyCodes.join('|')})`;
const coin = `(?:${coins.join('|')})`;

/** What follows a figure that is a quantity. */
const unit =
  '\\s*(?:%|°|["\'′″’”×²³]|(?:per ?cent|percent|x|by|in(?! (?:total|all|full)\\b)|inch(?:es)?|ft|feet|foot|sq|square|lin|lineal|linear|cu|cubic|lbs?|pounds?|oz|ounces?|mm|cm|m|m[23]|km|kg|g|gal(?:lons?)?|l|lit(?:er|re)s?|ml|psi|psf|kPa|MPa|Pa|kN|N|Nm|Btu|W|watts?|kW|kWh|V|volts?|amps?|Hz|K|lm|lumens|lux|fc|mils?|gauge|ga|hours?|hrs?|h|days?|weeks?|min(?:utes)?|sec(?:onds)?|s|years?|cycles|cfm|gpm|perms?|dB|degrees|board|bd|am|pm|metres?|meters?|millimet(?:er|re)s?|deg)(?![\\p{L}\\p{N}]))';
/** A figure joined to one that has the unit: '12.50 × 3.20 m', '1.20 to 1.40 m', '2.44-2.50 m'. */
const joinedUnit = `\\s*(?:[-–—x×+/]|to|by|and|or)\\s*\\d[\\d.,]*${unit}`;
/** Words before a figure that say that it is no sum. */
const named =
  '(?<!\\b(?:sections?|standards?|astm|ansi|iso|en|din|class|factors?|coefficient|friction|values?|shgc|ratio|tables?|figures?|version|part|chapter|clause|model|type|no\\.|specific gravity)\\s(?:[a-z]{1,3}\\s){0,2}[a-z]?)';
const free = "(?<![\\p{L}\\p{N}.,'’:/#-])";
const ended = "(?![\\p{L}\\p{N}]|[.,'’/:-]\\d)";
/** A figure with two decimals and no unit; less than one is a coefficient unless it is of each. */
const twoDecimals = `${named}${free}(?!0[.,]\\d\\d(?!\\s*(?:each|ea\\b|per\\b|a\\b|/)))\\d{1,3}(?:[., '’]?\\d{3})*[.,]\\d\\d${ended}(?!${unit}|${joinedUnit})`;
/** Thousands parted by a comma, without what is counted: '1,250', '1,250 more', not '1,250 screws'. */
const thousands = `${named}${free}\\d{1,3}(?:[,'’]\\d{3})+${ended}(?!${unit}|${joinedUnit})(?=\\s*(?:$|[.,;:!?)\\]|]|(?:for|more|less|extra|each|per|on|in|to|total|all|plus|or|and|is|was|net|gross|over|under|above|below|than|if|installed|delivered|instead|a|an|the)(?![\\p{L}])))`;

/** An amount from its first sign to its last. */
const amounts = [
  `(?:${figure}|${spelt})\\s*(?:\\p{Sc}|${coin}(?![\\p{L}\\p{N}]))`,
  `(?:\\p{Sc}|(?<![\\p{L}])Frs?\\.)\\s*[-−+~]?\\s*\\.?(?:${figure}|${spelt})`,
  // Alone in a cell, say; in a word it is no sign of money.
  '(?<![\\p{L}])\\p{Sc}(?![\\p{L}])',
  '\\d[.,][-–—](?![\\p{L}\\p{N}])',
  // A grand room is none.
  '(?:\\d|\\b(?:two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|half a))[\\s-]+grand(?![\\p{L}])',
  '\\ba grand (?:more|less|extra|cheaper|over|each|all)\\b',
  `\\b(?:${big})[\\s-]+(?:more|extra|less)(?![\\p{L}])`,
  twoDecimals,
  thousands,
].join('|');

/** Small k's are thousands; a big one is a light's colour. */
const coded = [
  `(?:${figure})\\s*${code}(?![\\p{L}\\p{N}])`,
  `(?<![\\p{L}\\p{N}])${code}\\s*[-−+~]?\\s*\\.?(?:${figure})`,
  `${spelt}\\s+${code}(?![\\p{L}\\p{N}])`,
  '(?<![\\p{L}\\p{N}.])\\d+(?:[.,]\\d+)?k(?![\\p{L}\\p{N}])',
].join('|');

/** A word of the lists as an expression; `*` is any letters. */
const expression = (word: string): string => word.replaceAll('*', '\\p{L}*').replaceAll(/[ _]/gu, '[\\s-]+');

const wordsIn = (words: readonly string[]): string =>
  `(?<![\\p{L}\\p{N}])(?:${words.map(expression).join('|')})(?![\\p{L}\\p{N}])`;

const compiled = new WeakMap<readonly string[], RegExp>();

/** The words of the house in force, as its record lists them: read as prose is read, and nothing in them is an expression but `*`. */
function wordsOfHouse(): RegExp | undefined {
  const { moneyWords } = locale();
  if (!moneyWords) return undefined;
  const known = compiled.get(moneyWords);
  if (known) return known;
  const plain = moneyWords.map((word) => asRead(word).replace(/[.+?^${}()|[\]\\/]/gu, '\\$&'));
  const words = new RegExp(wordsIn(plain), 'giu');
  compiled.set(moneyWords, words);
  return words;
}

/** Amounts before words: they say more. Codes are read as they are written. */
const each: readonly (readonly [string, string])[] = [
  [coded, ''],
  [amounts, 'i'],
  [wordsIn(Object.values(moneyWordsOf).flat()), 'i'],
];
const first = each.map(([source, flags]) => new RegExp(source, `${flags}u`));
const every = each.map(([source, flags]) => new RegExp(source, `${flags}gu`));

const lookalikes: Readonly<Record<string, string>> = Object.fromEntries(
  [...'аaеeоoрpсcхxуyіiѕsԁdӏlνvοoαaερpтtмmкkнhвb'.matchAll(/(.)([a-z])/gu)].map(({ 1: from = '', 2: to = '' }) => [
    from,
    to,
  ]),
);

/** As it is read: digits and letters plain, without what hides between them, letters set apart put together. */
export function asRead(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/[\p{M}\p{Cf}\p{Cc}\u034f\u115f\u1160\u3164\uffa0]/gu, (sign) => (/\s/u.test(sign) ? ' ' : ''))
    .replace(/[\u0370-\u04ff]/gu, (letter) => lookalikes[letter] ?? letter)
    .replace(/(?<![\p{L}\p{N}])\p{L}(?:([ ._*-])\p{L}(?:\1\p{L}){2,})(?![\p{L}\p{N}])/gu, (apart) =>
      apart.replace(/[ ._*-]/gu, ''),
    )
    .replace(/\s+/gu, ' ')
    .trim();
}

/** The words of plain text that speak of money, or undefined. */
export function moneyIn(plain: string): string | undefined {
  const read = asRead(plain);
  for (const one of first) {
    const found = one.exec(read);
    if (found) return found[0];
  }
  const own = wordsOfHouse();
  return own && read.match(own)?.[0];
}

/** Plain text with what speaks of money replaced. */
export function withoutMoney(plain: string): string {
  const own = wordsOfHouse();
  return [...every, ...(own ? [own] : [])].reduce((text, one) => text.replace(one, '…'), asRead(plain));
}
