import type { Book, Stamp } from '../../book/index.js';
import { printDay, printMoneyChange } from '../../units/index.js';
import type { IsoDate } from '../../units/index.js';
import { swatchSvg } from '../drawings.js';
import { makeCautions } from './cautions.js';
import type { CautionSheet } from './cautions.js';
import { makeCover } from './cover.js';
import type { Cover } from './cover.js';
import { makeDecisions } from './decisions.js';
import type { DecisionSheet } from './decisions.js';
import { printArea } from '../../units/index.js';
import { digestsOf, shortDigest } from '../../signoff/index.js';
import { lookUp } from '../../book/index.js';
import type { LookUp } from '../../book/index.js';
import { makeMoney } from './money.js';
import type { MoneySheet } from './money.js';
import { finishSheet, openingSheet, orderSheet, otherSheet } from '../../table/index.js';
import { printSheet, printSigns } from '../../write/index.js';
import type { PrintSheet } from '../../write/index.js';
import { tablesOf } from '../../sheet/index.js';
import { targetsOf } from '../labels.js';
import { makeReading } from './reading.js';
import type { Reading } from './reading.js';
import { roomSheet } from './room.js';
import type { RoomSheet } from './room.js';
import { makeScope } from './scope.js';
import type { ScopeSheet } from './scope.js';
import { shorten } from '../shorten.js';
import { standingOf } from '../standing.js';
import { makeSignOff } from './sign-off.js';
import type { SignOff } from './sign-off.js';

/** All that the printed book says. Everything is text, so the page layout does no arithmetic. */
export interface Sheets {
  readonly document: DocumentFacts;
  /** The running title block at the foot of each sheet. */
  readonly foot: {
    readonly house: string;
    readonly job: string;
    readonly standing: string;
    readonly digest: string;
    readonly day: string;
  };
  readonly cover: Cover;
  readonly reading: Reading;
  readonly register: readonly RegisterRow[];
  readonly rooms: readonly RoomSheet[];
  /** Sheets of blocks, by name. */
  readonly set: Readonly<Record<string, PrintSheet>>;
  /** Labels that rows carry, and the signs of what is said of them. */
  readonly anchors: readonly string[];
  readonly signs: Readonly<Record<string, string>>;
  readonly scope: ScopeSheet;
  readonly money: MoneySheet;
  readonly cautions: CautionSheet;
  readonly decisions: DecisionSheet;
  readonly signOff: SignOff;
  /** SVG text by option id. */
  readonly swatches: Readonly<Record<string, string>>;
}

export interface DocumentFacts {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  readonly keywords: readonly string[];
  /** The Book's day: the only date in the file. */
  readonly day: { readonly year: number; readonly month: number; readonly day: number };
}

/** A line of the list of rooms. */
export interface RegisterRow {
  readonly slug: string;
  readonly number: string;
  readonly name: string;
  readonly level: string;
  readonly floor: string;
  readonly selections: string;
  readonly open: string;
  readonly change: string;
}

export function makeSheets(book: Book, stamp?: Stamp): Sheets {
  const look = lookUp(book);
  const { house, on } = book;
  const { standing, digest } = standingOf(stamp);
  const digests = digestsOf(book).rooms;
  const sheets = [
    finishSheet(look),
    openingSheet(look),
    otherSheet(look),
    orderSheet(look, { withMoney: false }),
  ].filter(({ blocks }) => tablesOf(blocks).length > 0);
  const targets = targetsOf(
    sheets,
    book.rooms.map(({ slug }) => slug),
  );
  return {
    document: documentFacts(book, { title: `${house.name}: selections and specification book`, standing, on }),
    foot: { house: shorten(house.name, 26), job: shorten(house.number, 12), standing, digest, day: printDay(on) },
    cover: makeCover(look, standing, stamp ? digest : ''),
    reading: makeReading(look),
    register: register(look),
    rooms: book.rooms.map((room) => roomSheet(room, look, shortDigest(digests[room.slug] ?? ''))),
    set: Object.fromEntries(sheets.map((sheet) => [sheet.id, printSheet(sheet, targets.labels)])),
    anchors: targets.anchors,
    signs: printSigns,
    scope: makeScope(look),
    money: makeMoney(look),
    cautions: makeCautions(look),
    decisions: makeDecisions(look),
    signOff: makeSignOff(look, stamp),
    swatches: Object.fromEntries(book.options.map((option) => [option.id, swatchSvg(option)])),
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

function register(look: LookUp): readonly RegisterRow[] {
  return look.book.rooms.map((room) => ({
    slug: room.slug,
    number: room.number,
    name: room.name,
    level: look.levelName(room.level),
    floor: printArea(room.measure.floor.net),
    selections: String(room.selections.length),
    open: room.open === 0 ? '–' : String(room.open),
    change: room.change === 0 ? '–' : printMoneyChange(room.change),
  }));
}
