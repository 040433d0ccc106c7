import { factOf } from '../fact/index.js';
import type { Convention, Option } from '../model/index.js';
import {
  asPrinted,
  feet,
  fewestDigits,
  printAmount,
  printLength,
  printsAs,
  type Area,
  type Length,
  isMetric,
  lastDigits,
  printArea,
  printQuantity,
  unitName,
  unitSize,
} from '../../base/units/index.js';
import { timesOf } from './as-printed.js';
import { boardFootFactor, boardLength, paintFor, sheetOrder, withWaste } from './arithmetic/index.js';
import type { Takeoff, TradeCount } from './takeoff.js';

/** An area to be counted. */
export interface CountedArea {
  /** Net area of walls and the like, and of ceilings: a handbook counts their sheets apart. */
  readonly net: readonly Area[];
  /** Coats or layers. */
  readonly times: number;
  /** A share: 0.08 for 8 %. */
  readonly waste: number;
  /** Whole pieces are counted for the house, where they are bought. */
  readonly whole: boolean;
}

/** An area as its trade counts it; empty where the category's record names no way or the option lacks a figure. */
export function countsOf({ counted }: Convention, option: Option, area: CountedArea): readonly TradeCount[] {
  switch (counted) {
    case 'boards':
      return boards(option, area);
    case 'sheets':
      return sheets(option, area);
    case 'gallons':
      return gallons(option, area);
    case undefined:
      return [];
  }
}

/** The same for the whole house: all places of one part of an option together. */
export function poolCounts(rule: Convention, option: Option, takeoffs: readonly Takeoff[]): readonly TradeCount[] {
  if (rule.counted === undefined) return addCounts(takeoffs.flatMap(({ counts = [] }) => counts));
  const areas = takeoffs.flatMap(({ places, factors }) => {
    const times = timesOf(factors);
    return places.map(({ place, net }) => ({ ceiling: place === 'ceiling', area: net * times }));
  });
  const sum = (list: typeof areas) => list.reduce((total, { area }) => total + area, 0) as Area;
  const [walls, ceilings] = [sum(areas.filter((one) => !one.ceiling)), sum(areas.filter((one) => one.ceiling))];
  if (walls + ceilings === 0) return [];
  const required = takeoffs.reduce((total, takeoff) => total + takeoff.required, 0);
  return countsOf(rule, option, {
    net: [walls, ceilings].filter((area) => area > 0),
    times: 1,
    waste: required / (walls + ceilings) - 1,
    whole: true,
  });
}

/** Counts that a convention makes of each selection, by unit. */
function addCounts(counts: readonly TradeCount[]): readonly TradeCount[] {
  const byUnit = new Map<string, TradeCount>();
  for (const count of counts) {
    const before = byUnit.get(count.unit);
    if (!before) byUnit.set(count.unit, count);
    else
      byUnit.set(count.unit, {
        ...before,
        amount: before.amount + count.amount,
        ...(before.whole !== undefined && count.whole !== undefined && { whole: before.whole + count.whole }),
        why: `${before.why}; ${count.why}`,
      });
  }
  return [...byUnit.values()];
}

function gallons(option: Option, { net, times, waste, whole }: CountedArea): readonly TradeCount[] {
  const spread = factOf(option, 'paint', 'coverage');
  if (spread === undefined || spread <= 0) return [];
  const needed = paintFor(withWaste(total(net), waste) as Area, times, spread);
  return [
    {
      unit: 'gal',
      amount: needed.gallons,
      // Cans are of a gallon; litres come in cans of any size.
      ...(whole && !isMetric() && { whole: needed.cans }),
      why: `${coatedWords(net, { times, waste, layers: 'coats' }, needed.gallons, (area) => area / spread)}, ${spreadWords(spread)}`,
      source: 'coverage is product data; common practice, no source',
    },
  ];
}

function spreadWords(spread: number): string {
  if (isMetric()) return printQuantity(spread, 'sq ft / gal');
  return `${printAmount(spread, 1)} sq ft to a gallon`;
}

const coverageTables = 'WWPA coverage estimator';

