import { factOf } from '../fact/index.js';
import { goesWithUnits, type GoesWith, type Option, type SupplyRule } from '../model/index.js';
import {
  asPrinted,
  decimalNumber,
  fewestDigits,
  printAmount,
  printLength,
  printsAs,
  type Unit,
  lastDigits,
  shown,
  unitName,
  unitSize,
} from '../../base/units/index.js';
import { jointVolume, packsFor, usedWith, withWaste } from './arithmetic/index.js';
import { numberOf } from './attribute.js';
import type { Beside } from './beside.js';
import type { SupplyQuantity, Takeoff } from './takeoff.js';

/** What is used up with a net quantity of an option's part: the rules that go with its unit and suit the option. */
export function suppliesOf(
  rules: readonly SupplyRule[],
  option: Option,
  net: { readonly quantity: number; readonly unit: Unit },
  beside: Beside = nothingBeside,
): readonly SupplyQuantity[] {
  return rules
    .filter(({ usage, when, goesWith }) => {
      const unit = usage.of === 'cu ft' ? 'sq ft' : usage.of;
      const suits = when.every(({ attribute, says }) => says.includes(option.attributes[attribute]?.text ?? ''));
      return suits && (goesWith === undefined ? unit === net.unit : beside[goesWith] > 0);
    })
    .map((rule) => supplyOf(rule, option, rule.goesWith === undefined ? net : besideWith(rule.goesWith, beside)));
}

function besideWith(goesWith: GoesWith, beside: Beside): SupplyQuantity['follows'] {
  return { quantity: beside[goesWith], unit: goesWithUnits[goesWith], what: besideNames[goesWith] };
}

const besideNames: Readonly<Record<GoesWith, string>> = {
  'outside-corners': 'outside corners',
  pairs: 'pairs of leaves',
  hinges: 'hinges by the height of each leaf',
};

const nothingBeside: Beside = { 'outside-corners': 0, pairs: 0, hinges: 0 };

function supplyOf(rule: SupplyRule, option: Option, follows: SupplyQuantity['follows']): SupplyQuantity {
  const { what, usage, namedBy, pack, why, source } = rule;
  const factors = [...timesFactor(rule, option), ...(usage.of === 'cu ft' ? jointFactor(option) : [])];
  const name = namedBy === undefined ? undefined : option.attributes[namedBy]?.text;
  const net = usedWith(
    factors.reduce((product, { times }) => product * times, follows.quantity),
    usage,
  );
  const waste = decimalNumber(rule.waste);
  return {
    what: name === undefined ? what : `${what}, ${name}`,
    unit: usage.unit,
    follows,
    usage,
    factors,
    net,
    waste: { percent: waste * 100 },
    required: withWaste(net, waste),
    ...(pack && { pack }),
    ...(why !== undefined && { why }),
    source,
  };
}

function timesFactor({ timesBy }: SupplyRule, option: Option): SupplyQuantity['factors'] {
  const times = timesBy === undefined ? undefined : numberOf(option, timesBy);
  return times === undefined ? [] : [{ times, why: `${timesBy ?? ''}: ${option.name} says ${times}` }];
}

function jointFactor(option: Option): SupplyQuantity['factors'] {
  const [length, width, joint] = (['length', 'width', 'joint'] as const).map((name) => factOf(option, 'tile', name));
  const { thickness } = option;
  if (length === undefined || width === undefined || joint === undefined || thickness === undefined)
    return [{ times: 0, why: `${option.name} gives no thickness: how deep the joints are is not known` }];
  const times = jointVolume({ length, width, thickness }, joint);
  const size = `${printLength(length)} × ${printLength(width)}, ${printLength(thickness)} thick`;
  return [
    {
      times,
      why: `${unitName('cu ft')} of joint in a ${unitName('sq ft')}: ${printLength(joint)} around pieces of ${size}`,
    },
  ];
}

