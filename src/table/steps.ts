import {
  assemblyAsPrinted,
  roundingStep,
  takeoffAsPrinted,
  timesOf,
  type AssemblyResistance,
  type Takeoff,
} from '../core/takeoff/index.js';
import { lastDigits, printAmount } from '../base/units/index.js';

/** One step of a quantity's arithmetic. */
export interface TakeoffStep {
  readonly what: string;
  readonly amount: number;
  /** After the point, so that the steps hold as printed. */
  readonly digits: number;
  readonly unit: string;
  readonly why: string;
  /** What the steps before it come to. */
  readonly isSum?: boolean;
}

/** From gross to required: each place, each deduction taken or left, what rounding leaves, factors, waste, what is needed. `needed`: the word for
 *  the last. */
export function takeoffSteps(takeoff: Takeoff, needed = 'Required'): TakeoffStep[] {
  const { factors, waste } = takeoff;
  const { digits, places, net, left, required, unit } = takeoffAsPrinted(takeoff);
  const covered = `${printAmount(net, digits)} ${unit}`;
  return [
    ...places.flatMap((place) => [
      { what: place.name, amount: place.gross, digits, unit, why: place.why ?? '' },
      ...place.adjustments.map(({ what, amount, why }) => ({ what, amount, digits, unit, why })),
    ]),
    ...(left === 0 ? [] : [{ ...roundingStep, amount: left, digits, unit }]),
    { what: 'Net', amount: net, digits, unit, why: '', isSum: true },
    ...factors.map(({ times, why }) => ({
      what: 'Times',
      amount: times,
      digits: 2,
      unit: '×',
      why: `${why}: ${printAmount(times, 2)} × ${covered}`,
    })),
    { what: 'Waste', amount: waste.percent, digits: 2, unit: '%', why: waste.why },
    { what: needed, amount: required, digits: lastDigits(), unit, why: wholeWords(takeoff), isSum: true },
  ];
}

function wholeWords({ net, factors, waste, required, unit }: Takeoff): string {
  const exact = net * timesOf(factors) * (1 + waste.percent / 100);
  return unit === 'each' && Math.abs(required - exact) > 1e-6 ? 'whole pieces' : '';
}

/** `Window W05 0 sq ft (not deducted: not over 32 sq ft)`. */
export function stepWords({ what, amount, digits, unit, why }: TakeoffStep): string {
  return `${what} ${printAmount(amount, digits)} ${unit}${why === '' ? '' : ` (${why})`}`;
}

/** The way from the labelled R to the assembly's own: layers, the two ways for heat by their shares, the result. */
export function assemblySteps(assembly: AssemblyResistance): TakeoffStep[] {
  const { source } = assembly;
  const { transmittance, effective, digits, layers, ways, digitsOfU } = assemblyAsPrinted(assembly);
  return [
    ...layers.map(({ what, r, why }) => ({ what, amount: r, digits, unit: 'R', why })),
    ...ways.flatMap(({ name, way: { share, fill, r } }) => [
      { what: fill.what, amount: fill.r, digits, unit: 'R', why: fill.why },
      {
        what: name,
        amount: r,
        digits,
        unit: 'R',
        why: `layers and this, over ${printAmount(share * 100, 1)} % of the area`,
      },
    ]),
    { what: 'Transmittance', amount: transmittance, digits: digitsOfU, unit: 'U', why: 'each way by its share' },
    { what: 'Effective R', amount: effective, digits: 2, unit: 'R', why: `1 / U; ${source}` },
  ];
}
