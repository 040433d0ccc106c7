import type { Net } from '../model/index.js';
import { netOf } from './effect.js';
import { addNets, takeOff, type OnNet } from './markup.js';
import { byText, type Cents } from '../../base/units/index.js';
import type { AllowanceMove, ContractEffects, EffectDifference, EffectTotals } from './contract-effects.js';
import { costOf, noCost, type Cost } from './cost.js';
import type { Item, PriceBook } from './item.js';
import type { PricedPool, PricePool } from './pool.js';
import { keyOf, type World } from './world.js';

/** How a place stands: what is counted there, and whether that is decided. Decided without an option is a deliberate none. */
export interface Stand {
  readonly option?: string | undefined;
  readonly decided: boolean;
}

/** What the lines of a combination come to. */
export interface Combination {
  readonly stands: readonly Stand[];
  /** What each product does that lines may take, by its index. */
  readonly taken: readonly (Taken | undefined)[];
  /** Total of the house less today's. */
  readonly change: Cents;
  /** By the allowance's index. */
  readonly allowances: readonly Pick<AllowanceMove, 'committed' | 'settled' | 'change'>[];
  /** Mark-up and fee on the net of the whole house. */
  readonly onNet: OnNet;
}

/** What a product does to the contract when some of the lines take it. */
export interface Taken {
  readonly pool: PricedPool;
  readonly effect: number;
  /** Of that, what counts for the net of additions and deductions. */
  readonly net: number;
  readonly effects: ReadonlyMap<Item, number>;
  /** What its places draw, by allowance. */
  readonly drawn: ReadonlyMap<string, number>;
}

/** What lines and the products that they take come to, before allowances and what is added on the net. */
interface Collected {
  readonly stands: readonly Stand[];
  /** By product, the indices of the lines that take it, in their order. */
  readonly takers: readonly (readonly number[])[];
  readonly taken: readonly (Taken | undefined)[];
  readonly effect: number;
  readonly net: number;
  readonly drawn: readonly number[];
  readonly open: readonly number[];
}

const nothing = { change: 0, net: 0 };

/** How many combinations are kept to go on from, and in how many lines another may stand otherwise: the cheapest ways, the dearest, where lines rest and how
 *  they stand today are each asked for again with one line otherwise, and after it with the next. */
const [mostKept, mostMoved] = [6, 2];

interface Product {
  readonly key: string;
  readonly option: string;
  readonly supply: Item['supply'];
  /** The lines that take it today. */
  readonly now: string;
  /** Places outside the lines that take it today. */
  readonly others: readonly Item[];
  /** By the lines that take it besides. */
  readonly known: Map<string, Taken>;
}

export interface PricedToday {
  readonly today: World;
  readonly base: EffectTotals;
  readonly effects: ContractEffects;
  readonly book: PriceBook;
  /** What the products do as they stand today, by who buys which; filled as it is asked for. */
  readonly standing: Map<string, Taken>;
  readonly pricePool: PricePool;
}

/** Today's house with a few of its places, the lines, standing otherwise. Only the products that lines can take are priced,
 *  each once for every set of lines that takes it: a combination of choices is then a few additions. */
export class Together {
  private readonly products: readonly Product[];
  /** Of each line, the index of the product that an option is. */
  private readonly productOf: readonly ReadonlyMap<string, number>[];
  private readonly allowances: readonly string[];
  /** What draws on each allowance, and is open on it, outside the products. */
  private readonly outside: readonly { readonly drawn: number; readonly open: number }[];
  /** The net of the house outside of what lines and products do. */
  private readonly netOutside: Net;
  private readonly totalToday: number;
  private readonly indexOf: ReadonlyMap<Item, number>;
  private readonly asToday: readonly Stand[];
  /** The last combinations, the latest first. */
  private kept: readonly Collected[] = [];

  constructor(
    readonly lines: readonly Item[],
    private readonly house: PricedToday,
  ) {
    const { today, base } = house;
    const own = new Set(lines);
    this.indexOf = new Map(lines.map((line, index) => [line, index]));
    this.asToday = lines.map(({ selection, decided }) => ({ option: today.counted.get(selection), decided }));
    const taken = lines.flatMap((line) =>
      [...line.takeoffs.keys(), today.counted.get(line.selection)].flatMap((option) =>
        option === undefined ? [] : [{ option, supply: line.supply, key: keyOf(option, line.supply) }],
      ),
    );
    const products = new Map(taken.map(({ key, option, supply }) => [key, { option, supply }]));
    const indexOf = new Map([...products.keys()].map((key, index) => [key, index]));
    this.productOf = lines.map(
      ({ supply }) =>
        new Map([...products.values()].map(({ option }) => [option, indexOf.get(keyOf(option, supply)) ?? -1])),
    );
    this.products = [...products].map(([key, product]) => ({
      ...product,
      key,
      now: lines.flatMap((line, at) => (isTaken(line, key, today) ? [at] : [])).join(),
      others: (today.members.get(key) ?? []).filter((item) => !own.has(item)),
      known: new Map(),
    }));
    const drawing = [...lines, ...this.products.flatMap(({ others }) => others)];
    this.allowances = [...new Set(drawing.flatMap(({ allowance }) => allowance ?? []))].filter((id) =>
      base.committed.has(id),
    );
    const now = this.collect(this.today());
    this.outside = this.allowances.map((id, index) => ({
      drawn: (base.committed.get(id) ?? 0) - (now.drawn[index] ?? 0),
      open: (base.open.get(id) ?? 0) - (now.open[index] ?? 0),
    }));
    this.netOutside = takeOff(base.net, this.netOf(now, this.onAllowances(now)));
    this.totalToday = this.total(now).total;
  }

