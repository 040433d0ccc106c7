import {
  addingUp,
  asPrinted,
  fewestDigits,
  lastDigits,
  printAmount,
  printQuantity,
  printsAs,
  shown,
  unitName,
} from '../../base/units/index.js';
import { withWaste } from './arithmetic/index.js';
import type { AssemblyResistance, HeatWay, PlaceQuantity, ResistanceStep, Takeoff } from './takeoff.js';

/** A take-off's figures, in the units that the house reads, with so many digits that they hold as printed: places add up to the net, and the net leads through
 *  coats and waste to what is required, which is printed to a tenth. */
export interface PrintedTakeoff {
  /** In the house's units, as all figures here. */
  readonly unit: string;
  readonly required: number;
  readonly digits: number;
  readonly places: readonly PlaceQuantity[];
  readonly gross: number;
  /** What is taken off, all together. */
  readonly less: number;
  readonly net: number;
}

export function takeoffAsPrinted(takeoff: Takeoff): PrintedTakeoff {
  const { places, net, factors, waste, required, unit } = inHouseUnits(takeoff);
  const last = lastDigits();
  const times = timesOf(factors);
  const isWhole = unit === 'each' || unit === 'lump';
  const digits = fewestDigits(
    last,
    (count) => isWhole || printsAs(withWaste(asPrinted(net, count) * times, waste.percent / 100), required, last),
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
  return { unit, required, digits, places: printed, gross: whole, less: tidy(whole - rest), net: rest };
}

type InHouse = Pick<Takeoff, 'places' | 'net' | 'factors' | 'waste' | 'required'> & { readonly unit: string };

function inHouseUnits({ places, net, factors, waste, required, unit }: Takeoff): InHouse {
  const own = (amount: number): number => shown(amount, unit).amount;
  return {
    places: places.map((place) => ({
      ...place,
      gross: own(place.gross),
      net: own(place.net),
      adjustments: place.adjustments.map((each) => ({ ...each, amount: own(each.amount) })),
    })),
    net: own(net),
    factors,
    waste,
    required: own(required),
    unit: unitName(unit),
  };
}

/** Multipliers between net and required, as one. */
export function timesOf(factors: Takeoff['factors']): number {
  return factors.reduce((product, factor) => product * factor.times, 1);
}

/** Is it done more than once, such as in coats? `2 × 1,440.9 sq ft`, else nothing. */
export function coatsWords({ factors, required, unit }: Pick<Takeoff, 'factors' | 'required' | 'unit'>): string {
  const times = timesOf(factors);
  return times === 1 ? '' : `${printAmount(times, 2)} × ${printQuantity(required / times, unit)}`;
}

/** Where more is taken off than there is, nothing is left: the rest is said, so that the steps add up. */
function withRest(place: PlaceQuantity): PlaceQuantity {
  const { gross, adjustments, net } = place;
  const rest = net - adjustments.reduce((sum, { amount }) => sum + amount, gross);
  if (Math.abs(rest) < 1e-6) return place;
  const what = 'Taken off twice';
  return { ...place, adjustments: [...adjustments, { what, amount: rest, why: 'no less than nothing is left' }] };
}

/** Resistances in the house's units with so many digits that the layers of each way add up to it. */
export interface PrintedAssembly {
  readonly transmittance: number;
  readonly effective: number;
  readonly digits: number;
  readonly layers: readonly ResistanceStep[];
  readonly ways: readonly { readonly name: string; readonly way: HeatWay }[];
  /** Digits of the transmittance, so that 1 / U is the effective R. */
  readonly digitsOfU: number;
}

export function assemblyAsPrinted(assembly: AssemblyResistance): PrintedAssembly {
  const own = (r: number): number => shown(r, 'sq ft h °F / Btu').amount;
  const inHouse = <Step extends ResistanceStep>(step: Step): Step => ({ ...step, r: own(step.r) });
  const layers = assembly.layers.map(inHouse);
  const way = ({ fill, r, ...rest }: HeatWay): HeatWay => ({ ...rest, fill: inHouse(fill), r: own(r) });
  const [transmittance, effective] = [1 / own(1 / assembly.transmittance), own(assembly.effective)];
  const ways = [
    { name: 'Through the insulation', way: way(assembly.cavity) },
    { name: 'Through the framing', way: way(assembly.framing) },
  ];
  const digits = fewestDigits(2, (count) =>
    ways.every(({ way: { fill, r } }) => {
      const sum = [...layers, fill].reduce((total, layer) => total + asPrinted(layer.r, count), 0);
      return printsAs(sum, r, count);
    }),
  );
  const digitsOfU = fewestDigits(4, (count) => printsAs(1 / asPrinted(transmittance, count), effective, 2));
  return { transmittance, effective, digits, layers, ways, digitsOfU };
}