/** A supply over several places; for the whole house in whole packs bought once. */
export interface SupplyOrder {
  readonly trade: string;
  readonly what: string;
  readonly unit: string;
  readonly net: number;
  readonly required: number;
  readonly pack?: { readonly name: string; readonly holds: number };
  readonly packs?: number;
  /** By selection, in the Book's order. */
  readonly shares: readonly { readonly selection: string; readonly required: number }[];
  readonly sources: readonly string[];
}

interface Using {
  readonly selection: string;
  readonly trade: string;
  readonly takeoff: readonly Takeoff[];
}

/** Supplies for the whole house, in whole packs: one for each trade, name, unit and pack, in order of first use. */
export function poolSupplies(used: readonly Using[]): readonly SupplyOrder[] {
  return sumSupplies(used).map((pool) =>
    pool.pack ? { ...pool, packs: packsFor(pool.required, 0, pool.pack.holds) } : pool,
  );
}

/** The same for a part of the house, such as a room: no packs are opened for it alone. */
export function sumSupplies(used: readonly Using[]): readonly SupplyOrder[] {
  const pools = new Map<string, Pool>();
  for (const { selection, trade, takeoff } of used) {
    for (const supply of takeoff.flatMap(({ supplies }) => supplies ?? [])) {
      if (supply.required === 0) continue;
      const { what, unit, pack } = supply;
      const key = [trade, what, unit, pack?.name, pack?.holds].join('\n');
      const pool = pools.get(key) ?? {
        of: { trade, what, unit, ...(pack && { pack }) },
        sums: { net: 0, required: 0 },
        shares: new Map<string, number>(),
        sources: new Set<string>(),
      };
      pools.set(key, pool);
      pool.sums.net += supply.net;
      pool.sums.required += supply.required;
      pool.shares.set(selection, (pool.shares.get(selection) ?? 0) + supply.required);
      pool.sources.add(supply.source);
    }
  }
  return [...pools.values()].map(({ of, sums, shares, sources }) => ({
    ...of,
    ...sums,
    shares: [...shares].map(([selection, required]) => ({ selection, required })),
    sources: [...sources],
  }));
}

/** A supply while it is summed. */
interface Pool {
  readonly of: Pick<SupplyOrder, 'trade' | 'what' | 'unit' | 'pack'>;
  readonly sums: { net: number; required: number };
  readonly shares: Map<string, number>;
  readonly sources: Set<string>;
}

/** `380 lin ft / 1,000 sq ft × 844 sq ft` with its factors, for people; with as many digits as lead to what is required as printed. */
export function supplyWords(supply: SupplyQuantity): string {
  const { follows, usage, factors, waste, why } = supply;
  const more = digitsOf(supply);
  const per = shown(usage.per, usage.of);
  const [used, net] = [shown(usage.amount, usage.unit), shown(follows.quantity, follows.unit)];
  const isOne = Math.abs(per.amount - 1) < 1e-9;
  const each = isOne ? (usage.of === 'each' ? '' : 'a ') : `${printAmount(per.amount, 6)} `;
  const rate = `${printAmount(used.amount, 6)} ${used.unit} for ${each}${per.unit}`;
  const of = follows.what === undefined ? '' : `, ${follows.what},`;
  const times = factors.map((factor) => ` × ${printAmount(factor.times, 4 + more)} (${factor.why})`).join('');
  const wasted = waste.percent === 0 ? '' : `, and ${printAmount(waste.percent, 2)} % waste`;
  const quantity = `${printAmount(net.amount, net.digits + more)} ${net.unit}`;
  return `${quantity}${of}${times} at ${rate}${wasted}${why === undefined ? '' : `; ${why}`}`;
}

/** How many digits more than usual the quantity and its factors need. */
function digitsOf({ follows, usage, factors, waste, required }: SupplyQuantity): number {
  return fewestDigits(0, (more) => {
    const times = factors.reduce((product, factor) => product * asPrinted(factor.times, 4 + more), 1);
    const one = unitSize(follows.unit);
    const net = usedWith(asPrinted(follows.quantity / one, lastDigits() + more) * one * times, usage);
    return printsAs(withWaste(net, waste.percent / 100), required, 1);
  });
}
