import { keptWork, priceChoices, type PricedChoices, type Work } from '../../core/book/index.js';
import type { Slips } from '../../core/calendar/index.js';
import { houseLayer } from '../../core/lay/index.js';
import { houseMeasurer } from '../../core/measure/index.js';
import type { Source } from '../../core/model/index.js';
import { hasErrors } from '../../base/problem/index.js';
import { recordReader, type RecordShelves } from '../../core/records/index.js';
import { digestOfBytes } from '../../signoff/index.js';
import { keptLayouts, type Layout, type LayOut } from '../../core/takeoff/index.js';
import { keepBy, keepEach, keepSame, type Cents, type IsoDate, type Shelf } from '../../base/units/index.js';
import { composeBook, type ComposedBook } from './compose-book.js';
import { measureFiles, type HouseReaders, type LoadedHouse } from './load-house.js';

/** Reads houses and composes their Books, for one run of a command. A run asks for the same house in several ways (the records
 *  on disk, a commit, an issue) and for houses that differ in few records: each is read, measured, priced and composed once,
 *  and so is each record, room and layout that several have. */
export interface Composer {
  /** Reads and measures records whose text is at hand, such as those of an older version. */
  readonly read: (sources: readonly Source[]) => LoadedHouse;
  /** `agreedSum` is the contract sum as first agreed, where an issue has it. */
  readonly compose: (house: LoadedHouse, on: IsoDate, slips?: Slips, agreedSum?: Cents) => ComposedBook;
  /** What the choices of a house come to; undefined when its records do not hold together. */
  readonly price: (house: LoadedHouse) => PricedChoices | undefined;
}

/** What earlier runs made of parts of a house. */
export interface Shelves extends RecordShelves {
  readonly layouts?: Shelf<Layout>;
}

export function makeComposer(steps: Steps = keptSteps()): Composer {
  const { layOut, work, ...readers } = steps;
  const digestOf = keepSame(recordsDigest);
  const books = keepEach((house: LoadedHouse) =>
    keepBy(
      (on: IsoDate, slips?: Slips, agreedSum?: Cents) => JSON.stringify([on, agreedSum, ...(slips ?? [])]),
      (on, slips, agreedSum) => composeBook(house, on, { slips, layOut, agreedSum, work }),
    ),
  );
  return {
    read: keepBy(digestOf, (sources) => measureFiles(sources, [], readers)),
    compose: (house, on, slips, agreedSum) => books(house)(on, slips, agreedSum),
    price: keepEach((house) => priceHouse(house, work)),
  };
}

/** The steps from records to a Book. Each keeps the parts of a house that the next one has too. */
interface Steps extends HouseReaders {
  readonly layOut: LayOut;
  readonly work: Work;
}

export function keptSteps(shelves: Shelves = {}): Steps {
  return {
    readRecords: recordReader(undefined, shelves),
    measureHouse: houseMeasurer(),
    layHouse: houseLayer(),
    layOut: keptLayouts(shelves.layouts),
    work: keptWork(),
  };
}

/** SHA-256 of a house's records, 64 hexadecimal digits: the same records have the same digest, in whatever order they come. */
export function recordsDigest(sources: readonly Source[]): string {
  const records = new Map(sources.map(({ path, text }) => [path, text]));
  return digestOfBytes(new TextEncoder().encode(JSON.stringify([...records].sort(([a], [b]) => (a < b ? -1 : 1)))));
}

function priceHouse({ house, problems }: LoadedHouse, work: Work): PricedChoices | undefined {
  if (!house || hasErrors(problems)) return undefined;
  return priceChoices(house.records, house.measures, work).value;
}
