import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PDFDocument, PDFHexString, PDFString, PDFDict, PDFArray, type PDFObject } from 'pdf-lib';
import type { Book } from '../../src/core/book/index.js';
import { takeoffAsPrinted, weightInPlace } from '../../src/core/takeoff/index.js';

/** Looks through every file of a handout for money, knowing the whole Book, and nothing of how handouts are made. */

export interface Leak {
  readonly file: string;
  readonly found: string;
}

/** Words that no handout has a use for. `pricing` is not one: an issue may be for pricing. */
const words =
  /\b(?:prices?|priced|costs?|costly|allowances?|contract[ -]sum|credits?|upgrades?|budgets?|overages?|mark-?ups?|dollars?|contingency|contingencies|invoices?)\b/giu;
const currency = /\p{Sc}\s*[-−+]?\s*\d|\d\s*\p{Sc}|\bUSD\b/giu;

/** Every amount of the Book that is told apart from a quantity: printed figures of dollars and of cents, without a sign. */
export interface Amounts {
  readonly figures: ReadonlySet<string>;
  /** Amounts that are also a plain quantity of this house, and so cannot be told. */
  readonly skipped: number;
}

export function amountsOf(book: Book): Amounts {
  const cents = new Set<number>();
  const add = (value: unknown) => {
    if (typeof value === 'number' && Number.isFinite(value) && Math.abs(value) >= 1000) cents.add(Math.abs(value));
  };
  const deep = (value: unknown): void => {
    if (typeof value === 'number') return add(value);
    if (typeof value === 'object' && value !== null) Object.values(value).forEach(deep);
  };
  // Rates of tax and mark-up are no sums; they are decimals and their parts are too small to be taken for one.
  deep(book.money);
  for (const { cost, shares } of book.orders) deep([cost, shares.map((share) => share.cost)]);
  for (const { cost, change } of book.rooms) deep([cost, change]);
  for (const { cost, change, alternatives } of book.selections)
    deep([cost, change, alternatives.map((one) => [one.cost, one.againstStandard, one.againstToday])]);
  for (const { freight, parts } of book.options) {
    deep(freight);
    for (const { material, labor } of parts)
      for (const rate of [material, labor]) if (rate) add(Math.round(rate.amount * 10 ** (2 - rate.scale)));
  }
  const quantities = quantitiesOf(book);
  const figures = new Set<string>();
  let skipped = 0;
  for (const each of cents) {
    const forms = formsOf(each);
    if (forms.some((form) => quantities.has(form))) skipped += 1;
    for (const form of forms) if (!quantities.has(form)) figures.add(form);
  }
  return { figures, skipped };
}

/** `1234.56` and `123456`; whole dollars also as `1234` from a thousand on. Commas are taken out of what is searched. */
function formsOf(cents: number): string[] {
  const whole = Math.floor(cents / 100);
  const dollars = `${whole}.${String(cents % 100).padStart(2, '0')}`;
  return [dollars, String(cents), ...(cents % 100 === 0 && whole >= 1000 ? [String(whole)] : [])];
}

/** Figures of the house that are no money: of rooms, take-offs, packs, attributes, days and prose without a currency sign. */
function quantitiesOf(book: Book): ReadonlySet<string> {
  const plain = [
    book.rooms.map(({ measure, number, name }) => [measure, number, name]),
    book.selections.map(({ takeoff, alternatives, placeText }) => [
      takeoff,
      alternatives.map((one) => one.takeoff),
      placeText,
    ]),
    book.orders.map(({ net, required, packs, ordered, pack, stock }) => [net, required, packs, ordered, pack, stock]),
    book.options.map(({ attributes, weight, thickness, leadDays, specification, name, model }) => [
      attributes,
      weight,
      thickness,
      leadDays,
      specification,
      name,
      model,
    ]),
    // With the digits that they are printed with.
    book.selections.map(({ takeoff, alternatives }) =>
      [...takeoff, ...alternatives.flatMap((one) => one.takeoff)].map(takeoffAsPrinted),
    ),
    book.supplies,
    book.orders.map(({ counts }) => counts),
    // Years of editions, limits.
    book.cautions.map(({ title, seen, says, source, ask }) => [title, seen, says, source, ask]),
    book.calendar.milestones,
    book.house.number,
    book.on,
  ];
  // A figure a line: commas between figures of a list are not those within one.
  const tokens = tokensOf(JSON.stringify(plain, null, 1));
  // As printed: one digit after the point at most, halves away from zero.
  const rounded = tokens
    .filter((token) => token.includes('.'))
    .flatMap((token) => [Number(token), Math.floor(Number(token) * 10 + 0.5 + 1e-6) / 10])
    .map((value) => value.toFixed(1).replace(/\.0$/u, ''));
  // The order list rounds what is not sold in packs to whole units.
  const ordered = book.orders.flatMap((order) => [order.required, order.ordered].map((amount) => amount.toFixed(0)));
  return new Set([...tokens, ...rounded, ...ordered, ...weightsOf(book)]);
}

