import type { Origin } from '../../base/problem/index.js';

/** Units as records write them. */
export type ListUnit = 'sq ft' | 'lin ft' | 'm2' | 'm' | 'each' | 'lump';

/** How a supplier's list of prices is read into options of one category. */
export interface PriceList {
  readonly slug: string;
  /** The supplier, as `quoted.by` of the options says. */
  readonly name: string;
  readonly category: string;
  /** Of a workbook; absent: the first. */
  readonly sheet?: string;
  /** Heads of the list's columns by what they say. */
  readonly columns: PriceListColumns;
  readonly decimals: 'point' | 'comma';
  /** Units of ours by the list's words. */
  readonly units: Readonly<Record<string, ListUnit>>;
  /** What figures without a unit are in. */
  readonly leadIn?: 'days' | 'weeks';
  readonly lengthsIn?: 'in' | 'mm' | 'cm' | 'm';
  readonly fileName: 'name' | 'number';
  readonly fixed: PriceListFixed;
  /** Product numbers, or names where the list has no numbers. */
  readonly leaveOut: readonly string[];
  readonly origin: Origin;
}

export interface PriceListColumns {
  readonly name: string;
  readonly number?: string;
  readonly price: string;
  readonly unit?: string;
  readonly pack?: string;
  readonly packName?: string;
  readonly lead?: string;
  readonly maker?: string;
  readonly attributes: Readonly<Record<string, string>>;
}

/** What holds for every product, as records write it. */
export interface PriceListFixed {
  readonly labor?: string;
  readonly unit?: ListUnit;
  readonly packName?: string;
  readonly lead?: string;
  readonly waste?: string;
  readonly maker?: string;
  readonly attributes: Readonly<Record<string, unknown>>;
}
