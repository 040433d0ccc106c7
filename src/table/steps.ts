import type { AssemblyResistance, Takeoff } from '../core/takeoff/index.js';
import { printAmount } from '../base/units/index.js';

/** One step of a quantity's arithmetic. */
interface TakeoffStep {
  readonly what: string;
  readonly amount: number;
  readonly unit: string;
  readonly why: string;
}

/** From gross to required: each place, each deduction taken or left, factors, waste, what is needed. */
export function takeoffSteps({ places, net, factors, waste, required, unit }: Takeoff): TakeoffStep[] {
  return [
    ...places.flatMap((place) => [
      { what: place.name, amount: place.gross, unit, why: place.why ?? '' },
      ...place.adjustments.map(({ what, amount, why }) => ({ what, amount, unit, why })),
    ]),
    { what: 'Net', amount: net, unit, why: '' },
    ...factors.map(({ times, why }) => ({ what: 'Times', amount: times, unit: '×', why })),
    { what: 'Waste', amount: waste.percent, unit: '%', why: waste.why },
    { what: 'Required', amount: required, unit, why: '' },
  ];
}

/** `Window W05 0 sq ft (not deducted: not over 32 sq ft)`. */
export function stepWords({ what, amount, unit, why }: TakeoffStep): string {
  return `${what} ${printAmount(amount, 1)} ${unit}${why === '' ? '' : ` (${why})`}`;
}

/** The way from the labelled R to the assembly's own: layers, the two ways for heat by their shares, the result. */
export function assemblySteps(assembly: AssemblyResistance): TakeoffStep[] {
  const { layers, cavity, framing, transmittance, effective, source } = assembly;
  const ways = [
    { name: 'Through the insulation', way: cavity },
    { name: 'Through the framing', way: framing },
  ];
  return [
    ...layers.map(({ what, r, why }) => ({ what, amount: r, unit: 'R', why })),
    ...ways.flatMap(({ name, way: { share, fill, r } }) => [
      { what: fill.what, amount: fill.r, unit: 'R', why: fill.why },
      { what: name, amount: r, unit: 'R', why: `layers and this, over ${printAmount(share * 100, 1)} % of the area` },
    ]),
    { what: 'Transmittance', amount: transmittance, unit: 'U', why: 'each way by its share' },
    { what: 'Effective R', amount: effective, unit: 'R', why: `1 / U; ${source}` },
  ];
}