/** What every product weighs in the places that it stands in or is considered for, in whole pounds. */
function weightsOf(book: Book): readonly string[] {
  const options = new Map(book.options.map((option) => [option.id, option]));
  return book.selections.flatMap(({ category, counted, takeoff: own, alternatives }) =>
    [{ option: counted ?? '', takeoff: own }, ...alternatives].flatMap(({ option: slug, takeoff }) => {
      const option = options.get(`${category}/${slug}`);
      const weight = option && weightInPlace(option);
      const of = takeoff.find(({ unit, net }) => unit === weight?.per && net > 0);
      return weight && of ? [(weight.pounds * (of.covered ?? of.net)).toFixed(0)] : [];
    }),
  );
}

function tokensOf(text: string): string[] {
  return (text.replaceAll(/(?<=\d),(?=\d{3}(?!\d))/gu, '').match(/(?<![\d.])\d+(?:\.\d+)?(?![\d])/gu) ?? []).map(
    (token) => token.replace(/(?<=\.\d\d)0+$/u, ''),
  );
}

/** Money in one text. */
export function moneyIn(file: string, text: string, { figures }: Amounts): Leak[] {
  const said = [...text.matchAll(words), ...text.matchAll(currency)].map(([found]) => found);
  const sums = tokensOf(withoutGeometry(text)).filter((token) => figures.has(token));
  return [...new Set([...said, ...sums])].map((found) => ({ file, found }));
}

/** The name of SVG has a year in it, coordinates of drawings are figures with two places too, and colours and digests have digits: they are not read as sums. */
function withoutGeometry(text: string): string {
  return text
    .replaceAll('http://www.w3.org/2000/svg', '')
    .replace(/#[0-9a-f]{3,8}\b|\b[0-9a-f]{64}\b/giu, ' ')
    .replace(
      /\s(?:d|points|x|y|x1|x2|y1|y2|cx|cy|r|rx|ry|width|height|viewBox|transform|style|stroke-width|stroke-dasharray|font-size|textLength|offset)="[^"]*"/gu,
      '',
    );
}

/** Money in any file of a handout. PDFs are opened: text, metadata, every string in them, every attachment. */
export async function moneyInFiles(files: ReadonlyMap<string, Uint8Array | string>, amounts: Amounts): Promise<Leak[]> {
  const leaks: Leak[] = [];
  for (const [path, content] of files) {
    leaks.push(...moneyIn(`name of ${path}`, path, amounts));
    if (path.includes('/fonts/')) continue;
    if (path.endsWith('.pdf')) leaks.push(...(await moneyInPdf(path, content as Uint8Array, amounts)));
    else
      leaks.push(
        ...moneyIn(path, typeof content === 'string' ? content : Buffer.from(content).toString('utf8'), amounts),
      );
  }
  return leaks;
}

async function moneyInPdf(path: string, pdf: Uint8Array, amounts: Amounts): Promise<Leak[]> {
  const texts = await pdfTexts(pdf);
  return [...texts].flatMap(([what, text]) => moneyIn(`${path}, ${what}`, text, amounts));
}

/** All that a PDF says, by what says it. */
export async function pdfTexts(pdf: Uint8Array): Promise<Map<string, string>> {
  const folder = mkdtempSync(join(tmpdir(), 'bookmatch-money-'));
  try {
    const file = join(folder, 'handout.pdf');
    writeFileSync(file, pdf);
    const run = (command: string, ...args: string[]) =>
      execFileSync(command, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 1 << 28 });
    const texts = new Map<string, string>([
      ['pages', run('pdftotext', '-layout', file, '-')],
      ['facts', run('pdfinfo', file).replace(/^(?:Producer|File size|Page size|PDF version):.*$/gmu, '')],
      ['metadata', run('pdfinfo', '-meta', file)],
      ['strings', await stringsOf(pdf)],
    ]);
    const attachments = join(folder, 'attachments');
    mkdirSync(attachments);
    run('pdfdetach', '-saveall', '-o', attachments, file);
    for (const name of readdirSync(attachments)) {
      texts.set(`attachment ${name}`, readFileSync(join(attachments, name), 'utf8'));
    }
    return texts;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Every string object: titles of bookmarks, alternative texts in the tag tree, names of fields, descriptions. */
async function stringsOf(pdf: Uint8Array): Promise<string> {
  const document = await PDFDocument.load(pdf, { updateMetadata: false });
  const found: string[] = [];
  const visit = (object: PDFObject): void => {
    if (object instanceof PDFString || object instanceof PDFHexString) found.push(decode(object));
    else if (object instanceof PDFArray) object.asArray().forEach(visit);
    else if (object instanceof PDFDict) object.values().forEach(visit);
  };
  for (const [, object] of document.context.enumerateIndirectObjects()) {
    visit(object);
    if ('dict' in object && object.dict instanceof PDFDict) visit(object.dict);
  }
  return found.filter((text) => !/[\0-\x08\x0e-\x1f]/u.test(text)).join('\n');
}

function decode(text: PDFString | PDFHexString): string {
  try {
    return text.decodeText();
  } catch {
    return '';
  }
}
