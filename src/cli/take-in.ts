import { basename } from 'node:path';
import { Command } from 'commander';
import { errorsIn } from '../base/problem/index.js';
import { lookUp, type Book } from '../core/book/index.js';
import type { Category, PriceList, Records, Source } from '../core/model/index.js';
import { slugFor } from '../core/records/index.js';
import {
  counted,
  joinWords,
  parseDay,
  printMoney,
  printMoneyMove,
  speakAs,
  type Reading,
} from '../base/units/index.js';
import { bookOf, openHouse, type OpenHouse } from '../disk/load/index.js';
import { readListFile, readWorkbook, workbookKind } from '../disk/store/index.js';
import {
  boundedGrid,
  differ,
  findColumns,
  gridOfText,
  lacking,
  orderedOptions,
  printListProblems,
  proposePriceList,
  readProducts,
  reportList,
  textOfList,
  writeList,
  type Grid,
  type ListProblem,
  type Quotation,
} from '../draft/index.js';
import { choiceText } from '../table/index.js';
import { categoryNamed } from './category-named.js';
import { consider, considerWords, roomsNamed } from './consider.js';
import type { Console } from './console.js';
import { eachGiven } from './each-given.js';
import { checkHouseDir, dayOf, reportProblems, withHouseOptions, type HouseOptions } from './house-options.js';
import { UsageError } from './usage-error.js';
import { tryRecords, writeUnlessChanged } from './write-records.js';

interface TakeInOptions extends HouseOptions {
  readonly category: string;
  readonly mapping?: string;
  readonly into?: string;
  readonly dated?: string;
  readonly until?: string;
  readonly withdraw?: boolean;
  readonly for?: readonly string[];
  readonly write?: boolean;
}

/** `bookmatch take-in list.xlsx --category floor`: what a supplier's list of prices would change in the options of a category; with --write
 *  it is written, all of it or nothing. Without a record of how the list is read, one is proposed. */
export function takeIn(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('take-in'))
    .argument('<list>', 'the list: a CSV file (comma, semicolon or tab) or an .xlsx workbook')
    .requiredOption('--category <category>', 'the category of its products')
    .option(
      '--mapping <price-list>',
      'how it is read: a record in content/price-lists (default: the only one of the category)',
    )
    .option(
      '--into <folder>',
      'the shared folder whose options it prices, as content/house.md names it (default: the house’s own options)',
    )
    .option('--dated <day>', 'the day of the list, YYYY-MM-DD (default: the day computed for)')
    .option('--until <day>', 'the last day that its prices are good for, where the list says one')
    .option('--withdraw', 'mark as withdrawn what an earlier list of the supplier had and this one has not')
    .option(
      '--for <room>',
      'consider its new options in this room, by its file name, or in all; again for each',
      eachGiven,
    )
    .option('--write', 'write it; without this it is only shown')
    .action(async (path: string, options: TakeInOptions) => {
      const open = openHouse(checkHouseDir(options.house));
      const on = dayOf(options.on, console);
      const dates = datesOf(options, on);
      const { book, problems } = await bookOf(open, on, { marked: false });
      const { house } = await open.current();
      if (!book || !house) {
        reportProblems({ problems }, 'Nothing was taken in.', console);
        return done(1);
      }
      speakAs(house.records.house);
      const { records } = house;
      const category = categoryNamed(options.category, records);
      if (options.into !== undefined && !records.house.shared.includes(options.into))
        throw new UsageError(
          `--into ${options.into}: content/house.md shares ${joinWords(records.house.shared) || 'no folder'}`,
        );
      const rooms = roomsNamed(options.for, records) ?? [];
      const list = priceListNamed(options, records);
      const grid = await gridOf(path, list?.sheet, console);
      if (!grid) return done(1);
      if (!list) return done(await propose(grid, { path, category, open, records, options, console }));
      const quoted: Quotation = {
        on: dates.dated,
        by: list.name,
        ...(dates.until !== undefined && { until: dates.until }),
      };
      const file = basename(path);
      const taken = readTaken(grid, { list, category, records, quoted, file, options });
      if (!taken.ok) {
        console.error(`${file}: ${taken.why}\n      | ${taken.fix ?? ''}\n\nNothing was taken in.\n`);
        return done(1);
      }
      const { written: priced, added, report, found } = taken.value;
      const written = [...priced, ...consider(added, category.slug, rooms, records)];
      const errors = errorsIn(found);
      if (found.length > 0) console.error(`${printListProblems(file, found)}\n`);
      if (errors.length > 0) {
        console.error(`${counted(errors.length, 'error')} in ${file}. Nothing was taken in.\n`);
        return done(1);
      }
      const tried = tryRecords(open, records, written, on);
      if (!tried.book) {
        console.problems(tried.problems, 'Nothing was taken in.');
        return done(1);
      }
      console.out(`${report}${movedText(book, tried.book)}\n`);
      const code = await finish(written, { open, records, write: options.write === true, console });
      if (code === 0 && rooms.length === 0) console.out(considerWords(added, category, options.write === true));
      done(code);
    });
}

