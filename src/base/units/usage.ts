import { decimalNumber, readDecimal } from './decimal.js';
import { beyondHouse, mostCounted } from './limits.js';
import { isMetric } from './locale.js';
import { fromMetric } from './metric.js';
import { plainText } from './plain-text.js';
import { read, unread, type Reading } from './reading.js';
import { unitChoices, unitsIn, writtenUnit } from './unit.js';
import type { Unit } from './quantity.js';

/** What is used up with a quantity: 380 lin ft for every 1,000 sq ft. */
export interface Usage {
  readonly amount: number;
  /** What it is counted in: `gal`, `lb`, `lin ft`, `each`, `tubes` … as written. */
  readonly unit: string;
  readonly per: number;
  /** What it goes with. `cu ft` is the room that joints leave between pieces. */
  readonly of: Unit | 'cu ft';
}

/** Reads `5 gal / 1,000 sq ft`, `1 each / lin ft`, `110 lb / cu ft`, `0.4 kg / m2`. More than nothing. */
export function parseUsage(text: string): Reading<Usage> {
  const [, amountText = '', unit = '', perText = '', ofText = ''] = pattern.exec(plainText(text)) ?? [];
  const amount = readDecimal(amountText);
  if (!amount || unit === '') {
    const examples = isMetric() ? '0.4 kg / m2 or 1 each / m' : '5 gal / 1,000 sq ft or 1 each / lin ft';
    return unread(`'${text}' does not say how much for what`, `write it like ${examples}`);
  }
  const per = perText === '' ? 1 : decimalOf(perText);
  if (amount.amount <= 0 || per <= 0) return unread(`'${text}' is nothing`, 'write amounts of more than 0');
  const used = writtenUnit(unit);
  const times = decimalNumber(amount) * (used ? unitsIn(used) : 1);
  const beyond = beyondHouse<Usage>(text, Math.max(times, per), mostCounted);
  if (beyond) return beyond;
  const own = { amount: times, unit: used?.unit ?? unit };
  const volume = volumes.find(({ words }) => words.test(ofText));
  if (volume) return read({ ...own, per: per * volume.cubicFeet, of: 'cu ft' });
  const of = writtenUnit(ofText);
  if (!of) {
    const joints = isMetric() ? 'm3' : 'cu ft';
    return unread(`'${ofText}' is not a unit`, `write ${unitChoices()}, or '${joints}' for what fills joints`);
  }
  return read({ ...own, per: per * unitsIn(of), of: of.unit });
}

/** The room of joints. */
const volumes = [
  { words: /^(cu\.? ?ft|ft3|ft³)$/iu, cubicFeet: 1 },
  { words: /^(cu\.? ?m|m3|m³)$/iu, cubicFeet: fromMetric(1, 'cu ft') },
];

const pattern = /^([\d.,]+) ?([\p{L}][\p{L}. ]*?) ?(?:\/|\bper\b) ?([\d.,]*) ?(\S.*)$/u;

function decimalOf(text: string): number {
  const decimal = readDecimal(text);
  return decimal ? decimalNumber(decimal) : 0;
}