  /** Its place among the lines. */
  at(line: Item): number {
    return this.indexOf.get(line) ?? -1;
  }

  /** How the lines stand today. */
  today(): readonly Stand[] {
    return this.asToday;
  }

  /** The house with its lines standing so, in their order. */
  with(stands: readonly Stand[]): Combination {
    const raw = this.collect(stands);
    const { total, allowances, onNet } = this.total(raw);
    return { stands, taken: raw.taken, allowances, onNet, change: (total - this.totalToday) as Cents };
  }

  /** The change alone. */
  change(stands: readonly Stand[]): number {
    return this.with(stands).change;
  }

  /** What is committed on an allowance then. */
  committed(on: string, { allowances }: Combination): Cents {
    return (allowances[this.allowances.indexOf(on)]?.committed ?? this.house.base.committed.get(on) ?? 0) as Cents;
  }

  /** The product that a line takes, as the whole house buys it then. */
  pool(line: Item, option: string, { taken }: Combination): PricedPool | undefined {
    return taken[this.productOf[this.at(line)]?.get(option) ?? -1]?.pool;
  }

  /** Where the difference of two houses comes from that stand otherwise at one line; the parts add up to it. */
  difference(line: Item, before: Combination, after: Combination): EffectDifference {
    const at = this.at(line);
    let here = this.uncounted(line, after.stands[at]).change - this.uncounted(line, before.stands[at]).change;
    let elsewhere = 0;
    this.products.forEach((_, index) => {
      const [was, is] = [before.taken[index], after.taken[index]];
      if (was === is) return;
      const own = (is?.effects.get(line) ?? 0) - (was?.effects.get(line) ?? 0);
      here += own;
      elsewhere += (is?.effect ?? 0) - (was?.effect ?? 0) - own;
    });
    const allowances = this.allowances.flatMap((id, index): AllowanceMove[] => {
      const [was, is] = [before.allowances[index], after.allowances[index]];
      if (!was || !is || (id !== line.allowance && was.committed === is.committed)) return [];
      const change = (is.change - was.change) as Cents;
      return [{ id, change, before: was.committed, committed: is.committed, settled: is.settled }];
    });
    return {
      change: (after.change - before.change) as Cents,
      here: here as Cents,
      elsewhere: elsewhere as Cents,
      allowances,
      onNet: {
        markup: after.onNet.markup - before.onNet.markup,
        fee: after.onNet.fee - before.onNet.fee,
      } as OnNet,
    };
  }

  /** The lines and all that they move, with what the contract adds on the net of the whole house. */
  private total(raw: Collected) {
    const allowances = this.onAllowances(raw);
    const onNet = this.house.effects.onNet(addNets(this.netOutside, this.netOf(raw, allowances)));
    const total = raw.effect + sum(allowances.map(({ change }) => change)) + onNet.markup + onNet.fee;
    return { total, allowances, onNet };
  }

  private netOf({ net }: Collected, allowances: readonly { readonly net: number }[]): Net {
    return { allowance: sum(allowances.map((each) => each.net)), work: net } as Net;
  }

  private collect(stands: readonly Stand[]): Collected {
    for (const from of this.kept) {
      const moved = differing(from.stands, stands);
      if (moved) return this.keep(this.moved(from, stands, moved), from);
    }
    const none: Collected = {
      stands: [],
      takers: this.products.map(() => []),
      taken: [],
      effect: 0,
      net: 0,
      drawn: this.allowances.map(() => 0),
      open: this.allowances.map(() => 0),
    };
    return this.keep(this.moved(none, stands, [...this.lines.keys()], this.products.keys()));
  }

  /** In place of the one that it was made from. */
  private keep(collected: Collected, from?: Collected): Collected {
    this.kept = [collected, ...this.kept.filter((one) => one !== from)].slice(0, mostKept);
    return collected;
  }

