import type { Book, BookSelection } from '../../book/index.js';
import { writeCsv } from '../csv/index.js';
import type { Takeoff } from '../../takeoff/index.js';

/** One line of the quantities: what one place takes of one part of one product, with the figures that lead to it. */
export interface QuantityRow {
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
  readonly rule: string;
  readonly state: string;
}

/** Quantities of every selection that has an option counted, in order of room and then of work. */
export function quantityRows(book: Book): QuantityRow[] {
  const rooms = new Map(book.rooms.map((room) => [room.slug, room]));
  const options = new Map(book.options.map((option) => [option.id, option.name]));
  return book.selections.flatMap((selection) => {
    const room = rooms.get(selection.room);
    const option = options.get(`${selection.category}/${selection.counted ?? ''}`);
    if (!room || option === undefined) return [];
    return selection.takeoff.map((takeoff) => makeRow(selection, takeoff, room.number, room.name, option));
  });
}

/** The quantities as CSV. */
export function quantitiesCsv(book: Book): string {
  return writeCsv(quantityRows(book), [
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
    'rule',
    'state',
  ]);
}

function makeRow(
  selection: BookSelection,
  takeoff: Takeoff,
  room: string,
  roomName: string,
  option: string,
): QuantityRow {
  return {
    trade: selection.trade,
    room,
    roomName,
    place: selection.placeText,
    category: selection.category,
    option,
    part: takeoff.part,
    gross: takeoff.gross,
    deducted: takeoff.gross - takeoff.net,
    net: takeoff.net,
    unit: takeoff.unit,
    times: takeoff.factors.reduce((product, factor) => product * factor.times, 1),
    wastePercent: takeoff.waste.percent,
    required: takeoff.required,
    rule: takeoff.rule,
    state: selection.state,
  };
}
