import { isMetric } from './locale.js';

/** A unit of the metric system for one that the program counts in. */
interface MetricUnit {
  readonly unit: string;
  /** So many of it are one of the program's. */
  readonly times: number;
  /** Digits after the point that people read beyond those of the program's unit: a hundredth of a square metre is about a tenth of a
   *  square foot. */
  readonly more: number;
}

const squareMetre = 0.3048 ** 2;
const kilogram = 0.45359237;
const litre = 3.785411784;
/** R in m²·K/W for one in ft²·h·°F/Btu. Source: NIST SP 811 B.8, 1.761 102 E−01. */
const resistance = 0.1761102;

/** Watts for one Btu (international table) an hour. Source: NIST SP 811 B.8, 2.930 711 E−01. */
const watt = 0.29307107;

/** The program counts in the units of the left side and turns them into those of the right for a metric house. Source: NIST SP 811
 *  B.8; foot, pound and US gallon are exact there. */
const metricUnits = {
  'sq ft': { unit: 'm²', times: squareMetre, more: 1 },
  'lin ft': { unit: 'm', times: 0.3048, more: 1 },
  'lin ft of handrail': { unit: 'm of handrail', times: 0.3048, more: 1 },
  'lin ft of cable': { unit: 'm of cable', times: 0.3048, more: 1 },
  ft: { unit: 'm', times: 0.3048, more: 1 },
  in: { unit: 'mm', times: 25.4, more: 0 },
  'cu ft': { unit: 'm³', times: 0.3048 ** 3, more: 1 },
  'board ft': { unit: 'm³', times: 0.3048 ** 3 / 12, more: 2 },
  lb: { unit: 'kg', times: kilogram, more: 0 },
  'lb / sq ft': { unit: 'kg / m²', times: kilogram / squareMetre, more: 0 },
  'lb / lin ft': { unit: 'kg / m', times: kilogram / 0.3048, more: 0 },
  'lb / cu ft': { unit: 'kg / m³', times: kilogram / 0.3048 ** 3, more: 0 },
  gal: { unit: 'L', times: litre, more: 0 },
  'sq ft / gal': { unit: 'm² / L', times: squareMetre / litre, more: 1 },
  'sq ft h °F / Btu': { unit: 'm² K / W', times: resistance, more: 1 },
  'sq ft h °F / Btu in': { unit: 'm K / W', times: resistance / 0.0254, more: 1 },
  'Btu / sq ft h °F': { unit: 'W / m² K', times: 1 / resistance, more: -1 },
  'Btu / h': { unit: 'kW', times: watt / 1000, more: 1 },
  'Btu / h cu ft': { unit: 'W / m³', times: watt / 0.3048 ** 3, more: 0 },
  'sq ft for a foot of corner': { unit: 'm² for a metre of corner', times: 0.3048, more: 1 },
} as const satisfies Readonly<Record<string, MetricUnit>>;

const byUnit: Readonly<Record<string, MetricUnit>> = metricUnits;

type Metered = keyof typeof metricUnits;

/** An amount of the program's unit in the metric one, whatever house is in force: 100 `sq ft` are 9.29… m². */
export function toMetric(amount: number, unit: Metered): number {
  return amount * metricUnits[unit].times;
}

/** An amount in the metric unit in the program's own, whatever house is in force: 1 m² is 10.76… `sq ft`. */
export function fromMetric(amount: number, unit: Metered): number {
  return amount / metricUnits[unit].times;
}

/** An amount as the house in force reads it. */
interface Shown {
  readonly amount: number;
  readonly unit: string;
  readonly digits: number;
}

/** An amount in the unit of the house in force, with the digits that are read: 100 sq ft are 9.29 m² in a metric house. A unit that has no
 *  metric one, such as `each` or `rolls`, stays. */
export function shown(amount: number, unit: string, digits = 1): Shown {
  const metric = isMetric() ? byUnit[unit] : undefined;
  if (!metric) return { amount, unit, digits };
  return { amount: amount * metric.times, unit: metric.unit, digits: Math.max(digits + metric.more, 0) };
}

/** Digits to which a quantity is read: a tenth of a square foot, a hundredth of a square metre. */
export function lastDigits(): number {
  return isMetric() ? 2 : 1;
}

/** `m²` for `sq ft` in a metric house. */
export function unitName(unit: string): string {
  return shown(0, unit).unit;
}

/** A number that was written in the unit of the house in force, in the program's: of an R-value, say. */
export function fromHouse(amount: number, unit: string): number {
  return amount / shown(1, unit).amount;
}

/** How many of the program's unit one of the house's is: 10.76… for `sq ft` in a metric house. */
export function unitSize(unit: string): number {
  return 1 / shown(1, unit).amount;
}
