import type { Records } from '../model/index.js';
import {
  addCosts,
  agreedSteps,
  changeInWorld,
  contractSteps,
  makeLedger,
  ownerPurchases,
  worldCost,
} from '../price/index.js';
import type { HousePrice, Item } from '../price/index.js';
import type { Cents } from '../units/index.js';
import type { AgreedMoney, BookMoney, BookSelection, Total } from './book.js';
import { optionId } from './draft.js';
import { groupBy } from './group-by.js';

export function makeMoney(records: Records, house: HousePrice, selections: readonly BookSelection[]): BookMoney {
  const { contract } = records.house;
  const ledger = makeLedger(house);
  const { low, high } = forecast(house, selections);
  const moved = [...ledger, ...selections].reduce((total, { change }) => total + change, 0);
  const sharedPacks = (house.change - moved) as Cents;
  const steps = contractSteps(contract.sum, ledger, describeAll(records, selections), sharedPacks);
  const sum = (change: Cents): Cents => (contract.sum + change) as Cents;
  return {
    tax: contract.tax,
    overageMarkup: contract.overageMarkup,
    creditReturns: contract.creditReturns,
    creditMarkup: contract.creditMarkup,
    ownerFurnishedInstall: contract.ownerFurnishedInstall,
    rounding: 'each line once, half up, to the cent',
    contingency: contract.contingency,
    steps,
    sharedPacks,
    contractSum: contract.sum,
    agreed: agreedMoney(records, sum(house.change)),
    today: sum(house.change),
    low: sum(low),
    high: sum(high),
    finishes: worldCost(house.today),
    byRoom: totals(
      records.rooms.map((room) => room.slug),
      selections,
      (selection) => selection.room,
    ),
    byTrade: totals(
      records.trades.map((trade) => trade.slug),
      selections,
      (selection) => selection.trade,
    ),
    byCategory: totals(
      records.categories.map((category) => category.slug),
      selections,
      (selection) => selection.category,
    ),
    allowances: ledger,
    ownerPurchases: ownerPurchases(house.today),
  };
}

function agreedMoney({ house, changes }: Records, today: Cents): AgreedMoney {
  const approved = changes.filter(({ state }) => state === 'approved');
  const changeOrders = approved.reduce((total, { amount }) => total + amount, 0) as Cents;
  const current = (house.contract.sum + changeOrders) as Cents;
  return {
    steps: agreedSteps(house.contract.sum, approved, today),
    changeOrders,
    current,
    notCovered: (today - current) as Cents,
  };
}

/** The house with the cheapest and the dearest of what is still open, each computed as a whole house with its pooled
 *  orders and allowances. Cheapest and dearest are by what each choice alone does to today's total. */
function forecast(house: HousePrice, selections: readonly BookSelection[]): { low: Cents; high: Cents } {
  const byId = new Map(selections.map((selection) => [selection.id, selection]));
  const pick = (direction: 1 | -1) => (item: Item) => {
    if (item.decided) return item.chosen;
    const alternatives = byId.get(item.selection)?.alternatives ?? [];
    if (alternatives.length === 0) return item.standard;
    const rank = (alternative: (typeof alternatives)[number]) =>
      direction * (alternative.againstToday * 1e6 + alternative.cost.total / 1e6);
    const best = alternatives.reduce((a, b) => (rank(b) < rank(a) ? b : a));
    return optionId(item.category, best.option);
  };
  return { low: changeInWorld(house, pick(1)).change, high: changeInWorld(house, pick(-1)).change };
}

function describeAll(
  records: Records,
  selections: readonly BookSelection[],
): { id: string; words: string; change: Cents }[] {
  const rooms = new Map(records.rooms.map((room) => [room.slug, `${room.number} ${room.name}`]));
  const options = new Map(records.options.map((option) => [optionId(option.category, option.slug), option.name]));
  return selections.map(({ id, room, category, counted, placeText, change }) => {
    const option = counted === undefined ? undefined : options.get(optionId(category, counted));
    return { id, words: `${rooms.get(room) ?? room}, ${placeText}: ${option ?? 'none'}`, change };
  });
}

function totals(
  slugs: readonly string[],
  selections: readonly BookSelection[],
  keyOf: (selection: BookSelection) => string,
): Total[] {
  const groups = groupBy(selections, keyOf);
  return slugs.map((of) => {
    const group = groups.get(of) ?? [];
    return {
      of,
      cost: addCosts(group.map((selection) => selection.cost)),
      change: group.reduce((sum, selection) => sum + selection.change, 0) as Cents,
    };
  });
}
