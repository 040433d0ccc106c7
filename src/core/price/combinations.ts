import type { Cents } from '../../base/units/index.js';
import type { Priced } from './cost.js';
import type { Item } from './item.js';
import type { Stand, Together } from './together.js';

/** How many combinations are priced one by one. More would make a Book slow. */
export const mostCombinations = 1024;

/** The lowest and the highest of a figure. */
export interface Range {
  readonly low: Cents;
  readonly high: Cents;
  readonly priced: Priced;
}

/** The cheapest and the dearest way to decide some lines, and the totals less today's. */
export interface Extremes extends Range {
  readonly lowest: readonly Stand[];
  readonly highest: readonly Stand[];
}

/** The ways in which a few lines may be decided, each priced once. */
export class Combinations {
  readonly priced: Priced;
  private readonly now: readonly Stand[];
  /** Each line's ways, the cheapest first, and after them how it stands today. */
  private readonly stands: readonly (readonly Stand[])[];
  /** Which of them is how the line stands today. */
  private readonly asNow: readonly number[];
  /** A combination's number is the sum of each line's way times its stride. */
  private readonly strides: readonly number[];
  private readonly known = new Map<number, number>();

  constructor(
    private readonly together: Together,
    private readonly ways: readonly (readonly Stand[])[],
  ) {
    this.priced = ways.reduce((count, { length }) => count * length, 1) <= mostCombinations ? 'all' : 'ends';
    this.now = together.today();
    this.stands = ways.map((own, line) => [...own, this.now[line] ?? { decided: false }]);
    this.asNow = ways.map((own, line) => indexOfNow(own, together.lines[line], this.now[line]));
    let stride = 1;
    this.strides = this.stands.map(({ length }) => (stride *= length) / length);
  }

  /** `besides` are compared as well, and lie in the range at all events. The first of equals is kept. */
  extremes(besides: readonly (readonly Stand[])[] = []): Extremes {
    const found = new Found<readonly Stand[]>();
    if (this.priced === 'all') for (const way of this.over()) found.see(this.total(way), () => this.standing(way));
    else for (const way of this.ends()) found.see(this.together.change(way), () => way);
    for (const way of besides) found.see(this.together.change(way), () => way);
    return { ...found.range(this.priced), lowest: found.lowest ?? this.now, highest: found.highest ?? this.now };
  }

  /** What one way of a line moves against how it stands today, over the ways of the other lines. `resting` is compared as
   *  well: how the others may stand besides. */
  range(line: number, option: string, resting: readonly Stand[]): Range {
    const ways = this.stands[line] ?? [];
    const [then, now] = [ways.findIndex((way) => way.option === option), this.asNow[line] ?? ways.length];
    const stride = this.strides[line] ?? 0;
    const found = new Found<undefined>();
    const compare = (others: readonly Stand[]): void => {
      const [is, was] = [then, now].map((way) =>
        this.together.change(others.with(line, ways[way] ?? { decided: false })),
      );
      found.see((is ?? 0) - (was ?? 0), nothing);
    };
    if (this.priced === 'ends') this.ends().forEach(compare);
    else
      for (const way of this.over(line))
        found.see(this.total(way + then * stride) - this.total(way + now * stride), nothing);
    compare(resting);
    return found.range(this.priced);
  }

  /** The lowest and the highest of anything else over all ways. */
  of(value: (stands: readonly Stand[]) => number): Range {
    const found = new Found<undefined>();
    const all = this.priced === 'all' ? this.over().map((way) => this.standing(way)) : this.ends();
    for (const way of all) found.see(value(way), nothing);
    return found.range(this.priced);
  }

  /** The numbers of all combinations; of a line that is left out, the first way. */
  private over(without?: number): readonly number[] {
    return this.ways.reduce<readonly number[]>(
      (numbers, { length }, line) =>
        line === without
          ? numbers
          : numbers.flatMap((number) => Array.from({ length }, (_, way) => number + way * (this.strides[line] ?? 0))),
      [0],
    );
  }

  private ends(): readonly (readonly Stand[])[] {
    return [0, -1].map((end) => this.ways.map((own) => own.at(end) ?? { decided: false }));
  }

  private standing(number: number): readonly Stand[] {
    return this.stands.map(
      (own, line) => own[Math.floor(number / (this.strides[line] ?? 1)) % own.length] ?? { decided: false },
    );
  }

  private total(number: number): number {
    const known = this.known.get(number) ?? this.together.change(this.standing(number));
    this.known.set(number, known);
    return known;
  }
}

const nothing = (): undefined => undefined;

/** Beside allowances it makes no difference whether what is counted is decided. */
function indexOfNow(ways: readonly Stand[], line: Item | undefined, now: Stand | undefined): number {
  const same = line?.allowance === undefined ? ways.findIndex(({ option }) => option === now?.option) : -1;
  return same < 0 ? ways.length : same;
}

class Found<T> {
  private low = Infinity;
  private high = -Infinity;
  lowest: T | undefined;
  highest: T | undefined;

  see(value: number, what: () => T): void {
    if (value < this.low) [this.low, this.lowest] = [value, what()];
    if (value > this.high) [this.high, this.highest] = [value, what()];
  }

  range(priced: Priced): Range {
    return { low: this.low as Cents, high: this.high as Cents, priced };
  }
}
