import type { Allowance, Contract, Option } from '../../src/core/model/index.js';
import type { Item, PriceBook, SizedAllowance } from '../../src/core/price/index.js';
import type { Takeoff } from '../../src/core/takeoff/index.js';
import type { Cents, Decimal, Unit } from '../../src/base/units/index.js';

/** Small houses for tests of money, written in dollars. */

export const cents = (dollars: number): Cents => Math.round(dollars * 100) as Cents;
export const dollars = (amount: number): Decimal => ({ amount: Math.round(amount * 1000), scale: 3 });
export const percent = (amount: number): Decimal => ({ amount: Math.round(amount * 100), scale: 4 });

export const contract: Contract = {
  sum: cents(100_000),
  date: '2026-02-16',
  tax: [{ rate: percent(0), on: ['material'] }],
  markupOn: 'each-line',
  overageMarkup: percent(15),
  workMarkup: percent(15),
  creditReturns: percent(100),
  creditMarkup: false,
  contingency: cents(0),
  ownerFurnishedInstall: 'contract',
  rounding: 'half-up',
};

export interface OptionSketch {
  readonly id: string;
  readonly material: number;
  readonly labor?: number;
  readonly freight?: number;
  readonly holds?: number;
  readonly unit?: Unit;
}

export function option({ id, material, labor = 0, freight = 0, holds, unit = 'sq ft' }: OptionSketch): Option {
  const [category = '', slug = ''] = id.split('/');
  return {
    slug,
    category,
    name: slug,
    maker: 'Invented Mill',
    model: '',
    summary: '',
    parts: [
      {
        part: 'main',
        unit,
        material: dollars(material),
        labor: dollars(labor),
        waste: percent(0),
        ...(holds !== undefined && { pack: { name: 'box', holds } }),
      },
    ],
    freight: cents(freight),
    leadDays: 0,
    attributes: {},
    needs: [],
    swatch: { pattern: 'solid', colors: [] },
    specification: { general: '', products: '', execution: '' },
    care: '',
    body: '',
    origin: { file: '', text: '', at: () => ({ line: 1, column: 1 }), key: () => ({ line: 1, column: 1 }) },
  };
}

export function takeoff(net: number, waste = 0, unit: Unit = 'sq ft'): Takeoff {
  return {
    part: 'main',
    unit,
    places: [],
    gross: net,
    net,
    factors: [],
    waste: { percent: waste, why: '' },
    required: net * (1 + waste / 100),
    rule: '',
    source: '',
  };
}

export interface ItemSketch {
  readonly selection: string;
  readonly net: number;
  readonly options: readonly string[];
  /** All options where not given. */
  readonly considered?: readonly string[];
  readonly standard?: string;
  readonly chosen?: string;
  readonly decided?: boolean;
  readonly allowance?: string;
  readonly supply?: Item['supply'];
  readonly waste?: number;
  readonly category?: string;
  readonly trade?: string;
}

export function item({
  selection,
  net,
  options,
  waste = 0,
  supply = 'contractor',
  category = 'floor',
  trade = 'flooring',
  decided,
  ...rest
}: ItemSketch): Item {
  return {
    ...rest,
    selection,
    room: selection.split('/')[0] ?? '',
    category,
    trade,
    supply,
    considered: rest.considered ?? options,
    decided: decided ?? rest.chosen !== undefined,
    takeoffs: new Map(options.map((id) => [id, [takeoff(net, waste)]])),
  };
}

/** As in a record, one mark-up is for all where no other is given. */
export function priceBook(options: readonly Option[], rules: Partial<Contract> = {}): PriceBook {
  const { overageMarkup = contract.overageMarkup } = rules;
  return {
    contract: { ...contract, workMarkup: overageMarkup, ...rules },
    options: new Map(options.map((each) => [`${each.category}/${each.slug}`, each])),
  };
}

export function allowance(
  id: string,
  amount: number,
  covers: Allowance['covers'] = ['material', 'freight', 'tax'],
): SizedAllowance {
  const record: Allowance = { id, name: id, amount: { by: 'lump', sum: cents(amount) }, covers, categories: ['floor'] };
  return { allowance: record, amount: cents(amount), basis: 'lump sum' };
}
