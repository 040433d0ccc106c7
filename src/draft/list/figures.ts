import type { ListUnit, PriceList } from '../../core/model/index.js';
import {
  currency,
  isMetric,
  namesCurrency,
  parseDays,
  plainText,
  printDecimal,
  read,
  unread,
  withSign,
  writtenUnit,
  type Decimal,
  type Reading,
} from '../../base/units/index.js';
import type { Cell } from './grid.js';

/** Digits after the point of a number that a workbook computed: what lies behind is its own rounding. */
const computedDigits = 4;

/** A figure of a list, by what it says stands before its decimals. Never negative. */
export function readFigure(cell: Cell, decimals: PriceList['decimals']): Reading<Decimal> {
  if (typeof cell === 'number') return ofNumber(cell);
  const written = plainText(cell);
  // `12,-` is twelve and no cents.
  if (/^[-(]|(?<![.,])-$/u.test(written))
    return unread(`'${cell}' is less than nothing`, 'a price is more than nothing');
  const figure = figureOf(written, decimals);
  if (figure) return read(figure);
  const other = decimals === 'point' ? 'comma' : 'point';
  const fix = figureOf(written, other)
    ? `write it with a decimal ${decimals}; or, if all of the list is so, decimals: ${other} in its record`
    : 'write digits, or name the row under leave-out';
  return unread(`'${cell}' is not a figure with a decimal ${decimals}`, fix);
}

function figureOf(written: string, decimals: PriceList['decimals']): Decimal | undefined {
  const [group, point] = decimals === 'point' ? [',', '.'] : ['.', ','];
  const form = new RegExp(`^(\\d+|\\d{1,3}(?:[${group}]\\d{3})+)(?:[${point}](\\d{1,6}|-+))?$`, 'u');
  const [, whole, part = ''] = form.exec(written.replace(/(?<=\d)[ '](?=\d{3}(?!\d))/gu, '')) ?? [];
  if (whole === undefined) return undefined;
  const digits = part.replace(/-/gu, '');
  const amount = Number(`${whole.replaceAll(group, '')}${digits}`);
  return Number.isSafeInteger(amount) ? { amount, scale: digits.length } : undefined;
}

function ofNumber(number: number): Reading<Decimal> {
  if (number < 0) return unread(`${number} is less than nothing`, 'a price is more than nothing');
  const amount = Math.round(number * 10 ** computedDigits);
  return Number.isSafeInteger(amount)
    ? read({ amount, scale: computedDigits })
    : unread(`${number} has too many digits`);
}

/** A price as the list has it: its figure, and what it is for where that stands behind it. */
export function readPrice(
  cell: Cell,
  decimals: PriceList['decimals'],
): Reading<{ readonly figure: Decimal; readonly unit: string }> {
  if (cell === '') return unread('there is no price', 'write one, or name the row under leave-out');
  const [amount = '', unit = ''] = typeof cell === 'number' ? [cell] : cell.split(/\/|\bper\b/iu, 2);
  const bare = typeof amount === 'number' ? amount : withoutSign(amount);
  const [, figures = '', word = ''] = (typeof bare === 'string' && /^([\d.,' ]*\d) *(\p{L}.*)$/u.exec(bare)) || [];
  if (word !== '' && !namesCurrency(String(cell)))
    return unread(
      `'${cell}' is no price: nothing stands between the figure and '${word}'`,
      `write ${figures} / ${word}; where it is what a pack holds, name another head under columns.price`,
    );
  if (typeof bare === 'string' && /[\p{L}\p{Sc}]/u.test(bare))
    return /\d/u.test(bare)
      ? unread(
          `'${cell}' is no price in ${currency().code}`,
          `write it in ${currency().code}, the house's one currency`,
        )
      : unread(`'${cell}' is no price`, 'ask the supplier, or name the row under leave-out');
  const figure = readFigure(bare, decimals);
  if (!figure.ok) return figure;
  if (figure.value.amount === 0)
    return unread(`'${cell}' is a price of nothing`, 'ask the supplier, or name the row under leave-out');
  return read({ figure: figure.value, unit: String(unit).trim() });
}

/** An amount without the house's own sign or code, before or behind it. */
function withoutSign(amount: string): string {
  const { sign, code } = currency();
  const written = plainText(amount);
  const own = [sign, code].find((one) => written.startsWith(one) || written.endsWith(one));
  if (own === undefined) return written;
  return (written.startsWith(own) ? written.slice(own.length) : written.slice(0, -own.length)).trim();
}

/** The unit that a word of a list means: what the record says, or what it means anywhere. */
export function readUnit(word: string, units: PriceList['units']): Reading<ListUnit> {
  const own = Object.entries(units).find(([name]) => name.toLowerCase() === word.trim().toLowerCase());
  if (own) return read(own[1]);
  const known = writtenUnit(word.replace(/^(?:\/|per\b) */iu, ''));
  if (known) return read(known.metric ? metricUnit(known.unit) : known.unit);
  return unread(
    `'${word}' is not a unit that is known`,
    `say under units which of ours it means, such as ${word.trim()}: ${isMetric() ? 'm2' : 'sq ft'}; or name the row under leave-out`,
  );
}

function metricUnit(unit: string): ListUnit {
  return unit === 'sq ft' ? 'm2' : 'm';
}

/** `$7.40 / sq ft`, as records write it. Thousands are not set off: in a metric house a comma there could be read in two ways. */
export function rateText(figure: Decimal, unit: ListUnit): string {
  return `${withSign(amountText(figure))} / ${unit}`;
}

function amountText(figure: Decimal): string {
  const digits = printDecimal(figure);
  return digits.includes('.') ? printDecimal(figure, currency().digits) : digits;
}

/** `20 sq ft`. */
export function quantityText(figure: Decimal, unit: ListUnit): string {
  return `${printDecimal(figure)} ${unit}`;
}

/** Words of lists for weeks, days and what is there already. Source: from memory, of lists in English and German. */
function leadWords(written: string): string {
  if (/^(?:in stock|stock|stocked|(?:ab|auf|am) lager|lager|lagerware|sofort)$/iu.test(written)) return '0 days';
  return written
    .replace(/(?<=\d) ?(?:wks?|woche|wochen|wo)\.?$/iu, ' weeks')
    .replace(/(?<=\d) ?(?:dys?|d|tage?|werktage?|at)\.?$/iu, ' days');
}

/** A lead time as records write it; of a range the longer one, of what is in stock none. */
export function readLead(cell: Cell, leadIn: PriceList['leadIn']): Reading<string> {
  const written = leadWords(plainText(String(cell)).replace(/^\d+ ?- ?(?=\d)/u, ''));
  if (!/^\d+$/u.test(written)) {
    const days = parseDays(written);
    return days.ok ? read(written) : unread(days.why, days.fix ?? 'write such as 4 weeks');
  }
  return leadIn === undefined
    ? unread(`'${cell}' has no unit`, "write lead-in: days or lead-in: weeks in the price list's record")
    : read(`${Number(written)} ${leadIn}`);
}
