import type { Option } from '../model/index.js';
import type { LedgerEntry } from '../price/index.js';
import type { IsoDate } from '../../base/units/index.js';
import type { BookSelection, PriceStanding } from './book.js';
import { optionId } from './draft.js';
import { quoteState } from './quotes.js';

/** How the price of each decided place on an allowance stands on a day; an open place has none yet. */
export function priceStates(
  ledger: readonly LedgerEntry[],
  selections: readonly BookSelection[],
  options: readonly Option[],
  { on, goodFor }: { readonly on: IsoDate; readonly goodFor: number | undefined },
): readonly PriceStanding[] {
  const byId = new Map(selections.map((selection) => [selection.id, selection]));
  const quotes = new Map(options.map(({ category, slug, quoted }) => [optionId(category, slug), quoted]));
  return ledger.flatMap(({ lines }) =>
    lines.flatMap(({ selection: id, option, computed }): PriceStanding[] => {
      const state = byId.get(id)?.state;
      if (option === undefined || state === undefined) return [];
      if (computed !== undefined) return [{ selection: id, state: 'invoiced' }];
      if (state === 'ordered' || state === 'installed') return [{ selection: id, state: 'ordered' }];
      const quoted = quotes.get(option);
      const until = quoted?.until === undefined ? {} : { until: quoted.until };
      const good = quoteState(quoted, on, goodFor).state === 'good';
      return [{ selection: id, state: good ? 'quoted' : 'estimated', ...until }];
    }),
  );
}
