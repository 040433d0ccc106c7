import type { Net } from '../model/index.js';
import type { Cents } from '../../base/units/index.js';
import { ContractEffects, type EffectDifference } from './contract-effects.js';
import type { Item, PriceBook, SizedAllowance } from './item.js';
import { priceWorld, swapIn, type Swap, type World } from './world.js';
import { invoicedOrders } from './invoiced.js';
import type { OnNet } from './markup.js';

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
  /** Of that change, what is added and deducted before mark-up on the net and fee, and these. */
  readonly net: Net;
  readonly onNet: OnNet;
  /** What the house would be with `option` for the item: its total less today's, and the costs that differ from today's.
   *  The option counts as decided; undefined leaves the item open. */
  whatIf(item: Item, option: string | undefined): EffectDifference & Swap;
  /** The change alone. */
  changeWith(item: Item, option: string | undefined): Cents;
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
): HousePrice {
  const book = { ...records, invoiced: invoicedOrders(allowances) };
  const items = [...unsorted].sort((a, b) => (a.selection < b.selection ? -1 : 1));
  const today = priceWorld(items, countedOption, book);
  const standard = priceWorld(items, (item) => item.standard, records);
  const effects = new ContractEffects(items, allowances, book, standard);
  const base = effects.of(today.costs, (item) => item.decided);
  const whatIf: HousePrice['whatIf'] = (item, option) => {
    const swap = swapIn(today, item, option, book);
    return { ...swap, ...effects.difference(base, today.costs, swap.costs, item, option !== undefined) };
  };
  return {
    items,
    allowances,
    book,
    today,
    standard,
    change: base.total,
    net: base.net,
    onNet: base.onNet,
    whatIf,
    changeWith: (item, option) => whatIf(item, option).change,
  };
}

/** Total change of the contract in a world where `choose` decides everything. What `isDecided` leaves out draws on its
 *  allowance as chosen, and still keeps the allowance from returning what is left. */
export function changeInWorld(
  house: HousePrice,
  choose: (item: Item) => string | undefined,
  isDecided: (item: Item) => boolean = () => true,
): { world: World; change: Cents } {
  const world = priceWorld(house.items, choose, house.book);
  const effects = new ContractEffects(house.items, house.allowances, house.book, house.standard);
  return { world, change: effects.of(world.costs, isDecided).total };
}
