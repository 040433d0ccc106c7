import type { Option } from '../model/index.js';
import type { Cents, Decimal } from '../units/index.js';
import { makeCost } from './cost.js';
import type { Cost, Order } from './cost.js';
import type { Item, PriceBook } from './item.js';
import { priceOf, shareOf, shareOut } from './rounding.js';
import { wholePieces } from '../takeoff/index.js';
import type { Takeoff } from '../takeoff/index.js';

/** One product bought once for the whole house, and what each selection's share of it costs. */
export interface PricedPool {
  readonly orders: readonly Order[];
  readonly costs: ReadonlyMap<string, Cost>;
  /** What the owner pays the supplier directly, when owner-furnished. */
  readonly ownerPays: Cents;
}

/** Prices the pooled order of one option. Material and labor round half up once for each part of the option; tax once on
 *  their sum; freight once for the order. `items` must be in a fixed order: left-over cents go by it when remainders tie. */
export function pricePool(id: string, items: readonly Item[], supply: Item['supply'], book: PriceBook): PricedPool {
  const option = book.options.get(id);
  if (!option) return { orders: [], costs: new Map(), ownerPays: 0 as Cents };
  const orders: Order[] = [];
  const costs = new Map<string, Cost>(items.map((item) => [item.selection, makeCost({})]));
  let ownerPays = 0;
  let freightLeft: number = option.freight;
  for (const part of option.parts) {
    const takeoffs = items.map((item) => item.takeoffs.get(id)?.find((takeoff) => takeoff.part === part.part));
    const ordered = orderQuantity(takeoffs, part.pack?.holds, part.unit);
    if (ordered.net === 0) continue;
    const bought = {
      material: priceOf(part.material, ordered.quantity),
      freight: freightLeft,
      labor: priceOf(part.labor, ordered.net),
    };
    freightLeft = 0;
    const full = { ...bought, tax: taxOn(bought, book) };
    const cost = supply === 'contractor' ? full : ownerFurnished(full, book);
    if (supply === 'owner-furnished') ownerPays += full.material + full.freight + full.tax;
    const shares = shareCost(cost, takeoffs);
    items.forEach((item, index) => {
      const share = shares[index];
      const before = costs.get(item.selection);
      if (share && before) costs.set(item.selection, makeCost(addParts(before, share)));
    });
    orders.push(makeOrder(id, part, items, takeoffs, ordered, supply, makeCost(cost), shares));
  }
  return { orders, costs, ownerPays: ownerPays as Cents };
}

interface OrderQuantity {
  readonly net: number;
  readonly required: number;
  readonly packs: number;
  readonly quantity: number;
}

/** Whole packs where there are packs, whole pieces where there are pieces, else the required quantity to a hundredth. */
function orderQuantity(
  takeoffs: readonly (Takeoff | undefined)[],
  holds: number | undefined,
  unit: string,
): OrderQuantity {
  const net = takeoffs.reduce((sum, takeoff) => sum + (takeoff?.net ?? 0), 0);
  const required = takeoffs.reduce((sum, takeoff) => sum + (takeoff?.required ?? 0), 0);
  if (holds !== undefined) {
    const packs = wholePieces(required / holds);
    return { net, required, packs, quantity: packs * holds };
  }
  if (unit === 'each' || unit === 'lump')
    return { net, required, packs: wholePieces(required), quantity: wholePieces(required) };
  const quantity = wholePieces(required * 100) / 100;
  return { net, required, packs: quantity, quantity };
}

function taxOn(cost: Record<'material' | 'freight' | 'labor', number>, { contract }: PriceBook): Cents {
  const base = contract.tax.on.reduce((sum, part) => sum + cost[part], 0);
  return shareOf(base as Cents, contract.tax.rate);
}

type CostParts = Readonly<Record<'material' | 'freight' | 'tax' | 'labor', number>>;

/** The owner pays for the goods; installation is the contract's or the owner's by the house's rule. */
function ownerFurnished(cost: CostParts, { contract }: PriceBook): CostParts {
  const labor = contract.ownerFurnishedInstall === 'contract' ? cost.labor : 0;
  return { material: 0, freight: 0, tax: 0, labor };
}

function shareCost(cost: CostParts, takeoffs: readonly (Takeoff | undefined)[]): Cost[] {
  const required = takeoffs.map((takeoff) => takeoff?.required ?? 0);
  const net = takeoffs.map((takeoff) => takeoff?.net ?? 0);
  const material = shareOut(cost.material as Cents, required);
  const freight = shareOut(cost.freight as Cents, required);
  const tax = shareOut(cost.tax as Cents, required);
  const labor = shareOut(cost.labor as Cents, net);
  return takeoffs.map((_, index) =>
    makeCost({
      material: material[index] ?? 0,
      freight: freight[index] ?? 0,
      tax: tax[index] ?? 0,
      labor: labor[index] ?? 0,
    }),
  );
}

function addParts(a: Cost, b: Cost): CostParts {
  return {
    material: a.material + b.material,
    freight: a.freight + b.freight,
    tax: a.tax + b.tax,
    labor: a.labor + b.labor,
  };
}

function makeOrder(
  option: string,
  part: Option['parts'][number],
  items: readonly Item[],
  takeoffs: readonly (Takeoff | undefined)[],
  ordered: OrderQuantity,
  supply: Item['supply'],
  cost: Cost,
  shares: readonly Cost[],
): Order {
  const rate: Decimal = part.material;
  return {
    option,
    part: part.part,
    trade: items[0]?.trade ?? '',
    unit: part.unit,
    net: ordered.net,
    required: ordered.required,
    packs: ordered.packs,
    ...(part.pack && { pack: part.pack }),
    ordered: ordered.quantity,
    stock: [],
    rate,
    supply,
    cost,
    shares: items.flatMap((item, index) => {
      const takeoff = takeoffs[index];
      const share = shares[index];
      return takeoff && share ? [{ selection: item.selection, required: takeoff.required, cost: share }] : [];
    }),
  };
}