function boards(option: Option, { net, times, waste }: CountedArea): readonly TradeCount[] {
  const face = factOf(option, 'pieces', 'face');
  if (face === undefined) return [];
  const gross = (total(net) * times) as Area;
  const length = boardLength({ gross, openings: 0 as Area, trimAndWaste: waste, face });
  const layered = { times, waste, layers: 'layers' };
  const lineal = {
    unit: 'lin ft',
    amount: length,
    why: `${coatedWords(net, layered, length, (area) => area / feet(face))}, covered ${printLength(face)} at a time`,
    source: coverageTables,
  };
  const nominal = nominalSize(factOf(option, 'pieces', 'nominal') ?? '');
  if (!nominal) return [lineal];
  const factor = boardFootFactor(nominal, face);
  const amount = withWaste(gross, waste) * factor;
  const why = `${coatedWords(net, layered, amount, (area) => area * factor)}, nominal ${nominal.width} for a face of ${printLength(face)}`;
  return [lineal, { unit: 'board ft', amount, why, source: `${coverageTables}; PS 20 for stock under 1"` }];
}

/** `1x8` is 1 thick and 8 wide, in inches. */
function nominalSize(text: string): { readonly thickness: number; readonly width: number } | undefined {
  const [, thickness, width] = /^\s*(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*$/u.exec(text) ?? [];
  return thickness === undefined || width === undefined
    ? undefined
    : { thickness: Number(thickness), width: Number(width) };
}

const sheetUnit = 'sheets';

/** As many sheets as if all were of one length. */
function sheets(option: Option, { net, times, waste, whole }: CountedArea): readonly TradeCount[] {
  const width = factOf(option, 'pieces', 'face');
  const stock = factOf(option, 'pieces', 'stock');
  if (width === undefined || stock === undefined) return [];
  return stock.map((length: Length) => {
    const sheet = (feet(width) * feet(length)) as Area;
    const parts = net.map((area) => (area * times) as Area);
    return {
      unit: `${sheetUnit} ${printLength(width)} × ${printLength(length)}`,
      amount: withWaste(total(parts), waste) / sheet,
      ...(whole && { whole: sheetOrder(parts, sheet, waste) }),
      why: `${printArea(sheet)} to a sheet${whole ? '; walls and ceilings in whole sheets, then waste, then whole sheets' : ''}`,
      source: 'Estimating in Building Construction, example 16-3',
    };
  });
}

function total(areas: readonly Area[]): Area {
  return areas.reduce((sum, area) => sum + area, 0) as Area;
}

/** `617.75 sq ft × 2 coats and 8 % waste`, with as many digits as lead to the count as printed. */
function coatedWords(
  net: readonly Area[],
  { times, waste, layers }: { readonly times: number; readonly waste: number; readonly layers: string },
  amount: number,
  count: (area: number) => number,
): string {
  const area = total(net);
  const one = unitSize('sq ft');
  const digits = fewestDigits(lastDigits(), (each) =>
    printsAs(
      count(withWaste(asPrinted(area / one, each) * one * times, percentAsPrinted(waste, each) / 100)),
      amount,
      1,
    ),
  );
  const coats = times === 1 ? '' : ` × ${printAmount(times, 2)} ${layers}`;
  const more = waste === 0 ? '' : ` and ${printAmount(waste * 100, Math.max(2, digits))} % waste`;
  return `${printAmount(area / one, digits)} ${unitName('sq ft')}${coats}${more}`;
}

const percentAsPrinted = (share: number, digits: number): number => asPrinted(share * 100, Math.max(2, digits));

/** `9 gal` whole, or `8.4 gal`; for people. */
export function countWords({ unit, amount, whole }: TradeCount): string {
  return whole === undefined ? printQuantity(amount, unit) : `${printAmount(whole, 0)} ${unit}`;
}

/** `2,428.4 lin ft, 1,214.2 board ft`; sheets of one length or of another: `34 sheets … or 25 sheets …`. */
export function countsWords(counts: readonly TradeCount[]): string {
  const instead = counts.every(({ unit }) => unit.startsWith(sheetUnit));
  return counts.map(countWords).join(instead ? ' or ' : ', ');
}
