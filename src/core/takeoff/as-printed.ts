import {
  asPrinted,
  digitsToTick,
  fewestDigits,
  lastDigits,
  leftByRounding,
  printAmount,
  printQuantity,
  printsAs,
  shown,
  unitName,
} from '../../base/units/index.js';
import { withWaste } from './arithmetic/index.js';
import type { AssemblyResistance, HeatWay, PlaceQuantity, ResistanceStep, Takeoff } from './takeoff.js';

/** A take-off's figures, in the units that the house reads, each its own rounding, with so many digits that the net leads through
 *  coats and waste to what is required, which is printed to a tenth; and with one more where places add up to the net only then. */
export interface PrintedTakeoff {
  /** In the house's units, as all figures here. */
  readonly unit: string;
  readonly required: number;
  readonly digits: number;
  readonly places: readonly PrintedPlace[];
  readonly gross: number;
  /** What is taken off, all together. */
  readonly less: number;
  readonly net: number;
  /** What rounding leaves of the net beside all that the places say; 0 where they add up. */
  readonly left: number;
}

/** `left`: what rounding leaves of its net beside its gross and what is taken off it. */
type PrintedPlace = PlaceQuantity & { readonly left: number };

export function takeoffAsPrinted(takeoff: Takeoff): PrintedTakeoff {
  const { places, net, factors, waste, required, unit } = inHouseUnits(takeoff);
  const last = lastDigits();
  const times = timesOf(factors);
  const isWhole = unit === 'each' || unit === 'lump';
  const leads = (count: number): boolean =>
    isWhole || printsAs(withWaste(asPrinted(net, count) * times, waste.percent / 100), required, last);
  const all = places.map(withRest);
  const gross = sumOf(all.map((place) => place.gross));
  const terms = all.flatMap(termsOf);
  // Of what is taken off, not of the difference of two large figures, whose last digits are noise: a half of a tenth stays one.
  const taken = sumOf(all.flatMap(({ adjustments }) => adjustments.map(({ amount }) => amount)));
  const digits = digitsToTick(
    fewestDigits(last, leads),
    (count) =>
      leads(count) &&
      leftByRounding(terms, net, count) === 0 &&
      leftByRounding([gross, taken], net, count) === 0 &&
      all.every((place) => leftByRounding(termsOf(place), place.net, count) === 0),
  );
  const tidy = (value: number): number => asPrinted(value, digits);
  return {
    unit,
    required,
    digits,
    places: all.map((place) => ({
      ...place,
      gross: tidy(place.gross),
      adjustments: place.adjustments.map((each) => ({ ...each, amount: tidy(each.amount) })),
      net: tidy(place.net),
      left: leftByRounding(termsOf(place), place.net, digits),
    })),
    gross: tidy(gross),
    less: tidy(-taken),
    net: tidy(net),
    left: leftByRounding(terms, net, digits),
  };
}

const sumOf = (terms: readonly number[]): number => terms.reduce((sum, term) => sum + term, 0);

const termsOf = ({ gross, adjustments }: PlaceQuantity): readonly number[] => [
  gross,
  ...adjustments.map(({ amount }) => amount),
];

/** What rounding leaves, said as a step of its own. */
export const roundingStep = { what: 'Rounding', why: 'each figure is rounded by itself' } as const;

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
