import type { Net } from '../model/index.js';
import type { Cents } from '../../base/units/index.js';
import { costOf, noCost, type Cost, type Effect } from './cost.js';
import { allowanceEffect, netOf, selectionEffect } from './effect.js';
import type { Item, PriceBook, SizedAllowance } from './item.js';
import { nothingNetted, onNet, type OnNet } from './markup.js';
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

/** What selections and allowances do to the contract, one by one and added up. */
export class ContractEffects {
  private readonly byId: ReadonlyMap<string, SizedAllowance>;
  private readonly drawnOn: ReadonlySet<string | undefined>;

  constructor(
    private readonly items: readonly Item[],
    allowances: readonly SizedAllowance[],
    private readonly book: PriceBook,
    private readonly standard: World,
  ) {
    this.byId = new Map(allowances.map((sized) => [sized.allowance.id, sized]));
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

  allowanceOf(item: Item): SizedAllowance | undefined {
    return item.allowance === undefined ? undefined : this.byId.get(item.allowance);
  }

  /** What the contract adds on a net of additions and deductions. */
  onNet(net: Net): OnNet {
    return onNet(net, this.book.netted ?? nothingNetted, this.book.contract);
  }

  /** What a place changes beside its allowance. */
  selection(item: Item, cost: Cost | undefined): Effect {
    const standard = this.standard.costs.get(item.selection);
    return selectionEffect(item, cost, standard, this.allowanceOf(item)?.allowance, this.book.contract);
  }

  /** What an allowance changes. */
  allowance(id: string, committed: number, settled: boolean): Effect {
    const amount = this.byId.get(id)?.amount ?? (0 as Cents);
    // An allowance that nothing draws on is not spent less: nobody has said yet what it is for.
    return allowanceEffect(amount, committed as Cents, settled && this.drawnOn.has(id), this.book.contract);
  }
}
