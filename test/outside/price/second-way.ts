import { Decimal as Reference } from 'decimal.js';
import type { CostPart } from '../../../src/core/model/index.js';
import type { Item, PriceBook, SizedAllowance } from '../../../src/core/price/index.js';

/** The price of a small house by a second way, in decimals that never cut: products bought, shared out, held against the contract. No
 *  publication is behind it: the rules are those of the record format. All money in cents. */

const Wide = Reference.clone({ precision: 60 });
type Rate = { readonly amount: number; readonly scale: number };
const rated = ({ amount, scale }: Rate): Reference => new Wide(amount).div(new Wide(10).pow(scale));
/** Half a cent away from nothing. */
const rounded = (value: Reference): number => value.toDecimalPlaces(0, Reference.ROUND_HALF_UP).toNumber() || 0;
const share = (amount: number, rate: Rate): number => rounded(new Wide(amount).mul(rated(rate)));
const millionths = (quantity: number): Reference => new Wide(Math.round(quantity * 1e6)).div(1e6);

export type Parts = Readonly<Record<CostPart, number>>;
const kinds = ['material', 'freight', 'tax', 'labor'] as const;
export const nothing: Parts = { material: 0, freight: 0, tax: 0, labor: 0 };
export const totalOf = (parts: Parts): number => kinds.reduce((sum, kind) => sum + parts[kind], 0);
const partial = (parts: Parts, of: readonly CostPart[]): number => of.reduce((sum, kind) => sum + parts[kind], 0);
const minus = (a: Parts, b: Parts): Parts => ({
  material: a.material - b.material,
  freight: a.freight - b.freight,
  tax: a.tax - b.tax,
  labor: a.labor - b.labor,
});

/** How a place stands: what is counted, and whether it is decided. */
export interface Standing {
  readonly option?: string | undefined;
  readonly decided: boolean;
}
export type House = ReadonlyMap<Item, Standing>;

/** As it is recorded: what is open on an allowance draws nothing yet. */
export function asRecorded(items: readonly Item[]): House {
  return new Map(
    items.map((item) => {
      const option = item.decided ? item.chosen : item.allowance === undefined ? item.standard : undefined;
      return [item, { option, decided: item.decided }] as const;
    }),
  );
}

export function costsOf(house: House, book: PriceBook): ReadonlyMap<Item, Parts> {
  const costs = new Map<Item, Parts>();
  const buyers = new Map<string, Item[]>();
  for (const [item, { option }] of house)
    if (option !== undefined)
      buyers.set(`${option} ${item.supply}`, [...(buyers.get(`${option} ${item.supply}`) ?? []), item]);
  for (const [key, places] of buyers) {
    const [id = '', supply] = key.split(' ');
    places.sort((a, b) => (a.selection < b.selection ? -1 : 1));
    const needs = places.map((place) => place.takeoffs.get(id)?.[0] ?? { net: 0, required: 0 });
    const option = book.options.get(id);
    const [part] = option?.parts ?? [];
    const [net, required] = [sum(needs.map((need) => need.net)), sum(needs.map((need) => need.required))];
    if (!option || !part || net === 0) {
      for (const place of places) costs.set(place, nothing);
      continue;
    }
    const lot = part.pack?.holds ?? 0.01;
    const lots = Math.ceil(Number((required / lot).toPrecision(13)) - 1e-9);
    const bought = part.pack ? lots * lot : lots / 100;
    const material = rounded(rated(part.material).mul(100).mul(millionths(bought)));
    const labor = part.labor ? rounded(rated(part.labor).mul(100).mul(millionths(net))) : 0;
    const base: Parts = { material, labor, freight: option.freight, tax: 0 };
    const taxes = book.contract.tax.map(({ rate, on }) => rated(rate).mul(partial(base, on)));
    const tax = rounded(taxes.reduce((all, each) => all.add(each), new Wide(0)));
    const cost = supply === 'contractor' ? { ...base, tax } : { ...nothing, labor };
    const [by, byNet] = [needs.map((need) => need.required), needs.map((need) => need.net)];
    const shares = kinds.map((kind) => handedOut(cost[kind], kind === 'labor' ? byNet : by));
    places.forEach((place, index) => {
      const own = Object.fromEntries(kinds.map((kind, which) => [kind, shares[which]?.[index] ?? 0]));
      costs.set(place, own as unknown as Parts);
    });
  }
  return costs;
}

/** Whole cents by weight, and what is left a cent at a time to who has lost most by rounding down, the first of those alike. */
export function handedOut(amount: number, weights: readonly number[]): readonly number[] {
  const whole = weights.map((weight) => new Wide(Math.round(weight * 1e6)));
  const all = whole.reduce((total, weight) => total.add(weight), new Wide(0));
  if (all.isZero()) return weights.map((_, index) => (index === 0 ? amount : 0));
  const exact = whole.map((weight) => weight.mul(amount));
  const cents = exact.map((each) => each.divToInt(all).toNumber());
  const lost = exact.map((each, index) => each.sub(all.mul(cents[index] ?? 0)));
  const order = lost.map((_, index) => index).sort((a, b) => (lost[b] as Reference).cmp(lost[a] as Reference) || a - b);
  for (const index of order.slice(0, amount - sum(cents))) cents[index] = (cents[index] ?? 0) + 1;
  return cents;
}

