import type { Contract } from '../model/index.js';
import type { Cents } from '../../base/units/index.js';
import { costOf, noCost } from './cost.js';
import type { Cost } from './cost.js';
import { allowanceEffect, selectionEffect } from './effect.js';
import type { Item, SizedAllowance } from './item.js';
import type { World } from './world.js';

export interface EffectTotals {
  readonly total: Cents;
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
    private readonly contract: Contract,
    private readonly standard: World,
  ) {
    this.byId = new Map(allowances.map((sized) => [sized.allowance.id, sized]));
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

  allowanceOf(item: Item): SizedAllowance | undefined {
    return item.allowance === undefined ? undefined : this.byId.get(item.allowance);
  }

  /** What a place changes beside its allowance. */
  selection(item: Item, cost: Cost | undefined): number {
    const standard = this.standard.costs.get(item.selection);
    return selectionEffect(item, cost, standard, this.allowanceOf(item)?.allowance, this.contract).change;
  }

  /** What an allowance changes. */
  allowance(id: string, committed: number, settled: boolean): number {
    const amount = this.byId.get(id)?.amount ?? (0 as Cents);
    // An allowance that nothing draws on is not spent less: nobody has said yet what it is for.
    return allowanceEffect(amount, committed as Cents, settled && this.drawnOn.has(id), this.contract).change;
  }
}
