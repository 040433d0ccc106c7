import type { AttributeRule, Category, ListUnit, PriceList } from '../../core/model/index.js';
import { printable } from '../../base/problem/index.js';
import { slugFor } from '../../core/records/index.js';
import {
  joinWords,
  parseLength,
  printDecimal,
  unread,
  read,
  type Decimal,
  type Reading,
} from '../../base/units/index.js';
import { quantityText, rateText, readFigure, readLead, readPrice, readUnit } from './figures.js';
import { headOf, type Columns } from './heads.js';
import type { Cell, Grid } from './grid.js';
import type { ListProblem } from './list-problem.js';

/** What a row of a list says of a product, as records write it. */
export interface Product {
  /** Counted from 0. */
  readonly row: number;
  readonly name: string;
  readonly number?: string;
  /** The file name that a new option of it gets. */
  readonly slug: string;
  /** `$7.40 / sq ft`. */
  readonly material: string;
  readonly unit: ListUnit;
  readonly pack?: { readonly name: string; readonly holds: string };
  readonly lead?: string;
  readonly maker?: string;
  readonly attributes: Readonly<Record<string, string | number | boolean>>;
}

/** The products of a list. */
export interface Products {
  readonly products: readonly Product[];
  /** Numbers and names of the rows that the record leaves out. */
  readonly leftOut: ReadonlySet<string>;
  /** Rows with one cell, such as the name of a group. */
  readonly headings: number;
  readonly problems: readonly ListProblem[];
}

/** Characters of a name. */
const longestName = 200;

/** Reads every row below the heads; all that is wrong is told. */
export function readProducts(grid: Grid, columns: Columns, list: PriceList, category: Category): Products {
  const problems: ListProblem[] = [];
  const products: Product[] = [];
  const leftOut = new Set<string>();
  let headings = 0;
  const omitted = new Set(list.leaveOut.map(headOf));
  grid.forEach((cells, row) => {
    const filled = cells.filter((cell) => cell !== '').length;
    if (row <= columns.headRow || filled === 0) return;
    if (filled === 1) return void (headings += 1);
    const key = headOf(cells[columns.number ?? columns.name] ?? '');
    if (omitted.has(key)) return void leftOut.add(key);
    // Long lists have their heads once for each printed page.
    if (cells.every((cell, index) => headOf(cell) === headOf(grid[columns.headRow]?.[index] ?? ''))) return;
    const product = readRow({ cells, row, columns, list, rules: category.attributes, problems });
    if (product) products.push(product);
  });
  return { products, leftOut, headings, problems: [...problems, ...twice(products, list)] };
}

interface RowReading {
  readonly cells: readonly Cell[];
  readonly row: number;
  readonly columns: Columns;
  readonly list: PriceList;
  readonly rules: readonly AttributeRule[];
  readonly problems: ListProblem[];
}

function readRow(reading: RowReading): Product | undefined {
  const { row, columns, list, problems } = reading;
  const before = problems.length;
  const name = take(reading, columns.name, readName);
  const number = columns.number === undefined ? undefined : take(reading, columns.number, readName);
  const price = take(reading, columns.price, (cell) => readPrice(cell, list.decimals));
  const unit = price && takeUnit(reading, price.unit);
  const pack = unit && takePack(reading, unit);
  const lead = takeFilled(reading, columns.lead, (cell) => readLead(cell, list.leadIn));
  const maker = takeFilled(reading, columns.maker, readName);
  const attributes = takeAttributes(reading);
  const slug = slugFor((list.fileName === 'number' ? number : name) ?? '');
  if (slug === '' && name !== undefined && (list.fileName === 'name' || number !== undefined)) {
    const what = 'no file name can be made of it';
    problems.push({
      row,
      what,
      fix: 'a name needs a letter or a digit; or name the row under leave-out',
      severity: 'error',
    });
  }
  const isWhole = !problems.slice(before).some(({ severity }) => severity === 'error');
  if (!isWhole || name === undefined || !price || !unit) return undefined;
  return {
    row,
    name,
    ...(number !== undefined && { number }),
    slug,
    material: rateText(price.figure, unit),
    unit,
    ...(pack && { pack }),
    ...(lead !== undefined && { lead }),
    ...(maker !== undefined && { maker }),
    attributes,
  };
}

/** The value of a cell, or its problem told. */
function take<T>({ cells, row, problems }: RowReading, column: number, of: (cell: Cell) => Reading<T>): T | undefined {
  const cell = cells[column] ?? '';
  if (isFormula(cell)) {
    const what = `'${String(cell)}' begins like a formula of a spreadsheet`;
    problems.push({ row, column, what, fix: 'it is taken as text, and nothing runs it', severity: 'notice' });
  }
  const reading = of(cell);
  if (reading.ok) return reading.value;
  problems.push({ row, column, what: reading.why, fix: reading.fix ?? 'correct it in the list', severity: 'error' });
  return undefined;
}

/** The same where the list has the column and the row something in it. */
function takeFilled<T>(reading: RowReading, column: number | undefined, of: (cell: Cell) => Reading<T>): T | undefined {
  if (column === undefined || (reading.cells[column] ?? '') === '') return undefined;
  return take(reading, column, of);
}

function isFormula(cell: Cell): boolean {
  return typeof cell === 'string' && /^(?:[=@]|[+-](?![\d.,]))./u.test(cell);
}

