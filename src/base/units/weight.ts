import { decimalNumber, fixFor, readDecimal } from './decimal.js';
import { beyondHouse, mostCounted } from './limits.js';
import { isMetric } from './locale.js';
import { fromMetric } from './metric.js';
import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import { unitChoices, unitsIn, writtenUnit } from './unit.js';
import type { Unit } from './quantity.js';

/** Pounds for one unit of what is installed. */
interface UnitWeight {
  readonly pounds: number;
  readonly per: Unit;
}

/** Reads `2.1 lb / sq ft`, `85 lb / each`, `38 kg / each`. */
export function parseWeight(text: string): Reading<UnitWeight> {
  const [, digits = '', mass = '', unitText = ''] =
    /^([\d.,]+) ?([a-z]*)\.? ?(?:\/|per\b)? ?(.*)$/iu.exec(plainText(text)) ?? [];
  const amount = readDecimal(digits);
  const [pound, area] = isMetric() ? ['kg', 'm2'] : ['lb', 'sq ft'];
  if (!amount) {
    const examples = isMetric() ? '10.5 kg / m2 or 38 kg / each' : '2.1 lb / sq ft or 85 lb / each';
    return unread(`'${text}' is not a weight`, fixFor(digits, `write a weight for a unit, such as ${examples}`));
  }
  const factor = /^(lbs?|pounds?)$/iu.test(mass) ? 1 : /^kg$/iu.test(mass) ? fromMetric(1, 'lb') : undefined;
  if (factor === undefined)
    return unread(
      `'${text}' does not say ${isMetric() ? 'kilograms' : 'pounds'}`,
      `write ${digits} ${pound} / ${unitText || area}`,
    );
  if (unitText === '')
    return unread(`'${text}' does not say for what`, `write ${digits} ${mass} / ${area} or ${digits} ${mass} / each`);
  const per = writtenUnit(unitText);
  if (!per) return unread(`'${unitText}' is not a unit`, `write ${unitChoices()}`);
  const pounds = (decimalNumber(amount) * factor) / unitsIn(per);
  return beyondHouse(text, pounds, mostCounted) ?? read({ pounds, per: per.unit });
}
