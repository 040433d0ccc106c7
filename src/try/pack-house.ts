import type { Book } from '../core/book/index.js';
import type { LaidHouse, Records, RoomMeasure } from '../core/model/index.js';
import { placeWritten, type Origin, type Path } from '../base/problem/index.js';
import type { Cents, IsoDate } from '../base/units/index.js';
import { lockOf } from './lock.js';

/** Where a value of a record is written: line and column, and the record's file where that is another. */
export type PackedPlace = readonly [line: number, column: number, file?: string];

/** What is left of an origin: the places that a Book names. The records' text stays behind. */
export interface PackedOrigin {
  readonly file: string;
  /** By path, its parts joined by `/`. */
  readonly at: Readonly<Record<string, PackedPlace>>;
  readonly key: Readonly<Record<string, PackedPlace>>;
}

/** A value with each origin in it packed. */
export type Packed<T> = T extends Origin
  ? PackedOrigin
  : T extends object
    ? { readonly [Key in keyof T]: Packed<T[Key]> }
    : T;

/** A house to be composed elsewhere, as plain JSON. It holds every price of the records: for owner and builder alone. */
export interface PackedHouse {
  readonly format: 'bookmatch/house-to-try/1';
  readonly records: Packed<Records>;
  readonly measures: readonly (readonly [room: string, measure: RoomMeasure])[];
  readonly laid: LaidHouse;
  /** The day that the pages were made for. */
  readonly on: IsoDate;
  /** The contract sum as it was first agreed. */
  readonly agreedSum: Cents;
  /** Digest of the records, in hexadecimal digits. */
  readonly snapshot: string;
  /** Why a place is locked, by its selection's id. */
  readonly locks: Readonly<Record<string, string>>;
  /** Slugs of rooms whose pages are signed as they stand. */
  readonly signedRooms: readonly string[];
}

export interface HouseToPack {
  readonly records: Records;
  readonly measures: ReadonlyMap<string, RoomMeasure>;
  readonly laid: LaidHouse;
  readonly snapshot: string;
}

/** Packs a house with what its Book, marked with what is signed, says of it. Alternatives and price lists are left out: no figure of the house
 *  as it stands comes from them. */
export function packHouse({ records, measures, laid, snapshot }: HouseToPack, book: Book): PackedHouse {
  const { agreed } = book.money;
  return {
    format: 'bookmatch/house-to-try/1',
    records: pack({ ...records, sources: [], alternatives: [], priceLists: [] }),
    measures: [...measures],
    laid,
    on: book.on,
    agreedSum: (agreed.current - agreed.changeOrders) as Cents,
    snapshot,
    locks: Object.fromEntries(
      book.selections.flatMap((selection) => {
        const why = lockOf(selection);
        return why === undefined ? [] : [[selection.id, why]];
      }),
    ),
    signedRooms: book.rooms.filter(({ signed }) => signed?.state === 'signed').map(({ slug }) => slug),
  };
}

function pack<T>(value: T): Packed<T> {
  return packValue(value) as Packed<T>;
}

function packValue(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(packValue);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]: [string, unknown]) => [
      key,
      isOrigin(inner) ? packOrigin(inner, value) : packValue(inner),
    ]),
  );
}

function isOrigin(value: unknown): value is Origin {
  return typeof value === 'object' && value !== null && 'key' in value && typeof value.key === 'function';
}

/** Lists of records whose entries a Book names by their line. */
const namedLists = ['selections', 'needs', 'carries'] as const;

function packOrigin(origin: Origin, record: object): PackedOrigin {
  const entries = namedLists.flatMap((name): Path[] => {
    const list: unknown = (record as Readonly<Record<string, unknown>>)[name];
    if (!Array.isArray(list)) return [];
    return list.map((entry: { readonly path?: Path }, index) => entry.path ?? [name, index]);
  });
  // A fact that is shared says by its own path where it is.
  const own = 'path' in record && Array.isArray(record.path) ? [record.path as Path] : [];
  const place = (path: Path, ask: 'at' | 'key'): PackedPlace => {
    const { origin: where, path: there } = placeWritten(origin, path);
    const { line, column } = where[ask](there);
    return where.file === origin.file ? [line, column] : [line, column, where.file];
  };
  const places = (paths: readonly Path[], ask: 'at' | 'key') =>
    Object.fromEntries(paths.map((path) => [path.join('/'), place(path, ask)]));
  return {
    file: origin.file,
    at: places([[], ...entries], 'at'),
    key: places([['selections'], ...own], 'key'),
  };
}
