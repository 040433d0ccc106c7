import { inLocale } from '../../base/units/index.js';
import { layers, type Source } from '../../core/model/index.js';
import { readFrontMatter, type RawCategory, type RawHouse, type RawTrade } from '../../core/records/index.js';
import { recordText, withKeys } from '../record/text.js';
import type { HouseAnswers } from './answers.js';
import { allowancesOf, selectionsFor, type DraftedRoom } from './drafted-room.js';
import { houseRecord } from './house-record.js';
import { makeLibrary, type Library } from './library.js';
import { ownerPage } from './owner-page.js';
import { carryingTrades, starterCategories } from './starter.js';

interface Drafted {
  readonly rooms: readonly DraftedRoom[];
  /** Lowest first; empty: all rooms are on one level. */
  readonly levels: RawHouse['levels'];
}

/** A house folder's files from a person's answers and drafted rooms, wherever these come from. `demo` are the demo house's records, whose
 *  conventions it takes over; `on` is the day. */
export function draftHouse(
  answers: HouseAnswers,
  { rooms, levels }: Drafted,
  demo: readonly Source[],
  on: string,
): readonly Source[] {
  return inLocale(answers.locale, () => {
    const library = makeLibrary(demo);
    const records = conventions(library);
    const names = namesOf(records);
    const allowances = new Map(
      allowancesOf(rooms).flatMap(({ id, categories }) => categories.map((category) => [category, id] as const)),
    );
    const own = rooms.map((room) => ({ path: `content/rooms/${room.slug}.md`, text: roomText(room, allowances) }));
    return [
      { path: '.gitignore', text: '_site/\n.bookmatch/\n*.p12\n' },
      { path: 'README.md', text: ownerPage(answers.name) },
      { path: 'content/house.md', text: houseRecord(answers, rooms, levels, library, { on, names }) },
      ...records,
      ...own,
    ];
  });
}

function roomText({ values, text }: DraftedRoom, allowances: ReadonlyMap<string, string>): string {
  const selections = values.selections ?? selectionsFor(values.use, new Set(starterCategories), allowances);
  const more = selections.length === 0 ? {} : { selections };
  return text === undefined ? recordText({ ...values, ...more }) : withKeys(text, { use: values.use, ...more });
}

/** Categories and trades of every house. */
function conventions(library: Library): readonly Source[] {
  const categories = starterCategories.flatMap((slug) => library.take('categories', slug) ?? []);
  const trades = new Set([...carryingTrades, ...categories.map((record) => dataOf<RawCategory>(record).trade ?? '')]);
  return [...categories, ...[...trades].sort().flatMap((slug) => library.take('trades', slug) ?? [])];
}

/** Names that slots may need: layers, categories, and what trades carry. */
function namesOf(records: readonly Source[]): ReadonlySet<string> {
  const carried = records.flatMap((record) => (dataOf<RawTrade>(record).carries ?? []).map(({ id }) => id));
  return new Set([...layers, ...starterCategories, ...carried]);
}

function dataOf<Raw extends object>(record: Source): Partial<Raw> {
  return (readFrontMatter(record).value?.data ?? {}) as Partial<Raw>;
}
