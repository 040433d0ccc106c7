import type { Net } from '../model/index.js';
import { byText, type Cents } from '../../base/units/index.js';
import { ContractEffects } from './contract-effects.js';
import type { Item, PriceBook, SizedAllowance } from './item.js';
import { priceWorld, type World } from './world.js';
import { invoicedOrders } from './invoiced.js';
import type { OnNet } from './markup.js';
import { OpenChoices } from './open-choices.js';
import { pricePool, type PricePool } from './pool.js';
import type { ReasonedFigure } from './cost.js';
import { restockingOf } from './restocking.js';

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
  /** Of that change, what suppliers keep of orders that were changed, by selection; whatever is chosen later, it is kept. */
  readonly restocking: ReadonlyMap<string, ReasonedFigure>;
  /** Of that change, what is added and deducted before mark-up on the net and fee, and these. */
  readonly net: Net;
  readonly onNet: OnNet;
  /** What is committed on each allowance. */
  readonly committed: ReadonlyMap<string, number>;
  /** What another choice would cost. */
  readonly choices: OpenChoices;
  /** By which its orders are priced. */
  readonly pricePool: PricePool;
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
  records: PriceBook,
  price: PricePool = pricePool,
): HousePrice {
  const book = { ...records, invoiced: invoicedOrders(allowances) };
  const items = [...unsorted].sort((a, b) => byText(a.selection, b.selection));
  const today = priceWorld(items, countedOption, book, price);
  const standard = priceWorld(items, (item) => item.standard, records, price);
  const effects = new ContractEffects(items, allowances, book, standard);
  const base = effects.of(today.costs, (item) => item.decided);
  const priced = { today, base, effects, book, standing: new Map(), pricePool: price };
  const choices = new OpenChoices(items, priced);
  const { net, onNet, committed } = base;
  const restocking = restockingOf(items, choices, book);
  const change = (base.total + totalOf(restocking)) as Cents;
  return {
    items,
    allowances,
    book,
    today,
    standard,
    change,
    restocking,
    net,
    onNet,
    committed,
    choices,
    pricePool: price,
  };
}

/** Total change of the contract in a world where `choose` decides everything. What `isDecided` leaves out draws on its
 *  allowance as chosen, and still keeps the allowance from returning what is left. */
export function changeInWorld(
  house: HousePrice,
  choose: (item: Item) => string | undefined,
  isDecided: (item: Item) => boolean = () => true,
): { world: World; change: Cents } {
  const world = priceWorld(house.items, choose, house.book, house.pricePool);
  const effects = new ContractEffects(house.items, house.allowances, house.book, house.standard);
  return { world, change: (effects.of(world.costs, isDecided).total + totalOf(house.restocking)) as Cents };
}

function totalOf(figures: ReadonlyMap<string, ReasonedFigure>): number {
  return [...figures.values()].reduce((total, { amount }) => total + amount, 0);
}
