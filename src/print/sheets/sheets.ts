import { printDay, shortDigest, type IsoDate } from '../../base/units/index.js';
import { swatchSvg } from '../drawings.js';
import { makeCover, type Cover } from './cover.js';
import { roomDigests } from '../../signoff/index.js';
import { keyLevels, lookUp, type Book, type Stamp } from '../../core/book/index.js';
import {
  alternativeSheet,
  outsideSheet,
  cautionSheet,
  decisionSheet,
  findingSheet,
  houseSheet,
  finishSheet,
  moneySheets,
  openingSheet,
  orderSheet,
  otherSheet,
  roomSheet as roomList,
  summarySheet,
} from '../../table/index.js';
import { printSheet, printSigns, type PrintSheet } from '../../write/index.js';
import { agreedCode } from '../../where/index.js';
import { sheetCode, type SheetCode } from '../code.js';
import { targetsOf } from '../labels.js';
import { levelSheets, type LevelSheet } from '../levels.js';
import { makeReading, type Reading } from './reading.js';
import { roomSheet, type RoomSheet } from './room.js';
import { shorten } from '../shorten.js';
import { standingOf } from '../standing.js';
import { makeSignOff, type SignOff } from './sign-off.js';
import { makeToDecide, type ToDecide } from './to-decide.js';

/** All that the printed book says. Everything is text, so the page layout does no arithmetic. */
interface Sheets {
  readonly document: DocumentFacts;
  /** The running title block at the foot of each sheet. */
  readonly foot: Foot;
  readonly cover: Cover;
  /** The levels of the house, lowest first. */
  readonly levels: readonly LevelSheet[];
  readonly reading: Reading;
  readonly rooms: readonly RoomSheet[];
  /** Sheets of blocks, by name. */
  readonly set: Readonly<Record<string, PrintSheet>>;
  /** Labels that rows carry, and the signs of what is said of them. */
  readonly anchors: Readonly<Record<string, true>>;
  readonly signs: Readonly<Record<string, string>>;
  /** Absent where nothing is open, and in what is issued. */
  readonly toDecide?: ToDecide;
  readonly signOff: SignOff;
  /** SVG text by option id. */
  readonly swatches: Readonly<Record<string, string>>;
}

export interface Foot {
  readonly house: string;
  readonly job: string;
  readonly standing: string;
  readonly digest: string;
  readonly day: string;
  readonly code: SheetCode | null;
}

export interface DocumentFacts {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  readonly keywords: readonly string[];
  /** The Book's day: the only date in the file. */
  readonly day: { readonly year: number; readonly month: number; readonly day: number };
}

export function makeSheets(book: Book, stamp?: Stamp): Sheets {
  const look = lookUp(book);
  const { house, on } = book;
  const { standing, digest } = standingOf(stamp);
  const digests = roomDigests(book);
  const levels = keyLevels(look);
  const findings = findingSheet(look);
  const toDecide = makeToDecide(look);
  const sheets = [
    summarySheet(look),
    houseSheet(look),
    roomList(look),
    finishSheet(look),
    openingSheet(look),
    otherSheet(look),
    ...(findings ? [findings] : []),
    cautionSheet(look),
    outsideSheet(look),
    ...moneySheets(look),
    // What is issued is what is chosen; alternatives are for those who still weigh them.
    ...(book.alternatives.length > 0 && !stamp ? [alternativeSheet(look)] : []),
    decisionSheet(look),
    orderSheet(look, { withMoney: false }),
  ].filter(({ blocks }) => blocks.length > 0);
  const targets = targetsOf(
    sheets,
    book.rooms.map(({ slug }) => slug),
  );
  return {
    document: documentFacts(book, { title: `${house.name}: selections and specification book`, standing, on }),
    foot: footOf(book, { standing, digest, day: on, code: agreedCode(house, 'issue', stamp) }),
    levels: levelSheets(levels, look),
    cover: makeCover(look, levels, standing, stamp ? digest : ''),
    reading: makeReading(look),
    rooms: book.rooms.map((room) => roomSheet(room, look, shortDigest(digests[room.slug] ?? ''), levels)),
    set: Object.fromEntries(sheets.map((sheet) => [sheet.id, printSheet(sheet, targets.labels)])),
    anchors: targets.anchors,
    signs: printSigns,
    ...(toDecide.choices.length > 0 && !stamp && { toDecide }),
    signOff: makeSignOff(look, stamp),
    swatches: Object.fromEntries(book.options.map((option) => [option.id, swatchSvg(option)])),
  };
}

/** The title block, with the code of an address where there is one. */
export function footOf(
  { house }: Book,
  {
    standing,
    digest,
    day,
    code,
  }: { readonly standing: string; readonly digest: string; readonly day: IsoDate; readonly code?: string | undefined },
): Foot {
  return {
    house: shorten(house.name, 26),
    job: shorten(house.number, 12),
    standing,
    digest,
    day: printDay(day),
    code: sheetCode(code),
  };
}

/** What the file says of itself. */
export function documentFacts(
  { house }: Book,
  { title, standing, on }: { readonly title: string; readonly standing: string; readonly on: IsoDate },
): DocumentFacts {
  const [year = 0, month = 0, day = 0] = on.split('-').map(Number);
  const builder = house.people.find(({ role }) => role === 'builder');
  return {
    title,
    author: builder?.name ?? 'The builder',
    subject: `Job ${house.number}, ${house.place}, as of ${printDay(on)}: ${standing}`,
    keywords: ['selections', 'finish schedule', 'allowances', house.name, `job ${house.number}`],
    day: { year, month, day },
  };
}
