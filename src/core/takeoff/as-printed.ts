import { addingUp, asPrinted, fewestDigits, printAmount, printsAs } from '../../base/units/index.js';
import { withWaste } from './arithmetic/index.js';
import type { AssemblyResistance, HeatWay, PlaceQuantity, ResistanceStep, Takeoff } from './takeoff.js';

/** A take-off's figures with so many digits that they hold as printed: places add up to the net, and the net leads through
 *  coats and waste to what is required, which is printed to a tenth. */
export interface PrintedTakeoff {
  readonly digits: number;
  readonly places: readonly PlaceQuantity[];
  readonly gross: number;
  /** What is taken off, all together. */
  readonly less: number;
  readonly net: number;
}

export function takeoffAsPrinted({ places, net, factors, waste, required, unit }: Takeoff): PrintedTakeoff {
  const times = timesOf(factors);
  const isWhole = unit === 'each' || unit === 'lump';
  const digits = fewestDigits(
    1,
    (count) => isWhole || printsAs(withWaste(asPrinted(net, count) * times, waste.percent / 100), required, 1),
  );
  const all = places.map(withRest);
  const terms = addingUp(
    all.flatMap(({ gross, adjustments }) => [gross, ...adjustments.map(({ amount }) => amount)]),
    digits,
  );
  const tidy = (value: number): number => asPrinted(value, digits);
  let at = 0;
  const next = (): number => terms[at++] ?? 0;
  const printed = all.map((place) => {
    const gross = next();
    const adjustments = place.adjustments.map((adjustment) => ({ ...adjustment, amount: next() }));
    return { ...place, gross, adjustments, net: tidy(adjustments.reduce((sum, { amount }) => sum + amount, gross)) };
  });
  const whole = tidy(printed.reduce((sum, { gross }) => sum + gross, 0));
  const rest = tidy(printed.reduce((sum, place) => sum + place.net, 0));
  return { digits, places: printed, gross: whole, less: tidy(whole - rest), net: rest };
}

/** Multipliers between net and required, as one. */
export function timesOf(factors: Takeoff['factors']): number {
  return factors.reduce((product, factor) => product * factor.times, 1);
}

/** Is it done more than once, such as in coats? `2 × 1,440.9 sq ft`, else nothing. */
export function coatsWords({ factors, required, unit }: Pick<Takeoff, 'factors' | 'required' | 'unit'>): string {
  const times = timesOf(factors);
  return times === 1 ? '' : `${printAmount(times, 2)} × ${printAmount(required / times, 1)} ${unit}`;
}

/** Where more is taken off than there is, nothing is left: the rest is said, so that the steps add up. */
function withRest(place: PlaceQuantity): PlaceQuantity {
  const { gross, adjustments, net } = place;
  const rest = net - adjustments.reduce((sum, { amount }) => sum + amount, gross);
  if (Math.abs(rest) < 1e-6) return place;
  const what = 'Taken off twice';
  return { ...place, adjustments: [...adjustments, { what, amount: rest, why: 'no less than nothing is left' }] };
}

/** Resistances with so many digits that the layers of each way add up to it. */
export interface PrintedAssembly {
  readonly digits: number;
  readonly layers: readonly ResistanceStep[];
  readonly ways: readonly { readonly name: string; readonly way: HeatWay }[];
  /** Digits of the transmittance, so that 1 / U is the effective R. */
  readonly digitsOfU: number;
}

export function assemblyAsPrinted(assembly: AssemblyResistance): PrintedAssembly {
  const { layers, cavity, framing, transmittance, effective } = assembly;
  const ways = [
    { name: 'Through the insulation', way: cavity },
    { name: 'Through the framing', way: framing },
  ];
  const digits = fewestDigits(2, (count) =>
    ways.every(({ way: { fill, r } }) => {
      const sum = [...layers, fill].reduce((total, layer) => total + asPrinted(layer.r, count), 0);
      return printsAs(sum, r, count);
    }),
  );
  const digitsOfU = fewestDigits(4, (count) => printsAs(1 / asPrinted(transmittance, count), effective, 2));
  return { digits, layers, ways, digitsOfU };
}