function datesOf({ dated, until }: TakeInOptions, on: string): { readonly dated: string; readonly until?: string } {
  const read = (option: string, text: string): string => {
    const day = parseDay(text);
    if (!day.ok) throw new UsageError(`--${option} ${text}: ${day.why}`);
    return day.value;
  };
  const day = dated === undefined ? on : read('dated', dated);
  if (until === undefined) return { dated: day };
  const last = read('until', until);
  if (last < day) throw new UsageError(`--until ${last} is before the day of the list, ${day}`);
  return { dated: day, until: last };
}

/** The record that is named, else the only one of the category; undefined while there is none. */
function priceListNamed({ mapping, category }: TakeInOptions, { priceLists }: Records): PriceList | undefined {
  const own = priceLists.filter((list) => list.category === category);
  const slugs = own.map(({ slug }) => slug);
  if (mapping === undefined) {
    if (own.length > 1)
      throw new UsageError(`${category} has several price lists: name one with --mapping, ${joinWords(slugs, 'or')}`);
    return own[0];
  }
  if (slugFor(mapping) !== mapping)
    throw new UsageError(`--mapping ${mapping}: a record is named in small letters, digits and hyphens`);
  const other = priceLists.find(({ slug }) => slug === mapping);
  if (other && other.category !== category)
    throw new UsageError(`content/price-lists/${mapping}.md is of ${other.category}, not of ${category}`);
  return other;
}

/** The cells of a list, or undefined when that it cannot be read was told. */
async function gridOf(path: string, sheet: string | undefined, console: Console): Promise<Grid | undefined> {
  const bytes = await readListFile(path);
  const refuse = (why: string, fix = 'name another file'): undefined =>
    void console.error(`${basename(path)}: ${why}\n      | ${fix}\n\nNothing was taken in.\n`);
  if (!bytes.ok) return refuse(bytes.why, bytes.fix);
  const kind = workbookKind(bytes.value);
  if (kind === 'xls') return refuse('it is a workbook of the older form .xls', 'save it as .xlsx, or as CSV in UTF-8');
  const grid = kind === 'xlsx' ? await readWorkbook(bytes.value, sheet) : gridOfBytes(bytes.value, path, console);
  const bounded = grid.ok ? boundedGrid(grid.value) : grid;
  return bounded.ok ? bounded.value : refuse(bounded.why, bounded.fix);
}

function gridOfBytes(bytes: Uint8Array, path: string, console: Console): Reading<Grid> {
  const text = textOfList(bytes);
  if (!text.ok) return text;
  if (text.value.guessed !== undefined)
    console.error(
      `${basename(path)} is not in UTF-8 and was read as ${text.value.guessed}: look at its letters below.\n\n`,
    );
  return gridOfText(text.value.text);
}

interface Taking {
  readonly list: PriceList;
  readonly category: Category;
  readonly records: Records;
  readonly quoted: Quotation;
  readonly file: string;
  readonly options: TakeInOptions;
}

interface Taken {
  readonly written: readonly Source[];
  /** File names of options that are new. */
  readonly added: readonly string[];
  readonly report: string;
  readonly found: readonly ListProblem[];
}

