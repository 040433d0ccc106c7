import type { OptionPart } from '../model/index.js';
import { wholePieces, type Takeoff } from '../takeoff/index.js';
import { unitSize, type Cents, type Unit } from '../../base/units/index.js';
import { makeCost, type Cost } from './cost.js';
import { asInvoiced } from './invoiced.js';
import type { Item, PriceBook } from './item.js';
import { priceOf, shareOut } from './rounding.js';
import { taxOn } from './tax.js';

/** One product bought once for the whole house, and what each selection's share of it costs. Only what pricing needs:
 *  the list to order from is made from it by `orderList`, for the house that is built. */
export interface PricedPool {
  /** `<category>/<slug>`. */
  readonly option: string;
  readonly supply: Item['supply'];
  readonly items: readonly Item[];
  readonly parts: readonly PricedPart[];
  readonly costs: ReadonlyMap<string, Cost>;
  /** What the places would cost by their quantities, where invoices count instead. */
  readonly computed?: ReadonlyMap<string, Cost>;
  /** What the owner pays the supplier directly, when owner-furnished. */
  readonly ownerPays: Cents;
}

/** A part of the product; `takeoffs` and `shares` stand in the order of the pool's items. */
export interface PricedPart {
  readonly part: OptionPart;
  readonly ordered: OrderQuantity;
  readonly cost: Cost;
  readonly takeoffs: readonly (Takeoff | undefined)[];
  readonly shares: readonly Cost[];
}

export interface OrderQuantity {
  readonly net: number;
  readonly required: number;
  readonly packs: number;
  readonly quantity: number;
}

/** Prices orders; one that keeps its answers may serve several houses. */
export type PricePool = typeof pricePool;

/** Prices the pooled order of one option. Material and labor round half up once for each part of the option; tax once on
 *  their sum; freight once for the order. `items` must be in a fixed order: left-over cents go by it when remainders tie. */
export function pricePool(id: string, items: readonly Item[], supply: Item['supply'], book: PriceBook): PricedPool {
  const option = book.options.get(id);
  const parts: PricedPart[] = [];
  let ownerPays = 0;
  let freightLeft: number = option?.freight ?? 0;
  for (const part of option?.parts ?? []) {
    const takeoffs = items.map((item) => item.takeoffs.get(id)?.find((takeoff) => takeoff.part === part.part));
    const ordered = orderQuantity(takeoffs, part.pack?.holds, part.unit);
    if (ordered.net === 0) continue;
    const bought = {
      material: priceOf({ rate: part.material, unit: part.unit }, ordered.quantity),
      freight: freightLeft,
      // What is not priced yet is said so wherever its price stands (`withoutLabor`).
      labor: part.labor ? priceOf({ rate: part.labor, unit: part.unit }, ordered.net) : 0,
    };
    freightLeft = 0;
    const full = { ...bought, tax: taxOn(bought, book.contract.tax) };
    const cost = makeCost(supply === 'contractor' ? full : ownerFurnished(full, book));
    if (supply === 'owner-furnished') ownerPays += full.material + full.freight + full.tax;
    parts.push({ part, ordered, cost, takeoffs, shares: shareCost(cost, takeoffs) });
  }
  const orders = supply === 'contractor' ? book.invoiced?.get(id) : undefined;
  const priced = orders ? asInvoiced(parts, id, items, orders) : parts;
  return {
    option: id,
    supply,
    items,
    parts: priced,
    costs: addShares(option ? items : [], priced),
    ...(orders && { computed: addShares(option ? items : [], parts) }),
    ownerPays: ownerPays as Cents,
  };
}

/** Whole packs where there are packs, whole pieces where there are pieces, else the required quantity to a hundredth. */
function orderQuantity(
  takeoffs: readonly (Takeoff | undefined)[],
  holds: number | undefined,
  unit: Unit,
): OrderQuantity {
  const net = takeoffs.reduce((sum, takeoff) => sum + (takeoff?.net ?? 0), 0);
  const required = takeoffs.reduce((sum, takeoff) => sum + (takeoff?.required ?? 0), 0);
  if (holds !== undefined) {
    const packs = wholePieces(required / holds);
    return { net, required, packs, quantity: packs * holds };
  }
  if (unit === 'each' || unit === 'lump')
    return { net, required, packs: wholePieces(required), quantity: wholePieces(required) };
  const one = unitSize(unit);
  const quantity = (wholePieces((required / one) * 100) / 100) * one;
  return { net, required, packs: quantity, quantity };
}

type CostParts = Readonly<Record<'material' | 'freight' | 'tax' | 'labor', number>>;

/** The owner pays for the goods; installation is the contract's or the owner's by the house's rule. */
function ownerFurnished(cost: CostParts, { contract }: PriceBook): CostParts {
  const labor = contract.ownerFurnishedInstall === 'contract' ? cost.labor : 0;
  return { material: 0, freight: 0, tax: 0, labor };
}

function shareCost(cost: Cost, takeoffs: readonly (Takeoff | undefined)[]): Cost[] {
  const required = takeoffs.map((takeoff) => takeoff?.required ?? 0);
  const net = takeoffs.map((takeoff) => takeoff?.net ?? 0);
  const material = shareOut(cost.material, required);
  const freight = shareOut(cost.freight, required);
  const tax = shareOut(cost.tax, required);
  const labor = shareOut(cost.labor, net);
  return takeoffs.map((_, index) =>
    makeCost({
      material: material[index] ?? 0,
      freight: freight[index] ?? 0,
      tax: tax[index] ?? 0,
      labor: labor[index] ?? 0,
    }),
  );
}

/** What each selection pays over all parts of the product. */
function addShares(items: readonly Item[], parts: readonly PricedPart[]): ReadonlyMap<string, Cost> {
  return new Map(
    items.map((item, index) => {
      const sum = { material: 0, freight: 0, tax: 0, labor: 0 };
      for (const { shares } of parts) {
        const share = shares[index];
        if (!share) continue;
        sum.material += share.material;
        sum.freight += share.freight;
        sum.tax += share.tax;
        sum.labor += share.labor;
      }
      return [item.selection, makeCost(sum)];
    }),
  );
}
