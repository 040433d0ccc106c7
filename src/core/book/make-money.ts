import type { Records } from '../model/index.js';
import { addCosts, agreedSteps, contractSteps, ownerPurchases, worldCost } from '../price/index.js';
import type { HousePrice, SelectionStep } from '../price/index.js';
import type { Cents } from '../../base/units/index.js';
import type { AgreedMoney, BookMoney, BookSelection, Total } from './book.js';
import { optionId } from './draft.js';
import { forecastHouse } from './forecast.js';
import { groupBy } from './group-by.js';
import type { PricedDecision } from './make-decisions.js';
import { houseMoney } from './price-choices.js';

export function makeMoney(
  records: Records,
  house: HousePrice,
  selections: readonly BookSelection[],
  decisions: readonly PricedDecision[],
): BookMoney {
  const { contract } = records.house;
  const { allowances, sharedPacks, today } = houseMoney(house, selections);
  const forecast = forecastHouse(house, decisions);
  const steps = contractSteps(contract, allowances, describeAll(records, selections), sharedPacks);
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
    agreed: agreedMoney(records, today),
    today,
    low: forecast.low.total,
    expected: forecast.expected.total,
    high: forecast.high.total,
    forecast,
    upgrades: sumOf(selections.filter(({ change }) => change > 0)),
    credits: sumOf(selections.filter(({ change }) => change < 0)),
    net: sumOf(selections),
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
    allowances,
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

function describeAll(records: Records, selections: readonly BookSelection[]): SelectionStep[] {
  const rooms = new Map(records.rooms.map((room) => [room.slug, `${room.number} ${room.name}`]));
  const options = new Map(records.options.map((option) => [optionId(option.category, option.slug), option.name]));
  return selections.map(({ id, room, category, counted, placeText, change, reckoning }) => {
    const option = counted === undefined ? undefined : options.get(optionId(category, counted));
    return {
      id,
      words: `${rooms.get(room) ?? room}, ${placeText}: ${option ?? 'none'}`,
      change,
      why: reckoning?.why ?? '',
    };
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
      change: sumOf(group),
    };
  });
}

function sumOf(selections: readonly BookSelection[]): Cents {
  return selections.reduce((sum, { change }) => sum + change, 0) as Cents;
}
