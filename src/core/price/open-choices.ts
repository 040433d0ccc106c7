import { remember, type Cents } from '../../base/units/index.js';
import type { EffectDifference } from './contract-effects.js';
import { noCost, type Cost } from './cost.js';
import { Combinations, type Extremes, type Range } from './combinations.js';
import type { Item } from './item.js';
import type { PricedPool } from './pool.js';
import { Together, type PricedToday, type Stand } from './together.js';

/** What an option does to the house. */
export interface ChoiceFigure extends EffectDifference {
  /** Total of the house with it, less today's. */
  readonly houseChange: Cents;
  readonly cost: Cost;
  /** The product, as the whole house would buy it then. */
  readonly pool?: PricedPool;
}

/** Where another open choice on the same allowance stands while an option is priced; open where nothing can be chosen. */
export interface Rest {
  readonly item: Item;
  readonly stand: Stand;
}

/** Choices of a house priced in company. An open choice on an allowance is priced in the house where the other open choices
 *  on it stand at their standard: alone, an allowance that still holds enough would answer nothing for every option. Any
 *  other choice is priced in the house as it stands today. */
export class OpenChoices {
  private readonly known = new Map<string, Together>();
  private readonly combined = new Map<Together, Combinations>();
  private readonly ranks = new Map<Item, readonly string[]>();
  /** Found by the list alone where it is asked for with the same one. */
  private readonly knownBy = new WeakMap<readonly Item[], Together>();
  private readonly alone = new Map<Item, readonly Item[]>();
  private readonly rests = new Map<Item, Stand>();
  private readonly company: ReadonlyMap<string, readonly Item[]>;

  constructor(
    items: readonly Item[],
    private readonly house: PricedToday,
  ) {
    const company = new Map<string, Item[]>();
    for (const item of items) {
      const { allowance } = item;
      if (allowance === undefined || item.decided || !house.base.committed.has(allowance)) continue;
      company.set(allowance, [...(company.get(allowance) ?? []), item]);
    }
    this.company = company;
  }

  /** The open choices on an allowance. */
  on(allowance: string): readonly Item[] {
    return this.company.get(allowance) ?? [];
  }

  /** Lines that are priced together; the same lines are priced once. */
  together(lines: readonly Item[]): Together {
    return remember(this.knownBy, lines, () =>
      remember(this.known, lines.map(({ selection }) => selection).join(' '), () => new Together(lines, this.house)),
    );
  }

  /** The open choices on the allowance of an open one, itself among them; of any other choice, that one. */
  linesOf(item: Item): readonly Item[] {
    const lines = item.allowance === undefined || item.decided ? [] : this.on(item.allowance);
    return lines.length === 0 ? remember(this.alone, item, () => [item]) : lines;
  }

  /** Where the other open choices on its allowance stand while its options are priced: at the standard, or at the middle one
   *  by price of what is considered. */
  restOf(item: Item): readonly Rest[] {
    return this.linesOf(item)
      .filter((other) => other !== item)
      .map((other) => ({ item: other, stand: this.resting(other) }));
  }

  /** Where every open choice on an allowance rests, in whose company another is priced. */
  restOn(allowance: string): readonly Rest[] {
    return this.on(allowance).map((item) => ({ item, stand: this.resting(item) }));
  }

  /** What the others do that stand at their standard, before this choice is made: total less today's. */
  restChange(item: Item): Cents {
    return this.priced(item).with(this.stands(item, this.asToday(item))).change;
  }

  /** The difference of two houses: with `option` here, and with the place left as it is. Undefined leaves it open. */
  figure(item: Item, option: string | undefined): ChoiceFigure {
    const together = this.priced(item);
    const before = together.with(this.stands(item, this.asToday(item)));
    const then = together.with(this.stands(item, { option, decided: option !== undefined }));
    const pool = option === undefined ? undefined : together.pool(item, option, then);
    return {
      ...together.difference(item, before, then),
      houseChange: then.change,
      cost: pool?.costs.get(item.selection) ?? noCost,
      ...(pool && { pool }),
    };
  }

  /** The same difference over what else may still be chosen among the lines that are decided with it: the figure itself, with
   *  the others where they rest, lies in it. */
  range(item: Item, option: string, lines: readonly Item[]): Range {
    const resting = lines.map((line) => (line.allowance === undefined ? this.asToday(line) : this.resting(line)));
    return this.combinations(lines).range(this.together(lines).at(item), option, resting);
  }

  /** The cheapest and the dearest way to decide open lines, priced together. `besides` is compared too. */
  extremes(lines: readonly Item[], besides: readonly (readonly Stand[])[] = []): Extremes {
    return this.combinations(lines).extremes(besides);
  }

  /** What open lines may draw on their allowance together, beside what is drawn today. */
  drawn(allowance: string): Range {
    const lines = this.on(allowance);
    const together = this.together(lines);
    const today = this.house.base.committed.get(allowance) ?? 0;
    return this.combinations(lines).of((way) => together.committed(allowance, together.with(way)) - today);
  }

  /** What an allowance would be drawn on more if one of its open lines took an option and the others stayed open. Places that
   *  share the order draw more or less then: it is the difference of them all. */
  drawnAlone(item: Item, option: string, allowance: string): Cents {
    const together = this.priced(item);
    const then = together.with(together.today().with(together.at(item), { option, decided: true }));
    return (together.committed(allowance, then) - (this.house.base.committed.get(allowance) ?? 0)) as Cents;
  }

  /** What may still be chosen for an open line, from the cheapest to the dearest by what each alone does to today's house. */
  ranked(item: Item): readonly string[] {
    return remember(this.ranks, item, () => {
      const together = this.priced(item);
      const alone = item.considered.map((option) => {
        const then = together.with(together.today().with(together.at(item), { option, decided: true }));
        const cost = together.pool(item, option, then)?.costs.get(item.selection) ?? noCost;
        return { option, change: then.change, cost: cost.total };
      });
      return alone.sort((a, b) => a.change - b.change || a.cost - b.cost).map(({ option }) => option);
    });
  }

  /** The middle one by price of what may still be chosen; the cheaper of two. */
  middle(item: Item): string | undefined {
    const ranked = this.ranked(item);
    return ranked[(ranked.length - 1) >> 1];
  }

  private combinations(lines: readonly Item[]): Combinations {
    const together = this.together(lines);
    return remember(
      this.combined,
      together,
      () =>
        new Combinations(
          together,
          lines.map((line) => this.ways(line)),
        ),
    );
  }

  private resting(item: Item): Stand {
    return remember(this.rests, item, () => {
      const option = item.standard ?? this.middle(item);
      return option === undefined ? { decided: false } : { option, decided: true };
    });
  }

  private ways(item: Item): readonly Stand[] {
    const ways = this.ranked(item).map((option) => ({ option, decided: true }));
    return ways.length === 0 ? [this.asToday(item)] : ways;
  }

  private priced(item: Item): Together {
    return this.together(this.linesOf(item));
  }

  private stands(item: Item, own: Stand): readonly Stand[] {
    return this.linesOf(item).map((line) => (line === item ? own : this.resting(line)));
  }

  private asToday(item: Item): Stand {
    return { option: this.house.today.counted.get(item.selection), decided: item.decided };
  }
}
