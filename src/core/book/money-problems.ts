import type { Option, Records } from '../model/index.js';
import type { LedgerEntry } from '../price/index.js';
import { problemAt, type Problem } from '../../base/problem/index.js';
import { counted, printDay, printMoney, type Cents, type IsoDate } from '../../base/units/index.js';
import type { BookSelection, Quote } from './book.js';
import { optionId } from './draft.js';
import { listQuotes, pastOptions } from './quotes.js';

/** A warning at each price that is past its last day or the house's limit, with the money that rests on it. */
export function quoteProblems(records: Records, selections: readonly BookSelection[], on: IsoDate): readonly Problem[] {
  const { pricesGoodFor: goodFor } = records.house;
  const past = pastOptions(records.options, on, goodFor);
  const options = new Map(past.map((option) => [optionId(option.category, option.slug), option]));
  return listQuotes(past, selections, on, goodFor).flatMap((quote) => {
    const option = options.get(quote.option);
    return option?.quoted ? [pastProblem(option, option.quoted, quote, records)] : [];
  });
}

function pastProblem(
  { name, origin }: Option,
  { on, by, until }: NonNullable<Option['quoted']>,
  quote: Quote,
  { house }: Records,
): Problem {
  const { past, inOrders, ifChosen } = quote;
  const money = [
    ...(inOrders > 0 ? [`${exact(inOrders)} of today's orders rest on it`] : []),
    ...(ifChosen > 0 ? [`${exact(ifChosen)} would rest on it, where it is still considered`] : []),
  ].join('; ');
  const days = counted(past, 'day');
  const severity = 'warning' as const;
  if (until !== undefined) {
    const message = `${name}: the price of ${printDay(on)} was good until ${printDay(until)}, ${days} ago; ${money}`;
    const fix = `ask ${by} for a new quotation, and write its day and price`;
    return problemAt(origin, ['quoted', 'until'], 'quote-expired', message, { fix, severity });
  }
  const limit = house.pricesGoodFor ?? 0;
  const message = `${name}: the price of ${printDay(on)} is ${days} older than the ${limit} days that prices are good for; ${money}`;
  const fix = `ask ${by} whether it stands, and write the day of the answer`;
  return problemAt(origin, ['quoted', 'on'], 'quote-old', message, { fix, severity });
}

/** A warning where invoices come to something else than was computed, and where nothing was ordered that they are for. The
 *  invoice counts all the same: both figures are told. */
export function invoiceProblems({ house }: Records, ledger: readonly LedgerEntry[]): readonly Problem[] {
  return house.allowances.flatMap(({ id, invoices = [] }, index) => {
    const entry = ledger.find((each) => each.id === id);
    return (entry?.invoiced ?? []).flatMap(({ option, sum, computed, complete, invoices: own }): readonly Problem[] => {
      const place = invoices.lastIndexOf(own.at(-1) ?? own[0]!);
      const path = ['allowances', index, 'invoices', place];
      const severity = 'warning' as const;
      if (computed === undefined) {
        const message = `nothing that was ordered on '${id}' is ${option}, so the invoice counts nowhere`;
        const fix = 'write ordered: in the selection that it is for, or correct the option';
        return [problemAt(house.origin, [...path, 'for'], 'invoice-unused', message, { fix, severity })];
      }
      const apart = sum - computed;
      const over = complete ? Math.abs(apart) : apart;
      if (over <= aCent) return [];
      const more = `${exact(Math.abs(apart) as Cents)} ${apart > 0 ? 'more' : 'less'}`;
      const stands = complete ? 'the invoice counts' : 'and more are to come';
      const message = `${option} is invoiced at ${exact(sum)}, ${more} than the ${exact(computed)} computed; ${stands}`;
      const fix = 'compare quantities, packs and prices of the order with the invoice';
      return [problemAt(house.origin, [...path, 'amount'], 'invoice-differs', message, { fix, severity })];
    });
  });
}

/** Rounding may part an invoice from the program by so much. */
const aCent = 1;

function exact(amount: Cents): string {
  return printMoney(amount, 'always');
}
