import { decimalNumber, figure, fixFor, readDecimal } from './decimal.js';
import { printLength } from './length.js';
import { beyondHouse, mostCounted } from './limits.js';
import { isMetric } from './locale.js';
import { shown, toMetric, unitName } from './metric.js';
import { groupDigits, plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import { stepsOf } from './ticks.js';
import { unitChoices, unitsIn, writtenUnit } from './unit.js';
import type { Area, Length, Unit } from './quantity.js';

/** A counted or measured amount: `24 sq ft`, `8 lin ft`, `1 each`. */
interface Amount {
  readonly amount: number;
  readonly unit: Unit;
}

const pattern = new RegExp(`^(${figure}) ?(.*)$`, 'u');

/** Reads `24 sq ft`, `8 lin ft`, `2.2 m2`, `1 each`, `1 lump`. */
export function parseQuantity(text: string): Reading<Amount> {
  const [, digits = '', unitText = ''] = pattern.exec(plainText(text)) ?? [];
  const amount = readDecimal(digits);
  const [area, run] = [isMetric() ? 'm2' : 'sq ft', unitName('lin ft')];
  if (!amount) {
    const fix = `write a number and a unit, such as ${isMetric() ? `2.2 ${area}` : `24 ${area}`}, 8 ${run} or 1 each`;
    return unread(`'${text}' is not a quantity`, fixFor(digits, fix));
  }
  if (unitText === '')
    return unread(`'${text}' has no unit`, `write ${digits} ${area}, ${digits} ${run} or ${digits} each`);
  const unit = writtenUnit(unitText);
  if (!unit) return unread(`'${unitText}' is not a unit`, `write ${unitChoices()}`);
  const size = decimalNumber(amount) * unitsIn(unit);
  return beyondHouse(text, size, mostCounted) ?? read({ amount: size, unit: unit.unit });
}

/** Reads `32 sq ft` or `3 m2` into square feet. */
export function parseArea(text: string): Reading<Area> {
  const [, digits = '', unitText = ''] = pattern.exec(plainText(text)) ?? [];
  const amount = readDecimal(digits);
  const [own, other] = isMetric() ? ['m2', 'sq ft'] : ['sq ft', 'm2'];
  if (!amount)
    return unread(
      `'${text}' is not an area`,
      fixFor(digits, `write an area such as ${own === 'm2' ? '3 m2' : '32 sq ft or 3 m2'}`),
    );
  if (unitText === '') return unread(`'${text}' has no unit`, `write ${digits} ${own} or ${digits} ${other}`);
  const unit = writtenUnit(unitText);
  if (unit?.unit !== 'sq ft')
    return unread(`'${unitText}' is not a unit of area`, `write ${digits} ${own} or ${digits} ${other}`);
  const area = decimalNumber(amount) * unitsIn(unit);
  return beyondHouse(text, area, mostCounted) ?? read(area as Area);
}

/** `342.5 sq ft`, `1,240 lin ft`, `3 each`: one digit after the point at most, halves away from zero. `31.82 m²` in a metric house. */
export function printQuantity(amount: number, unit: string, digits = 1): string {
  const own = shown(amount, unit, digits);
  return `${printAmount(own.amount, own.digits)} ${own.unit}`;
}

/** The same without its unit, where that stands elsewhere. */
export function printSize(amount: number, unit: string, digits = 1): string {
  const own = shown(amount, unit, digits);
  return printAmount(own.amount, own.digits);
}

/** `342.5 sq ft`. */
export function printArea(area: Area): string {
  return printQuantity(area, 'sq ft');
}

/** `1,466 lb`, whole. */
export function printWeight(pounds: number): string {
  return printQuantity(pounds, 'lb', 0);
}

/** `2.1 lb / sq ft`, `10.3 kg / m²`, `85 lb / each`. */
export function printWeightPer({ pounds, per }: { readonly pounds: number; readonly per: Unit }): string {
  const joined = shown(pounds, `lb / ${per}`, 2);
  if (joined.unit !== `lb / ${per}` || !isMetric())
    return `${printAmount(joined.amount, joined.digits)} ${joined.unit}`;
  return `${printQuantity(pounds, 'lb', 2)} / ${per}`;
}

/** `R-19`, as insulation is labelled; `R 3.35 m² K / W` in a metric house. */
export function printResistance(r: number, digits = 1): string {
  if (!isMetric()) return `R-${printAmount(r, digits)}`;
  return `R ${printQuantity(r, 'sq ft h °F / Btu')}`;
}

/** R of an inch: `R-3.7 for an inch`; in a metric house that of a metre: `27.8 m K / W`. */
export function printResistivity(rPerInch: number): string {
  if (!isMetric()) return `R-${printAmount(rPerInch, 2)} for an inch`;
  return printQuantity(rPerInch, 'sq ft h °F / Btu in');
}

/** An area in the other system, to stand beside the house's own: `31.8 m²`. */
export function printAreaBeside(area: Area): string {
  return isMetric() ? `${printAmount(area, 1)} sq ft` : `${printAmount(toMetric(area, 'sq ft'), 1)} m²`;
}

/** A number for people: thousands set off, `digits` after the point at most, halves away from zero, a true minus. */
export function printAmount(amount: number, digits: number): string {
  const step = 10 ** digits;
  const steps = stepsOf(amount, digits);
  const whole = groupDigits(Math.floor(steps / step).toString());
  const part = digits === 0 ? '' : (steps % step).toString().padStart(digits, '0').replace(/0+$/u, '');
  return `${amount < 0 && steps > 0 ? '−' : ''}${whole}${part === '' ? '' : `.${part}`}`;
}

/** `18 at 12'-0", 24 at 16'-0"`. */
export function printPieces(pieces: readonly { readonly count: number; readonly length: Length }[]): string {
  return pieces.map(({ count, length }) => `${printAmount(count, 0)} at ${printLength(length)}`).join(', ');
}
