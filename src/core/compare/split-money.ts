import type { Book, PricedChoices } from '../book/index.js';
import { takeOff } from '../price/index.js';
import type { Cents } from '../../base/units/index.js';
import type { AllowanceChange, MoneyChange } from './comparison.js';
import type { RoomChange } from './room-change.js';

/** Houses between the older and the newer one, priced from records of both. */
export interface Between {
  /** The newer rooms with the older house record and price book: what choices alone do. */
  readonly choices?: PricedChoices;
  /** The newer rooms and house record with the older price book. */
  readonly terms?: PricedChoices;
  /** The newer house with the older records of shared folders; absent where these are the same. */
  readonly ownRecords?: PricedChoices;
}

/** The house of the newer rooms at the older prices, as near as it can be had. */
export function choicesAlone(to: Book, between: Between): PricedChoices {
  return between.choices ?? between.terms ?? to;
}

/** Splits the difference on the way older house → newer rooms → newer terms → newer prices. Each step is the difference of
 *  two whole houses, and within the first every selection and allowance is told; so all of it adds up to the cent. What the
 *  contract adds on the net of them all is told apart, since it belongs to none. */
export function splitMoney(
  { from, to, between }: { readonly from: Book; readonly to: Book; readonly between: Between },
  rooms: readonly RoomChange[],
  allowances: readonly AllowanceChange[],
): MoneyChange {
  const alone = choicesAlone(to, between);
  const difference = to.money.today - from.money.today;
  const selections = rooms.flatMap((room) => room.selections);
  const choices = sum(selections.filter(({ own }) => own).map(({ byChoice }) => byChoice));
  const elsewhere = sum(selections.filter(({ own }) => !own).map(({ byChoice }) => byChoice));
  const sharedPacks = alone.money.sharedPacks - from.money.sharedPacks + elsewhere;
  const byAllowances = sum(allowances.map(({ byChoice }) => byChoice.total));
  const contractSum = to.money.contractSum - from.money.contractSum;
  const { choices: first, terms: second, ownRecords } = between;
  const terms = first && second ? beforeNet(second) - beforeNet(first) - contractSum : 0;
  const markup = to.money.onNet.markup - from.money.onNet.markup;
  const fee = to.money.onNet.fee - from.money.onNet.fee;
  const priceBook = difference - choices - byAllowances - sharedPacks - contractSum - terms - markup - fee;
  const sharedBook = ownRecords ? beforeNet(to) - beforeNet(ownRecords) : 0;
  return {
    difference,
    choices,
    allowances: byAllowances,
    sharedPacks,
    priceBook,
    sharedBook,
    terms,
    contractSum,
    markup,
    fee,
    netChange: takeOff(to.money.netChange, from.money.netChange),
    together: first && second ? 'nothing' : first ? 'terms-and-prices' : second ? 'choices-and-terms' : 'everything',
  } as MoneyChange;
}

/** Today's total before what the contract adds on the net. */
function beforeNet({ money }: PricedChoices): number {
  return money.today - money.onNet.markup - money.onNet.fee;
}

function sum(amounts: readonly Cents[]): number {
  return amounts.reduce((total, amount) => total + amount, 0);
}
