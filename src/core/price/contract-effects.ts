import type { Net } from '../model/index.js';
import type { Cents } from '../../base/units/index.js';
import { costOf, noCost, type Cost, type Effect } from './cost.js';
import { allowanceEffect, netOf, selectionEffect } from './effect.js';
import type { Item, PriceBook, SizedAllowance } from './item.js';
import { addNets, nothingNetted, onNet, type OnNet } from './markup.js';
import type { World } from './world.js';

export interface EffectTotals {
  readonly total: Cents;
  /** Additions less deductions of lines and allowances, before any mark-up. */
  readonly net: Net;
  /** What the contract adds on that net beside the lines; part of the total. */
  readonly onNet: OnNet;
  readonly committed: ReadonlyMap<string, number>;
  /** Items still open on each allowance. */
  readonly open: ReadonlyMap<string, number>;
}

/** What one choice does to the contract, by where it comes from; the parts add up to `change`. */
export interface EffectDifference {
  readonly change: Cents;
  /** At the place itself, beside its allowance. */
  readonly here: Cents;
  /** Through each allowance that it moves. */
  readonly allowances: readonly AllowanceMove[];
  /** At other places, through packs and freight that they share with it. */
  readonly elsewhere: Cents;
  /** Through mark-up and fee on the net of all. */
  readonly onNet: OnNet;
}

export interface AllowanceMove {
  readonly id: string;
  readonly change: Cents;
  /** What is committed on it today, and what then. */
  readonly before: Cents;
  readonly committed: Cents;
  /** Is every choice on it made then? */
  readonly settled: boolean;
}

/** Adds up what selections and allowances do to the contract; differences touch only what changed. */
export class ContractEffects {
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
    const sum = { total: 0, allowance: 0, work: 0 };
    const committed = new Map<string, number>([...this.byId.keys()].map((id) => [id, 0]));
    const open = new Map<string, number>();
    for (const item of this.items) {
      const cost = costs.get(item.selection) ?? (isDecided(item) ? noCost : undefined);
      const effect = this.selection(item, cost);
      sum.total += effect.change;
      sum.work += netOf(effect);
      const allowance = this.allowanceOf(item);
      if (!allowance) continue;
      const id = allowance.allowance.id;
      if (!isDecided(item)) open.set(id, (open.get(id) ?? 0) + 1);
      if (cost) committed.set(id, (committed.get(id) ?? 0) + costOf(cost, allowance.allowance.covers));
    }
    for (const id of this.byId.keys()) {
      const effect = this.allowance(id, committed.get(id) ?? 0, !open.get(id));
      sum.total += effect.change;
      sum.allowance += netOf(effect);
    }
    const net = { allowance: sum.allowance, work: sum.work } as Net;
    const added = this.onNet(net);
    return { total: (sum.total + added.markup + added.fee) as Cents, net, onNet: added, committed, open };
  }

  difference(
    base: EffectTotals,
    before: ReadonlyMap<string, Cost>,
    changed: ReadonlyMap<string, Cost>,
    decidedItem: Item,
    decides: boolean,
  ): EffectDifference {
    let here = 0;
    let elsewhere = 0;
    let work = 0;
    const moved = new Map<string, number>();
    const touch = (id: string, by: number) => moved.set(id, (moved.get(id) ?? 0) + by);
    for (const [selection, cost] of changed) {
      const item = this.itemOf.get(selection);
      if (!item) continue;
      const old = before.get(selection) ?? (item.decided ? noCost : undefined);
      const now = item === decidedItem && !decides ? undefined : cost;
      const [then, today] = [this.selection(item, now), this.selection(item, old)];
      const difference = then.change - today.change;
      work += netOf(then) - netOf(today);
      if (item === decidedItem) here += difference;
      else elsewhere += difference;
      const allowance = this.allowanceOf(item)?.allowance;
      if (!allowance) continue;
      touch(allowance.id, (now ? costOf(now, allowance.covers) : 0) - (old ? costOf(old, allowance.covers) : 0));
    }
    if (decidedItem.allowance !== undefined) touch(decidedItem.allowance, 0);
    const moves = [...moved].map(([id, by]) => this.move(base, id, by, decidedItem, decides));
    const allowances = moves.map(({ move }) => move);
    const allowance = moves.reduce((sum, { net }) => sum + net, 0);
    const then = this.onNet(addNets(base.net, { allowance, work } as Net));
    const added = { markup: then.markup - base.onNet.markup, fee: then.fee - base.onNet.fee } as OnNet;
    const change = allowances.reduce((sum, move) => sum + move.change, here + elsewhere + added.markup + added.fee);
    return { change: change as Cents, here: here as Cents, elsewhere: elsewhere as Cents, onNet: added, allowances };
  }

  private move(
    base: EffectTotals,
    id: string,
    by: number,
    decidedItem: Item,
    decides: boolean,
  ): { readonly move: AllowanceMove; readonly net: number } {
    const before = (base.committed.get(id) ?? 0) as Cents;
    const open = base.open.get(id) ?? 0;
    const stillOpen = id === decidedItem.allowance ? open - Number(!decidedItem.decided) + Number(!decides) : open;
    const committed = (before + by) as Cents;
    const settled = stillOpen === 0;
    const [then, today] = [this.allowance(id, committed, settled), this.allowance(id, before, open === 0)];
    const change = (then.change - today.change) as Cents;
    return { move: { id, change, before, committed, settled }, net: netOf(then) - netOf(today) };
  }

  private allowanceOf(item: Item): SizedAllowance | undefined {
    return item.allowance === undefined ? undefined : this.byId.get(item.allowance);
  }

  private onNet(net: Net): OnNet {
    return onNet(net, this.book.netted ?? nothingNetted, this.book.contract);
  }

  private selection(item: Item, cost: Cost | undefined): Effect {
    const standard = this.standard.costs.get(item.selection);
    return selectionEffect(item, cost, standard, this.allowanceOf(item)?.allowance, this.book.contract);
  }

  private allowance(id: string, committed: number, settled: boolean): Effect {
    const amount = this.byId.get(id)?.amount ?? (0 as Cents);
    // An allowance that nothing draws on is not spent less: nobody has said yet what it is for.
    return allowanceEffect(amount, committed as Cents, settled && this.drawnOn.has(id), this.book.contract);
  }
}