  /** A combination with some lines standing otherwise: what they did is taken off, what they do is added. Sums are of whole cents. */
  private moved(
    from: Collected,
    stands: readonly Stand[],
    lines: readonly number[],
    products: Iterable<number> = [],
  ): Collected {
    const takers = [...from.takers];
    const touched = new Set(products);
    const drawn = [...from.drawn];
    const open = [...from.open];
    let { effect, net } = from;
    const count = (index: number, stand: Stand | undefined, sign: 1 | -1): void => {
      const line = this.lines[index];
      if (!line || !stand) return;
      const product = stand.option === undefined ? undefined : this.productOf[index]?.get(stand.option);
      if (product !== undefined && product >= 0) {
        touched.add(product);
        const others = (takers[product] ?? []).filter((one) => one !== index);
        takers[product] = sign < 0 ? others : [...others, index].sort((a, b) => a - b);
      }
      const uncounted = this.uncounted(line, stand);
      effect += sign * uncounted.change;
      net += sign * uncounted.net;
      const on = line.allowance === undefined ? -1 : this.allowances.indexOf(line.allowance);
      if (on >= 0 && !stand.decided) open[on] = (open[on] ?? 0) + sign;
    };
    for (const index of lines) count(index, from.stands[index], -1);
    for (const index of lines) count(index, stands[index], 1);
    const taken = [...from.taken];
    const weigh = (one: Taken | undefined, sign: 1 | -1): void => {
      if (!one) return;
      effect += sign * one.effect;
      net += sign * one.net;
      for (const [id, cents] of one.drawn) {
        const on = this.allowances.indexOf(id);
        drawn[on] = (drawn[on] ?? 0) + sign * cents;
      }
    };
    for (const index of touched) {
      const product = this.products[index];
      if (!product) continue;
      weigh(taken[index], -1);
      taken[index] = this.take(product, takers[index] ?? []);
      weigh(taken[index], 1);
    }
    return { stands, takers, taken, effect, net, drawn, open };
  }

  /** A deliberate none costs nothing, which may be less than the standard. */
  private uncounted(line: Item, stand: Stand | undefined): { readonly change: number; readonly net: number } {
    if (!stand?.decided || stand.option !== undefined) return nothing;
    const effect = this.house.effects.selection(line, noCost);
    return { change: effect.change, net: netOf(effect) };
  }

  private onAllowances({ drawn, open }: Collected) {
    return this.allowances.map((id, index) => {
      const outside = this.outside[index] ?? { drawn: 0, open: 0 };
      const committed = (outside.drawn + (drawn[index] ?? 0)) as Cents;
      const settled = outside.open + (open[index] ?? 0) === 0;
      const effect = this.house.effects.allowance(id, committed, settled);
      return { committed, settled, change: effect.change, net: netOf(effect) };
    });
  }

  private take({ key, option, supply, now, others, known }: Product, takers: readonly number[]): Taken | undefined {
    if (takers.length === 0 && others.length === 0) return undefined;
    const which = takers.join();
    const before = known.get(which);
    if (before) return before;
    const taken = which === now ? this.standing(key) : this.price(option, supply, this.members(others, takers));
    if (taken) known.set(which, taken);
    return taken;
  }

  /** Sorted as the house is: left-over cents go by the order of places. */
  private members(others: readonly Item[], takers: readonly number[]): readonly Item[] {
    const lines = takers.flatMap((index) => this.lines[index] ?? []);
    return [...others, ...lines].sort((a, b) => byText(a.selection, b.selection));
  }

  private standing(key: string): Taken | undefined {
    const { standing, today } = this.house;
    const pool = today.pools.get(key);
    const taken = standing.get(key) ?? (pool && this.weigh(pool));
    if (taken) standing.set(key, taken);
    return taken;
  }

  private price(option: string, supply: Item['supply'], members: readonly Item[]): Taken {
    return this.weigh(this.house.pricePool(option, members, supply, this.house.book));
  }

  private weigh(pool: PricedPool): Taken {
    const { effects: contract } = this.house;
    const effects = new Map<Item, number>();
    const drawn = new Map<string, number>();
    let net = 0;
    for (const item of pool.items) {
      const cost: Cost = pool.costs.get(item.selection) ?? noCost;
      const effect = contract.selection(item, cost);
      effects.set(item, effect.change);
      net += netOf(effect);
      const allowance = contract.allowanceOf(item)?.allowance;
      if (allowance) drawn.set(allowance.id, (drawn.get(allowance.id) ?? 0) + costOf(cost, allowance.covers));
    }
    return { pool, effects, drawn, effect: sum([...effects.values()]), net };
  }
}

function isTaken({ selection, supply }: Item, key: string, { counted }: World): boolean {
  const option = counted.get(selection);
  return option !== undefined && keyOf(option, supply) === key;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}

/** The lines in which two ways to stand differ; undefined where these are many. */
function differing(one: readonly Stand[], other: readonly Stand[]): readonly number[] | undefined {
  const found: number[] = [];
  for (let index = 0; index < other.length; index += 1) {
    const [a, b] = [one[index], other[index]];
    if (a === b || (a?.option === b?.option && a?.decided === b?.decided)) continue;
    if (found.push(index) > mostMoved) return undefined;
  }
  return found;
}
