/** What people write and what they read: lengths, areas, money, rates, days. In: text. Out: exact values, or a reason in
 *  words. Absent: anything that knows a house. */
export * from './keep.js';
export * from './locale.js';
export * from './metric.js';
export * from './quantity.js';
export * from './reading.js';
export * from './feet.js';
export * from './inches.js';
export { decimalNumber, printDecimal, readDecimal } from './decimal.js';
export * from './length.js';
export * from './written-length.js';
export * from './size.js';
export * from './amount.js';
export * from './ticks.js';
export * from './money.js';
export * from './rate.js';
export * from './usage.js';
export * from './percent.js';
export * from './day.js';
export * from './working-days.js';
export * from './pitch.js';
export * from './weight.js';
export * from './bearing.js';
export { currency, isCurrency, namesCurrency, oneCurrency, withSign } from './currency.js';
export * from './words.js';
export * from './in-house-words.js';
export { writtenUnit } from './unit.js';
export { plainText } from './plain-text.js';
