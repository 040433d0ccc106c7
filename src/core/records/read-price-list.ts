import type { PriceList, PriceListColumns, PriceListFixed } from '../model/index.js';
import { hasErrors, problemAt, type Problem } from '../../base/problem/index.js';
import { locale } from '../../base/units/index.js';
import type { Checked } from './checked-record.js';
import type { RawPriceList, RawPriceListColumns, RawPriceListFixed } from './raw/price-list.js';

/** The record of a price list, as far as it can be read. */
export interface PriceListDraft {
  readonly record: Checked<RawPriceList>;
  readonly whole?: PriceList;
  readonly problems: readonly Problem[];
}

export function readPriceList(record: Checked<RawPriceList>): PriceListDraft {
  const { slug, raw, origin } = record;
  if (hasErrors(record.problems)) return { record, problems: record.problems };
  const problems = [...record.problems, ...currencyProblems(record), ...lackProblems(record)];
  if (hasErrors(problems)) return { record, problems };
  const { name, category, sheet, decimals, units = {}, fixed = {} } = raw;
  const [leadIn, lengthsIn] = [raw['lead-in'], raw['lengths-in']];
  const whole: PriceList = {
    slug,
    name,
    category,
    ...(sheet !== undefined && { sheet }),
    columns: readColumns(raw.columns),
    decimals,
    units,
    ...(leadIn !== undefined && { leadIn }),
    ...(lengthsIn !== undefined && { lengthsIn }),
    fileName: raw['file-name'],
    fixed: readFixed(fixed),
    leaveOut: raw['leave-out'] ?? [],
    origin,
  };
  return { record, whole, problems };
}

function readColumns({ 'pack-name': packName, attributes = {}, ...columns }: RawPriceListColumns): PriceListColumns {
  return { ...columns, ...(packName !== undefined && { packName }), attributes };
}

function readFixed({ 'pack-name': packName, attributes = {}, ...fixed }: RawPriceListFixed): PriceListFixed {
  return { ...fixed, ...(packName !== undefined && { packName }), attributes };
}

/** A house has one currency. */
function currencyProblems({ raw, origin }: Checked<RawPriceList>): readonly Problem[] {
  const own = locale().currency;
  if (raw.currency === own) return [];
  const message = `the list is in ${raw.currency}, the house in ${own}`;
  const fix = `convert the list's prices, and write ${own}`;
  return [problemAt(origin, ['currency'], 'price-list-currency', message, { fix })];
}

/** What a price is for, and the number that files are named by, come from somewhere. */
function lackProblems({ raw, origin }: Checked<RawPriceList>): readonly Problem[] {
  if (raw.columns.number !== undefined || raw['file-name'] === 'name') return [];
  const message = 'files are named by the product number, but no column has it';
  const fix = 'write columns.number, the head over the product numbers; or file-name: name';
  return [problemAt(origin, ['file-name'], 'price-list-lacks', message, { fix })];
}
