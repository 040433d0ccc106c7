import { isMetric } from './locale.js';
import { parseLength, printLength } from './length.js';
import { printQuantity } from './amount.js';

const length = /(?:\d+'(?:-\d+(?: \d+\/\d+)?")?|\d+(?: \d+\/\d+)?"|\d+\/\d+")/gu;
const amounts = [
  { words: /([\d,.]+) sq ft/gu, unit: 'sq ft' },
  { words: /([\d,.]+) cu ft/gu, unit: 'cu ft' },
  { words: /([\d,.]+) Btu \/ h/gu, unit: 'Btu / h' },
  { words: /([\d,.]+) lb on a square foot/gu, unit: 'lb / sq ft' },
] as const;

/** Words of the program that have feet, inches and pounds in them, as the house in force reads them: `Cables 4 1/2" apart` is
 *  `Cables 114 mm apart` in a metric house. For the program's own words alone: what people wrote stays as they wrote it. */
export function inHouseWords(text: string): string {
  if (!isMetric()) return text;
  const lengths = text.replace(length, (found) => {
    const reading = parseLength(found);
    return reading.ok ? printLength(reading.value) : found;
  });
  return amounts.reduce(
    (said, { words, unit }) =>
      said.replace(words, (_, digits: string) => printQuantity(Number(digits.replaceAll(',', '')), unit, 0)),
    lengths,
  );
}