/** What goes over or under what the contract holds. */
interface Moved {
  /** Before mark-up. */
  readonly net: number;
  readonly markup: number;
  readonly retained: number;
}

function moved(difference: number, kind: 'allowance' | 'work', { contract }: PriceBook): Moved {
  const added = kind === 'allowance' ? contract.overageMarkup : contract.workMarkup;
  if (difference > 0)
    return { net: difference, markup: contract.markupOn === 'net' ? 0 : share(difference, added), retained: 0 };
  const back = share(difference, contract.creditReturns);
  const { creditMarkup } = contract;
  const rate = creditMarkup === 'as-added' ? added : creditMarkup === false ? { amount: 0, scale: 0 } : creditMarkup;
  return { net: back, markup: contract.markupOn === 'net' ? 0 : share(back, rate), retained: back - difference };
}

export interface Reckoned {
  readonly total: number;
  readonly net: { readonly allowance: number; readonly work: number };
  readonly markup: number;
  readonly fee: number;
  /** What each place changes beside its allowance. */
  readonly places: ReadonlyMap<Item, number>;
  readonly allowances: ReadonlyMap<
    string,
    Moved & { readonly committed: number; readonly settled: boolean; readonly change: number }
  >;
  readonly costs: ReadonlyMap<Item, Parts>;
}

export function reckoned(house: House, sized: readonly SizedAllowance[], book: PriceBook): Reckoned {
  const items = [...house.keys()];
  const costs = costsOf(house, book);
  const standard = costsOf(new Map(items.map((item) => [item, { option: item.standard, decided: true }])), book);
  const byId = new Map(sized.map((one) => [one.allowance.id, one]));
  const effects = items.map((item) => {
    const { option, decided } = house.get(item) ?? { decided: false };
    const allowance = byId.get(item.allowance ?? '')?.allowance;
    if (option === undefined && !decided) return { net: 0, markup: 0, retained: 0 };
    const outside = allowance ? kinds.filter((kind) => !allowance.covers.includes(kind)) : kinds;
    if (allowance && item.standard === undefined) return { net: 0, markup: 0, retained: 0 };
    return moved(partial(minus(costs.get(item) ?? nothing, standard.get(item) ?? nothing), outside), 'work', book);
  });
  const allowances = new Map(
    sized.map(({ allowance, amount }) => {
      const own = items.filter((item) => item.allowance === allowance.id);
      const committed = sum(own.map((item) => partial(costs.get(item) ?? nothing, allowance.covers)));
      const settled = own.every((item) => house.get(item)?.decided);
      const difference = committed - amount;
      const counts = difference > 0 || (settled && own.length > 0);
      const effect = counts ? moved(difference, 'allowance', book) : { net: 0, markup: 0, retained: 0 };
      return [allowance.id, { ...effect, committed, settled, change: effect.net + effect.markup }] as const;
    }),
  );
  const net = {
    work: sum(effects.map((each) => each.net)),
    allowance: sum([...allowances.values()].map((each) => each.net)),
  };
  const markup = book.contract.markupOn === 'net' ? onNet(net, book) : 0;
  const fee = book.contract.fee ? share(net.work + net.allowance, book.contract.fee) : 0;
  const places = new Map(
    items.map((item, index) => [item, (effects[index]?.net ?? 0) + (effects[index]?.markup ?? 0)]),
  );
  const total = sum([...places.values()]) + sum([...allowances.values()].map(({ change }) => change)) + markup + fee;
  return { total, net, markup, fee, places, allowances, costs };
}

/** Additions and deductions set off against each other; what is left is of the kind that exceeds. */
export function onNet({ allowance, work }: Reckoned['net'], { contract }: Pick<PriceBook, 'contract'>): number {
  const rateOf = (amount: number, kind: 'allowance' | 'work'): Rate => {
    const added = kind === 'allowance' ? contract.overageMarkup : contract.workMarkup;
    if (amount >= 0 || contract.creditMarkup === 'as-added') return added;
    return contract.creditMarkup === false ? { amount: 0, scale: 0 } : contract.creditMarkup;
  };
  const of = (amount: number, kind: 'allowance' | 'work'): number => share(amount, rateOf(amount, kind));
  const all = allowance + work;
  if (allowance > 0 !== work > 0 && allowance !== 0 && work !== 0) {
    if (all === 0) return 0;
    return of(all, all > 0 === allowance > 0 ? 'allowance' : 'work');
  }
  // Both one way: each at its own rate, or together where the rates are one.
  const same = rated(rateOf(allowance, 'allowance')).eq(rated(rateOf(work, 'work')));
  return same && allowance !== 0 && work !== 0 ? of(all, 'work') : of(allowance, 'allowance') + of(work, 'work');
}

export function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
