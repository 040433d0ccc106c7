import type { Book, BookSelection } from '../../book/index.js';
import { writeCsv } from '../csv/index.js';
import { countWords, countsWords, resistanceWords, supplyWords } from '../../takeoff/index.js';
import type { LayoutSummary, SupplyQuantity, Takeoff } from '../../takeoff/index.js';
import { assemblySteps, stepWords, takeoffSteps } from './steps.js';

/** One line of the quantities: what one place takes of one part of one product, with the figures that lead to it. */
export interface QuantityRow {
  readonly kind: 'finish' | 'supply';
  readonly trade: string;
  readonly room: string;
  readonly roomName: string;
  readonly place: string;
  readonly category: string;
  readonly option: string;
  readonly part: string;
  readonly gross: number;
  readonly deducted: number;
  readonly net: number;
  readonly unit: string;
  readonly times: number;
  readonly wastePercent: number;
  readonly required: number;
  /** The same as the trade counts it: `8.2 gal`, `1,204 lin ft; 903 board ft`, `Outside wall with its framing`. */
  readonly counted: string;
  readonly rule: string;
  /** Every step from gross to required, with its reason. */
  readonly why: string;
  readonly state: string;
  /** Pieces laid out on the surface; not in the CSV. */
  readonly layout?: LayoutSummary;
}

/** Quantities of every selection that has an option counted, in order of room and then of work. */
export function quantityRows(book: Book): QuantityRow[] {
  return eachTakeoff(book, (takeoff, place) => [makeRow(takeoff, place)]);
}

/** What is used up with them, selection by selection. `option` names the supply. */
export function supplyRows(book: Book): QuantityRow[] {
  return eachTakeoff(book, ({ supplies = [] }, place) => supplies.map((supply) => makeSupplyRow(supply, place)));
}

/** Finishes, each followed by its supplies. */
export function takeoffRows(book: Book): QuantityRow[] {
  return eachTakeoff(book, (takeoff, place) => [
    makeRow(takeoff, place),
    ...(takeoff.supplies ?? []).map((supply) => makeSupplyRow(supply, place)),
  ]);
}

/** Finishes and supplies as CSV. */
export function quantitiesCsv(book: Book): string {
  return writeCsv(takeoffRows(book), [
    'kind',
    'trade',
    'room',
    'roomName',
    'place',
    'category',
    'option',
    'part',
    'gross',
    'deducted',
    'net',
    'unit',
    'times',
    'wastePercent',
    'required',
    'counted',
    'rule',
    'why',
    'state',
  ]);
}

/** Where a quantity is, in the words of its row. */
type RowPlace = Pick<QuantityRow, 'trade' | 'room' | 'roomName' | 'place' | 'category' | 'option' | 'state'>;

function eachTakeoff(book: Book, rowsOf: (takeoff: Takeoff, place: RowPlace) => QuantityRow[]): QuantityRow[] {
  const rooms = new Map(book.rooms.map((room) => [room.slug, room]));
  const options = new Map(book.options.map((option) => [option.id, option.name]));
  return book.selections.flatMap((selection: BookSelection) => {
    const { trade, placeText, category, counted, state } = selection;
    const room = rooms.get(selection.room);
    const option = options.get(`${category}/${counted ?? ''}`);
    if (!room || option === undefined) return [];
    const place = { trade, room: room.number, roomName: room.name, place: placeText, category, option, state };
    return selection.takeoff.flatMap((takeoff) => rowsOf(takeoff, place));
  });
}

function makeRow(takeoff: Takeoff, place: RowPlace): QuantityRow {
  const { part, gross, net, unit, factors, waste, required, counts = [], assemblies = [], notes = [], rule } = takeoff;
  return {
    kind: 'finish',
    ...place,
    part,
    gross,
    deducted: gross - net,
    net,
    unit,
    times: product(factors),
    wastePercent: waste.percent,
    required,
    counted: [countsWords(counts), ...assemblies.map(resistanceWords)].filter((words) => words !== '').join('; '),
    rule,
    why: [
      ...takeoffSteps(takeoff).map(stepWords),
      ...counts.map((count) => `${countWords(count)}: ${count.why}`),
      ...notes.map((note) => `${note.what}: ${note.words}`),
      ...assemblies.flatMap((assembly) => [assembly.name, ...assemblySteps(assembly).map(stepWords)]),
    ].join('; '),
    ...(takeoff.layout && { layout: takeoff.layout }),
  };
}

function makeSupplyRow(supply: SupplyQuantity, place: RowPlace): QuantityRow {
  const { what, net, unit, factors, waste, required, source } = supply;
  return {
    kind: 'supply',
    ...place,
    option: what,
    part: `for ${place.option}`,
    gross: net,
    deducted: 0,
    net,
    unit,
    times: product(factors),
    wastePercent: waste.percent,
    required,
    counted: '',
    rule: source,
    why: supplyWords(supply),
  };
}

function product(factors: readonly { readonly times: number }[]): number {
  return factors.reduce((times, factor) => times * factor.times, 1);
}
