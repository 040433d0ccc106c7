import { daysBetween } from '../calendar/index.js';
import type { Option, Quoted } from '../model/index.js';
import type { Cents, IsoDate } from '../../base/units/index.js';
import type { BookSelection, Quote } from './book.js';
import { optionId } from './draft.js';
import { optionSlugs } from './option-slugs.js';

export function quoteState(
  quoted: Quoted | undefined,
  on: IsoDate,
  goodFor: number | undefined,
): Pick<Quote, 'state' | 'past'> {
  if (!quoted) return { state: 'unquoted', past: 0 };
  if (quoted.until !== undefined) {
    const past = Math.max(0, daysBetween(quoted.until, on));
    return { state: past > 0 ? 'expired' : 'good', past };
  }
  const past = goodFor === undefined ? 0 : Math.max(0, daysBetween(quoted.on, on) - goodFor);
  return { state: past > 0 ? 'old' : 'good', past };
}

/** Options whose price is past its last day, or the house's limit. */
export function pastOptions(options: readonly Option[], on: IsoDate, goodFor: number | undefined): readonly Option[] {
  return options.filter(({ quoted }) => quoteState(quoted, on, goodFor).past > 0);
}

/** The price of each of these options that something not yet ordered rests on, those that are past first. An order is at the price that it was
 *  placed at, so what is ordered asks no more of its quotation. */
export function listQuotes(
  options: readonly Option[],
  selections: readonly BookSelection[],
  on: IsoDate,
  goodFor: number | undefined,
): readonly Quote[] {
  const touched = touchedBy(selections, new Set(options.map(({ category, slug }) => optionId(category, slug))));
  const quotes = options.flatMap(({ category, slug, quoted }): Quote[] => {
    const option = optionId(category, slug);
    const money = touched.get(option);
    return money ? [{ option, ...quoteState(quoted, on, goodFor), ...(quoted && { quoted }), ...money }] : [];
  });
  return [...quotes.filter(({ past }) => past > 0), ...quotes.filter(({ past }) => past === 0)];
}

type Touched = Pick<Quote, 'inOrders' | 'ifChosen' | 'selections'>;

function touchedBy(selections: readonly BookSelection[], options: ReadonlySet<string>): ReadonlyMap<string, Touched> {
  const touched = new Map<string, Touched>();
  const touch = (option: string, selection: string, inOrders: number, ifChosen: number) => {
    const before = touched.get(option);
    touched.set(option, {
      inOrders: ((before?.inOrders ?? 0) + inOrders) as Cents,
      ifChosen: ((before?.ifChosen ?? 0) + ifChosen) as Cents,
      selections: [...(before?.selections ?? []), selection],
    });
  };
  for (const selection of selections) {
    const { id, category, counted, state, cost, supply } = selection;
    if (supply === 'owner-furnished' || state === 'ordered' || state === 'installed') continue;
    const isAsked = (slug: string): boolean => options.has(optionId(category, slug));
    if (counted !== undefined && isAsked(counted)) touch(optionId(category, counted), id, cost.total, 0);
    if (state !== 'open' || !optionSlugs(selection).some(isAsked)) continue;
    for (const { option, cost: then } of selection.alternatives) {
      if (option !== counted && isAsked(option)) touch(optionId(category, option), id, 0, then.total);
    }
  }
  return touched;
}
