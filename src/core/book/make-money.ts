import type { Records } from '../model/index.js';
import {
  addCosts,
  agreedSteps,
  contractSteps,
  netSteps,
  ownerPurchases,
  worldCost,
  type HousePrice,
  type SelectionStep,
} from '../price/index.js';
import { later, printMoney, withLater, type Cents, type IsoDate } from '../../base/units/index.js';
import type { AgreedMoney, BookMoney, BookSelection, Total } from './book.js';
import { optionId } from './draft.js';
import { forecastHouse } from './forecast.js';
import { groupBy } from './group-by.js';
import type { PricedDecision } from './make-decisions.js';
import { houseMoney } from './price-choices.js';
import { priceStates } from './price-states.js';
import { listQuotes } from './quotes.js';

/** What money depends on beside the house as priced. */
export interface MoneyOf {
  readonly on: IsoDate;
  /** The contract sum as it was first agreed. */
  readonly agreedSum: Cents;
  readonly decisions: () => readonly PricedDecision[];
}

export function makeMoney(
  records: Records,
  house: HousePrice,
  selections: readonly BookSelection[],
  { on, agreedSum, decisions }: MoneyOf,
): BookMoney {
  const { contract, pricesGoodFor: goodFor } = records.house;
  const { allowances, sharedPacks, netChange, onNet, today } = houseMoney(house, selections);
  const forecast = later(() => forecastHouse(house, decisions()));
  const added = netSteps(netChange, records.changes, contract);
  const steps = contractSteps(contract, allowances, describeAll(records, selections), sharedPacks, added);
  const known: Omit<BookMoney, keyof LaterMoney> = {
    tax: contract.tax,
    markupOn: contract.markupOn,
    overageMarkup: contract.overageMarkup,
    workMarkup: contract.workMarkup,
    ...(contract.fee && { fee: contract.fee }),
    creditReturns: contract.creditReturns,
    creditMarkup: contract.creditMarkup,
    ownerFurnishedInstall: contract.ownerFurnishedInstall,
    rounding: 'each line once, half up, to the cent',
    contingency: contract.contingency,
    ...(contract.dayCost !== undefined && { dayCost: contract.dayCost }),
    steps,
    sharedPacks,
    netChange,
    onNet,
    contractSum: contract.sum,
    agreed: agreedMoney(records, agreedSum, today),
    today,
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
    ...(goodFor !== undefined && { pricesGoodFor: goodFor }),
    ownerPurchases: ownerPurchases(house.today),
  };
  return withLater<typeof known, LaterMoney>(known, {
    low: () => forecast().low.total,
    expected: () => forecast().expected.total,
    high: () => forecast().high.total,
    forecast,
    priceStates: () => priceStates(allowances, selections, records.options, { on, goodFor }),
    quotes: () => listQuotes(records.options, selections, on, goodFor),
  });
}

/** What asks for the prices of all that is open. */
type LaterMoney = Pick<BookMoney, 'low' | 'expected' | 'high' | 'forecast' | 'priceStates' | 'quotes'>;

function agreedMoney({ changes }: Records, agreedSum: Cents, today: Cents): AgreedMoney {
  const approved = changes.filter(({ state }) => state === 'approved');
  const changeOrders = approved.reduce((total, { amount }) => total + amount, 0) as Cents;
  const current = (agreedSum + changeOrders) as Cents;
  return {
    steps: agreedSteps(agreedSum, approved, today),
    changeOrders,
    current,
    notCovered: (today - current) as Cents,
  };
}

function describeAll(records: Records, selections: readonly BookSelection[]): SelectionStep[] {
  const rooms = new Map(records.rooms.map((room) => [room.slug, `${room.number} ${room.name}`]));
  const options = new Map(records.options.map((option) => [optionId(option.category, option.slug), option.name]));
  return selections.map(({ id, room, category, counted, placeText, change, reckoning, insteadOf }) => {
    const option = counted === undefined ? undefined : options.get(optionId(category, counted));
    return {
      id,
      words: `${rooms.get(room) ?? room}, ${placeText}: ${option ?? 'none'}`,
      change,
      why: [reckoning?.why, keptWords(insteadOf)].filter((text) => text !== undefined).join('; '),
    };
  });
}

/** Of an order that was changed, what its supplier keeps. */
function keptWords(before: BookSelection['insteadOf']): string | undefined {
  const kept = before?.restocking;
  return kept && `the supplier keeps ${printMoney(kept.amount, 'always')} of what was ordered before: ${kept.why}`;
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
