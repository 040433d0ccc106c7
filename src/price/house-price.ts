import type { Allowance } from '../model/index.js';
import type { Cents } from '../units/index.js';
import { costOf, noCost } from './cost.js';
import type { Cost } from './cost.js';
import { allowanceEffect, selectionEffect } from './effect.js';
import type { Item, PriceBook } from './item.js';
import { costsWith, priceWorld } from './world.js';
import type { World } from './world.js';

/** The house priced as chosen so far, ready to answer what another choice would cost. */
export interface HousePrice {
  readonly items: readonly Item[];
  readonly allowances: readonly SizedAllowance[];
  readonly book: PriceBook;
  /** With every choice made so far; open selections without an allowance stand at their standard. */
  readonly today: World;
  /** With every selection at its standard. */
  readonly standard: World;
  readonly change: Cents;
  /** What the house would be with `option` for the item: its total less today's, and the costs that differ from today's.
   *  The option counts as decided; undefined leaves the item open. */
  whatIf(item: Item, option: string | undefined): { readonly change: Cents; readonly costs: ReadonlyMap<string, Cost> };
  /** The change alone. */
  changeWith(item: Item, option: string | undefined): Cents;
}

export interface SizedAllowance {
  readonly allowance: Allowance;
  readonly amount: Cents;
  readonly basis: string;
}

/** The option that stands for an item today. An open selection on an allowance draws nothing yet: the allowance itself
 *  stands in the contract sum for it. */
export function countedOption(item: Item): string | undefined {
  if (item.decided) return item.chosen;
  return item.allowance === undefined ? item.standard : undefined;
}

export function priceHouse(
  unsorted: readonly Item[],
  allowances: readonly SizedAllowance[],
  book: PriceBook,
): HousePrice {
  const items = [...unsorted].sort((a, b) => (a.selection < b.selection ? -1 : 1));
  const today = priceWorld(items, countedOption, book);
  const standard = priceWorld(items, (item) => item.standard, book);
  const effect = new Effect(items, allowances, book, standard);
  const base = effect.of(today.costs, (item) => item.decided);
  const whatIf: HousePrice['whatIf'] = (item, option) => {
    const costs = costsWith(today, item, option, book);
    return { costs, change: effect.difference(base, today.costs, costs, item, option !== undefined) };
  };
  return {
    items,
    allowances,
    book,
    today,
    standard,
    change: base.total,
    whatIf,
    changeWith: (item, option) => whatIf(item, option).change,
  };
}

/** Total change of the contract in a world where `choose` decides everything. */
export function changeInWorld(
  house: HousePrice,
  choose: (item: Item) => string | undefined,
): { world: World; change: Cents } {
  const world = priceWorld(house.items, choose, house.book);
  const effect = new Effect(house.items, house.allowances, house.book, house.standard);
  return { world, change: effect.of(world.costs, () => true).total };
}

interface EffectTotals {
  readonly total: Cents;
  readonly committed: ReadonlyMap<string, number>;
  /** Items still open on each allowance. */
  readonly open: ReadonlyMap<string, number>;
}

/** Adds up what selections and allowances do to the contract; differences touch only what changed. */
class Effect {
  private readonly byId: ReadonlyMap<string, SizedAllowance>;
  private readonly itemOf: ReadonlyMap<string, Item>;
  private readonly drawnOn: ReadonlySet<string | undefined>;

  constructor(
    private readonly items: readonly Item[],
    allowances: readonly SizedAllowance[],
    private readonly book: PriceBook,
    private readonly standard: World,
  ) {
    this.byId = new Map(allowances.map((sized) => [sized.allowance.id, sized]));
    this.itemOf = new Map(items.map((item) => [item.selection, item]));
    this.drawnOn = new Set(items.map((item) => item.allowance));
  }

  /** A deliberate none costs nothing, which may be less than the standard; an open place has no cost to compare yet. */
  of(costs: ReadonlyMap<string, Cost>, isDecided: (item: Item) => boolean): EffectTotals {
    let total = 0;
    const committed = new Map<string, number>([...this.byId.keys()].map((id) => [id, 0]));
    const open = new Map<string, number>();
    for (const item of this.items) {
      const cost = costs.get(item.selection) ?? (isDecided(item) ? noCost : undefined);
      total += this.selection(item, cost);
      const allowance = this.allowanceOf(item);
      if (!allowance) continue;
      const id = allowance.allowance.id;
      if (!isDecided(item)) open.set(id, (open.get(id) ?? 0) + 1);
      if (cost) committed.set(id, (committed.get(id) ?? 0) + costOf(cost, allowance.allowance.covers));
    }
    for (const id of this.byId.keys()) total += this.allowance(id, committed.get(id) ?? 0, !open.get(id));
    return { total: total as Cents, committed, open };
  }

  difference(
    base: EffectTotals,
    before: ReadonlyMap<string, Cost>,
    changed: ReadonlyMap<string, Cost>,
    decidedItem: Item,
    decides: boolean,
  ): Cents {
    let difference = 0;
    const moved = new Map<string, number>();
    const touch = (id: string, by: number) => moved.set(id, (moved.get(id) ?? 0) + by);
    for (const [selection, cost] of changed) {
      const item = this.itemOf.get(selection);
      if (!item) continue;
      const old = before.get(selection) ?? (item.decided ? noCost : undefined);
      const now = item === decidedItem && !decides ? undefined : cost;
      difference += this.selection(item, now) - this.selection(item, old);
      const allowance = this.allowanceOf(item)?.allowance;
      if (!allowance) continue;
      touch(allowance.id, (now ? costOf(now, allowance.covers) : 0) - (old ? costOf(old, allowance.covers) : 0));
    }
    if (decidedItem.allowance !== undefined) touch(decidedItem.allowance, 0);
    for (const [id, by] of moved) {
      const committed = base.committed.get(id) ?? 0;
      const open = base.open.get(id) ?? 0;
      const stillOpen = id === decidedItem.allowance ? open - Number(!decidedItem.decided) + Number(!decides) : open;
      difference += this.allowance(id, committed + by, stillOpen === 0) - this.allowance(id, committed, open === 0);
    }
    return difference as Cents;
  }

  private allowanceOf(item: Item): SizedAllowance | undefined {
    return item.allowance === undefined ? undefined : this.byId.get(item.allowance);
  }

  private selection(item: Item, cost: Cost | undefined): number {
    const standard = this.standard.costs.get(item.selection);
    return selectionEffect(item, cost, standard, this.allowanceOf(item)?.allowance, this.book.contract);
  }

  private allowance(id: string, committed: number, settled: boolean): number {
    const amount = this.byId.get(id)?.amount ?? (0 as Cents);
    // An allowance that nothing draws on is not spent less: nobody has said yet what it is for.
    return allowanceEffect(amount, committed as Cents, settled && this.drawnOn.has(id), this.book.contract).change;
  }
}