function readName(cell: Cell): Reading<string> {
  const name = String(cell).replace(/\s+/gu, ' ').trim();
  const fix = 'correct it in the list, or name the row under leave-out';
  if (name === '') return unread('the cell is empty', fix);
  if (printable(name) !== name) return unread('it has characters that cannot be printed', fix);
  return name.length > longestName ? unread(`it has more than ${longestName} characters`, fix) : read(name);
}

function takeUnit(reading: RowReading, behindPrice: string): ListUnit | undefined {
  const { columns, list, cells, row, problems } = reading;
  if (behindPrice !== '') return take(reading, columns.price, () => readUnit(behindPrice, list.units));
  const column = columns.unit;
  if (column !== undefined && (cells[column] ?? '') !== '')
    return take(reading, column, (cell) => readUnit(String(cell), list.units));
  if (list.fixed.unit !== undefined) return list.fixed.unit;
  const what = 'nothing says what the price is for';
  const fix = 'write columns.unit, the head over it, or fixed.unit in the price list’s record';
  problems.push({ row, column: column ?? columns.price, what, fix, severity: 'error' });
  return undefined;
}

/** `20`, `20 sq ft`: in the price's unit. */
function takePack(reading: RowReading, unit: ListUnit): Product['pack'] {
  const { columns, list } = reading;
  const holds = takeFilled(reading, columns.pack, (cell) => readPackSize(cell, unit, list));
  if (holds === undefined) return undefined;
  const name = takeFilled(reading, columns.packName, readName) ?? list.fixed.packName ?? 'pack';
  return { name, holds: quantityText(holds, unit) };
}

function readPackSize(cell: Cell, unit: ListUnit, list: PriceList): Reading<Decimal> {
  const [, digits, word = ''] = /^([\d.,' ]*\d) *(\D*)$/u.exec(String(cell)) ?? [];
  const size = readFigure(typeof cell === 'number' ? cell : (digits ?? cell), list.decimals);
  if (!size.ok) return size;
  if (size.value.amount === 0) return unread('the pack holds nothing', 'say what it holds, or leave the cell empty');
  const own = word === '' ? read(unit) : readUnit(word, list.units);
  if (!own.ok) return own;
  if (own.value === unit) return size;
  return unread(`the pack holds ${own.value}, the price is for ${unit}`, `say how many ${unit} it holds`);
}

function takeAttributes(reading: RowReading): Product['attributes'] {
  const { columns, rules, list } = reading;
  const entries = Object.entries(columns.attributes).flatMap(([name, column]) => {
    const rule = rules.find((one) => one.name === name);
    const value = rule && takeFilled(reading, column, (cell) => readAttribute(cell, rule, list));
    return value === undefined ? [] : [[name, value] as const];
  });
  return Object.fromEntries(entries);
}

function readAttribute(
  cell: Cell,
  { kind, choices }: AttributeRule,
  { decimals, lengthsIn }: PriceList,
): Reading<string | number | boolean> {
  if (kind === 'number') {
    const figure = readFigure(cell, decimals);
    return figure.ok ? read(Number(printDecimal(figure.value))) : figure;
  }
  if (kind === 'yes-no') {
    const word = headOf(cell);
    if (['yes', 'true', 'x', '1', 'ja'].includes(word)) return read(true);
    if (['no', 'false', '0', 'nein', '-'].includes(word)) return read(false);
    return unread(`'${cell}' is neither yes nor no`, 'write yes or no');
  }
  if (kind === 'length') return readLengthText(cell, decimals, lengthsIn);
  const text = readName(cell);
  if (!text.ok || !choices || choices.includes(text.value)) return text;
  return unread(`'${text.value}' is none of ${joinWords(choices, 'or')}`, 'write one of them');
}

function readLengthText(
  cell: Cell,
  decimals: PriceList['decimals'],
  lengthsIn: PriceList['lengthsIn'],
): Reading<string> {
  const bare = readFigure(cell, decimals);
  if (bare.ok && lengthsIn === undefined)
    return unread(`'${cell}' has no unit`, "write lengths-in, such as lengths-in: mm, in the price list's record");
  const text = bare.ok
    ? `${printDecimal(bare.value)}${lengthsIn === 'in' ? '"' : ` ${lengthsIn ?? ''}`}`
    : String(cell);
  const length = parseLength(text);
  return length.ok ? read(text) : unread(length.why, length.fix ?? 'write it as a length');
}

/** A product stands once in a list, and two have no file name in common. */
function twice(products: readonly Product[], { fileName }: PriceList): readonly ListProblem[] {
  const [byNumber, bySlug] = [new Map<string, Product>(), new Map<string, Product>()];
  return products.flatMap((product): readonly ListProblem[] => {
    const { row, number, slug } = product;
    const same = number === undefined ? undefined : byNumber.get(headOf(number));
    const alike = bySlug.get(slug);
    if (number !== undefined) byNumber.set(headOf(number), same ?? product);
    bySlug.set(slug, alike ?? product);
    if (same) {
      const what = `row ${same.row + 1} has the product number ${number ?? ''} already`;
      return [{ row, what, fix: 'keep one of the two rows in the list', severity: 'error' }];
    }
    if (!alike) return [];
    const what = `row ${alike.row + 1} would have the file name ${slug}.md too`;
    const fix =
      fileName === 'name'
        ? 'write file-name: number where the list has numbers; or keep one row'
        : 'keep one of the two rows';
    return [{ row, what, fix, severity: 'error' }];
  });
}
