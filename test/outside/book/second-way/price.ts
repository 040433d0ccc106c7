import { countedOf, productOf, type Choice } from './choice.js';
import { dollarsOf, groupOf, groupsOf, houseRecord, listOf, numberOf, sum, text, type Fields } from './paper.js';
import { partOf, takenBy, type Taken } from './take-off.js';

/** In cents. */
export type Cost = Readonly<Record<Kind, number>>;
export type Kind = 'material' | 'freight' | 'tax' | 'labor';

/** One part of a product for the whole house. */
export interface Order {
  readonly net: number;
  readonly ordered: number;
  readonly packs: number;
  readonly cost: Cost;
}

export const house = houseRecord();
const contract = groupOf(house['contract']);
export const nothing: Cost = { material: 0, freight: 0, tax: 0, labor: 0 };

/** Hundredths of a percent, so that shares of cents are worked in whole numbers. */
export const basisPoints = (percent: unknown): number => Math.round(parseFloat(text(percent)) * 100);
const taxed = groupOf(contract['tax']);
const cents = (dollars: number): number => Math.round(dollars * 100);
/** Whole cents of a rate in cents times a quantity to its millionth, half a cent up. */
const times = (rate: number, quantity: number): number => Math.round((rate * Math.round(quantity * 1e6)) / 1e6);

const kept = new Map<string, ReadonlyMap<string, Taken>>();

/** `among`: the selections of the house, where walls between rooms are counted once. */
export function keptTaken(choice: Choice, slug: string, among: readonly Choice[]): ReadonlyMap<string, Taken> {
  if (choice.rule['between-rooms'] === 'once') return takenBy(choice, slug, among);
  const key = `${choice.id} ${slug}`;
  const found = kept.get(key) ?? takenBy(choice, slug, among);
  kept.set(key, found);
  return found;
}

/** Every product bought once for the house and shared out over its places; railings are left out. */
export function priced(
  choices: readonly Choice[],
  among: readonly Choice[],
): { readonly costs: ReadonlyMap<string, Cost>; readonly orders: ReadonlyMap<string, Order> } {
  const costs = new Map<string, Cost>();
  const orders = new Map<string, Order>();
  const users = new Map<string, Choice[]>();
  for (const choice of choices) {
    const slug = countedOf(choice);
    if (slug === undefined || choice.category === 'railing') continue;
    const key = `${choice.category}/${slug} ${choice.isOwners ? 'owner-furnished' : 'contractor'}`;
    users.set(key, [...(users.get(key) ?? []), choice]);
  }
  for (const [key, places] of users) {
    const [id = ''] = key.split(' ');
    const [category = '', slug = ''] = id.split('/');
    const option = productOf(category, slug);
    const needs = places.map((choice) => keptTaken(choice, slug, among));
    let freight = cents(dollarsOf(option['freight']));
    for (const part of new Set(needs.flatMap((need) => [...need.keys()]))) {
      const own = needs.map((need) => need.get(part));
      const order = bought(partOf(option, part), own, freight, places[0]?.isOwners ?? false);
      if (order.net === 0) continue;
      freight = 0;
      orders.set(`${key} ${part}`, order);
      const shares = sharesOf(order.cost, own);
      places.forEach(({ id: place }, index) => {
        costs.set(place, added(costs.get(place) ?? nothing, shares[index] ?? nothing));
      });
    }
  }
  return { costs, orders };
}

function bought(part: Fields, needs: readonly (Taken | undefined)[], freight: number, isOwners: boolean): Order {
  const net = sum(needs.map((need) => need?.net ?? 0));
  const required = sum(needs.map((need) => need?.required ?? 0));
  const holds = groupOf(part['pack'])['holds'];
  const isPieces = needs.some((need) => need?.unit === 'each');
  const size = holds === undefined ? (isPieces ? 1 : 0.01) : numberOf(holds);
  const lots = Math.ceil(required / size - 1e-6);
  const ordered = holds === undefined && !isPieces ? lots / 100 : lots * size;
  const material = times(cents(dollarsOf(part['material'])), ordered);
  const labor = times(cents(dollarsOf(part['labor'])), net);
  const all = { material, freight, labor, tax: 0 };
  const base = sum(listOf(taxed['on']).map((kind) => all[kind as Kind]));
  const tax = Math.round((base * basisPoints(taxed['rate'])) / 10_000);
  const cost = isOwners ? { ...nothing, labor } : { ...all, tax };
  return { net, ordered, packs: holds === undefined ? ordered : lots, cost };
}

function sharesOf(cost: Cost, needs: readonly (Taken | undefined)[]): readonly Cost[] {
  const required = needs.map((need) => need?.required ?? 0);
  const net = needs.map((need) => need?.net ?? 0);
  const [material, freight, tax] = [cost.material, cost.freight, cost.tax].map((amount) => shared(amount, required));
  const labor = shared(cost.labor, net);
  return needs.map((_, index) => ({
    material: material?.[index] ?? 0,
    freight: freight?.[index] ?? 0,
    tax: tax?.[index] ?? 0,
    labor: labor[index] ?? 0,
  }));
}

/** Cent by cent: all get what they have in full, and each cent that is left goes to whoever is owed most of one then, the first of
 *  those that are owed alike. */
export function shared(amount: number, weights: readonly number[]): readonly number[] {
  const whole = weights.map((weight) => BigInt(Math.round(weight * 1e6)));
  const all = whole.reduce((total, weight) => total + weight, 0n);
  if (all === 0n) return weights.map((_, index) => (index === 0 ? amount : 0));
  const got = whole.map((weight) => Number((BigInt(amount) * weight) / all));
  const owed = whole.map((weight, index) => BigInt(amount) * weight - BigInt(got[index] ?? 0) * all);
  for (let left = amount - sum(got); left > 0; left -= 1) {
    const next = owed.reduce((best, value, index) => (value > (owed[best] ?? 0n) ? index : best), 0);
    got[next] = (got[next] ?? 0) + 1;
    owed[next] = -1n;
  }
  return got;
}

function added(a: Cost, b: Cost): Cost {
  return {
    material: a.material + b.material,
    freight: a.freight + b.freight,
    tax: a.tax + b.tax,
    labor: a.labor + b.labor,
  };
}

export const totalOf = (cost: Cost): number => sum(Object.values(cost));
export const partsOf = (cost: Cost, kinds: readonly unknown[]): number => sum(kinds.map((kind) => cost[kind as Kind]));
export const centsOf = (money: unknown): number => cents(dollarsOf(money));
export const allowances = groupsOf(house['allowances']);
export { contract };