function readTaken(grid: Grid, { list, category, records, quoted, file, options }: Taking): Reading<Taken> {
  const columns = findColumns(grid, list);
  if (!columns.ok) return columns;
  const products = readProducts(grid, columns.value, list, category);
  if (products.products.length + products.problems.length === 0)
    return { ok: false, why: 'it has no products below its heads', fix: 'look whether it is the right file and sheet' };
  const ordered = orderedOptions(records, category.slug);
  const root = options.into ?? 'content';
  const own = records.options.filter(({ category: of }) => of === category.slug);
  const against = { list, category, root, options: own, ordered: new Set(ordered.keys()), on: quoted.on };
  const difference = differ(products, against);
  const found = [...products.problems, ...difference.problems, ...lacking(difference.added, list)];
  const withdraw = options.withdraw === true;
  const isWhole = found.every(({ severity }) => severity === 'notice');
  const written = isWhole ? writeList(difference, { list, sources: records.sources, root, quoted, withdraw }) : [];
  return {
    ok: true,
    value: {
      written,
      added: difference.added.map(({ slug }) => slug),
      report: reportList(products, difference, { file, list, root, quoted, withdraw, ordered }),
      found,
    },
  };
}

/** What of the house's money a list moves: places by what they cost, and by what they change against a standard that moved; and the total. */
function movedText(before: Book, after: Book): string {
  const look = lookUp(after);
  const earlier = new Map(before.selections.map((selection) => [selection.id, selection]));
  const moved = after.selections.flatMap(({ id, cost, chosen, change: now }) => {
    const was = earlier.get(id);
    if (!was) return [];
    const how = chosen === undefined ? 'at its standard' : 'chosen';
    const lines = [
      ...(was.cost.total === cost.total ? [] : [`${how}, costs ${printMoneyMove(was.cost.total, cost.total)}`]),
      ...(was.change === now ? [] : [`against its standard or allowance ${printMoneyMove(was.change, now)}`]),
    ];
    return lines.length === 0 ? [] : [`  ${choiceText(id, look)}: ${lines.join('; ')}`];
  });
  const [was, is] = [before.money.today, after.money.today];
  const total = was === is ? `Total ${printMoney(was, 'always')}, as before` : `Total ${printMoneyMove(was, is)}`;
  const head = moved.length > 0 ? 'What moves' : 'No money of a place moves.';
  return `\n${head}\n${moved.map((line) => `${line}\n`).join('')}${total}\n`;
}

interface Finish {
  readonly open: OpenHouse;
  readonly records: Pick<Records, 'sources'>;
  readonly write: boolean;
  readonly console: Console;
}

async function finish(written: readonly Source[], { open, records, write, console }: Finish): Promise<number> {
  const before = new Map(records.sources.map(({ path, text }) => [path, text]));
  const changed = written.filter(({ path, text }) => before.get(path) !== text);
  if (changed.length === 0) {
    console.tell('Nothing to write: the records say what the list says.\n');
    return 0;
  }
  const files = counted(changed.length, 'record');
  if (!write) {
    console.tell(`Nothing was written. With --write, ${files} ${changed.length === 1 ? 'is' : 'are'}.\n`);
    return 0;
  }
  if (!(await writeUnlessChanged(open.dir, records.sources, changed, 'Nothing was written', console))) return 1;
  console.tell(`${files} written:\n${changed.map(({ path }) => `${path}\n`).join('')}`);
  return 0;
}

interface Proposing {
  readonly path: string;
  readonly category: Category;
  readonly open: OpenHouse;
  readonly records: Records;
  readonly options: TakeInOptions;
  readonly console: Console;
}

/** Shows how the list could be read, and writes it as a record when asked. */
async function propose(grid: Grid, { path, category, open, records, options, console }: Proposing): Promise<number> {
  const slug = options.mapping ?? slugFor(basename(path).replace(/\.[^.]*$/u, ''));
  const proposed = proposePriceList(grid, slug === '' ? category.slug : slug, category);
  if (!proposed.ok) {
    console.error(`${basename(path)}: ${proposed.why}\n      | ${proposed.fix ?? ''}\n\nNothing was taken in.\n`);
    return 1;
  }
  const { path: record, text } = proposed.value;
  console.out(`No record says how ${basename(path)} is read. By its heads it may be ${record}:\n\n${text}\n`);
  const again = `bookmatch take-in ${path} --category ${category.slug} --mapping ${slug}`;
  if (!options.write) {
    console.tell(
      `Nothing was written. Write it with ${again} --write, or by hand; correct it, then take the list in.\n`,
    );
    return 1;
  }
  const tried = tryRecords(open, records, [proposed.value], dayOf(options.on, console));
  if (!tried.book) {
    console.problems(tried.problems, 'Nothing was written.');
    return 1;
  }
  const code = await finish([proposed.value], { open, records, write: true, console });
  if (code === 0) console.tell(`Look whether it is right, above all its name, units and decimals; then ${again}\n`);
  return code;
}
