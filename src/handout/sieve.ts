import type { Gate, Sieved } from '../sheet/index.js';
import { withoutBuilder } from '../core/records/index.js';

/** A whole figure, with its thousands and decimals as any country writes them; `500,-` too. */
const figure = "\\d(?:[\\d.,'’]*\\d)?(?:[.,][-–—])?";

/** A figure in words: 'eleven hundred', 'a thousand and five'. */
const spelt = (() => {
  const tens = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
  const teens = [
    'ten',
    'eleven',
    'twelve',
    'thirteen',
    'fourteen',
    'fifteen',
    'sixteen',
    'seventeen',
    'eighteen',
    'nineteen',
  ];
  const ones = ['an?', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
  const word = [...tens, ...teens, ...ones, 'hundred', 'thousand', 'million', 'and'].join('|');
  return `\\b(?:${word})(?:[\\s-]+(?:${word}))*\\b`;
})();

const code = '(?:USD|CAD|AUD|NZD|EUR|GBP|CHF|JPY|SEK|NOK|DKK|MXN|PLN|CZK)';
/** Coins and notes by name. Not pounds alone: stone is weighed in them. */
const coin = '(?:dollars?|bucks|cents|grand|euros?|yen|quid|francs?|pounds? sterling)';

/** An amount from its first sign to its last: a currency's sign or letters beside a figure, or a figure of coins. */
const amount = new RegExp(
  [
    `(?:${figure}|${spelt})\\s*(?:\\p{Sc}|(?:${code}|${coin})\\b)`,
    `(?:\\p{Sc}|\\b${code}|\\bFr\\.)\\s*[-−+]?\\s*\\.?(?:${figure}|${spelt})`,
  ].join('|'),
  'iu',
);

/** Words of money. `pricing` is not among them: an issue can be for pricing. */
const word =
  /\b(?:re-?)?(?:price[sd]?|cost(?:s|ed|ing|ly)?|allowances?|contract sums?|credit(?:s|ed)?|budget(?:s|ed|ary)?|upgrad(?:e|es|ed|ing)|overages?|mark-?ups?|dollars?|cheap(?:er|est|ly)?|expensive|pay(?:s|ing)?|paid|payments?|invoices?d?|surcharges?|discount(?:s|ed)?|fees?|quoted|deposits?|refund(?:s|ed)?)\b/iu;

const everyAmount = new RegExp(amount.source, 'giu');
const everyWord = new RegExp(word.source, 'giu');

/** As it is read: without what hides between letters. */
function asRead(text: string): string {
  return text
    .normalize('NFKC')
    .replace(/[\u00ad\u200b-\u200d\u2060\ufeff]/gu, '')
    .replace(/\s+/gu, ' ');
}

/** Does the text speak of money? Answers the words that do, or undefined. */
export function moneyWords(text: string): string | undefined {
  const plain = asRead(text);
  return (amount.exec(plain) ?? word.exec(plain))?.[0];
}

/** Prose of a record as a handout may carry it: without what is marked for the builder, and without each sentence that
 *  speaks of money. Markdown stays Markdown; of a list or a table the whole item or row goes. */
export function sieve(text: string): Sieved {
  return sifted(text) as Sieved;
}

/** A name as a handout may carry it. What is built has to be called something: only its words of money go. */
export function sieveName(text: string): Sieved {
  const named = sifted(text);
  if (named !== '' || text === '') return named as Sieved;
  const left = asRead(withoutBuilder(text)).replace(everyAmount, '…').replace(everyWord, '…');
  return (moneyWords(left) === undefined ? left : '…') as Sieved;
}

/** What lets words of records into a trade's cells. */
export const forTrades: Gate<Sieved> = (text, as) => (as === 'name' ? sieveName(text) : sieve(text));

function sifted(text: string): string {
  if (moneyWords(text) === undefined && !text.includes('<!--')) return text;
  return parts(withoutBuilder(text))
    .map((part) => ({ ...part, sentences: part.sentences.filter((one) => moneyWords(one) === undefined) }))
    .filter(({ sentences }) => sentences.length > 0)
    .map(({ sentences, before }) => before + sentences.join(' '))
    .join('')
    .trim();
}

/** The sentences that `sieve` leaves out because they speak of money. */
export function sievedOut(text: string): readonly { readonly sentence: string; readonly word: string }[] {
  return parts(withoutBuilder(text)).flatMap(({ sentences }) =>
    sentences.flatMap((sentence) => {
      const found = moneyWords(sentence);
      return found === undefined ? [] : [{ sentence, word: found }];
    }),
  );
}

interface Part {
  /** What stands between it and the part before. */
  readonly before: string;
  readonly sentences: readonly string[];
}

/** Paragraphs as sentences; items, rows and headings as one each. */
function parts(text: string): readonly Part[] {
  return text
    .split(/\n[ \t]*\n\s*/u)
    .filter((block) => block.trim() !== '')
    .flatMap((block) => {
      const lines = items(block);
      if (lines.length > 1 || isItem(block))
        return lines.map((line, index) => ({ before: index === 0 ? '\n\n' : '\n', sentences: [line] }));
      return [{ before: '\n\n', sentences: sentencesOf(block) }];
    });
}

const isItem = (line: string): boolean => /^\s*(?:[-*+]\s|\d+[.)]\s|\||#{1,6}\s|>|```|~~~)/u.test(line);

/** A block by its items: a line that starts none belongs to the one before. */
function items(block: string): readonly string[] {
  if (!block.split('\n').some(isItem)) return [block];
  const found: string[] = [];
  for (const line of block.split('\n')) {
    const last = found.length - 1;
    if (last >= 0 && !isItem(line)) found[last] = `${found[last]}\n${line}`;
    else found.push(line);
  }
  return found;
}

const segments = new Intl.Segmenter('en', { granularity: 'sentence' });

function sentencesOf(paragraph: string): readonly string[] {
  return [...segments.segment(paragraph.replace(/\s*\n\s*/gu, ' '))]
    .map(({ segment }) => segment.trim())
    .filter((sentence) => sentence !== '');
}
