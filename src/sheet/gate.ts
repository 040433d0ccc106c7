import type { Cell, Finish } from './cell.js';
import { nothing } from './cell.js';

/** What words of a record must pass to be read by an audience; what may not pass becomes ''. The only way to words of another
 *  type, so that no string of a record reaches a trade by the side. */
export type Gate<Words extends string> = (text: string) => Words;

/** The house reads everything. */
export const open: Gate<string> = (text) => text;

/** A cell with all of its words through the gate. What has no words left is nothing. */
export function gated<Words extends string>(cell: Cell, gate: Gate<Words>): Cell<Words> {
  switch (cell.is) {
    case 'words':
    case 'prose':
    case 'mark': {
      const text = gate(cell.text);
      return text === '' ? nothing : { ...cell, text };
    }
    case 'room':
      return { ...cell, number: gate(cell.number), name: gate(cell.name) };
    case 'amount': {
      const { unit, ...rest } = cell;
      return unit === undefined ? rest : { ...rest, unit: gate(unit) };
    }
    case 'unit':
      return { ...cell, unit: gate(cell.unit) };
    case 'pack':
      return { ...cell, name: gate(cell.name), unit: gate(cell.unit) };
    case 'rooms':
      return { ...cell, numbers: cell.numbers.map(gate) };
    case 'finish':
      return { is: 'finish', ...finish(cell, gate) };
    case 'list':
      return { ...cell, of: cell.of.map((one) => gated(one, gate)).filter(({ is }) => is !== 'nothing') };
    case 'lines':
      return {
        is: 'lines',
        of: cell.of.map(({ at, after, cell: one }) => ({
          ...(at !== undefined && { at: gate(at) }),
          ...(after !== undefined && { after: gate(after) }),
          cell: gated(one, gate),
        })),
      };
    case 'nothing':
    case 'length':
    case 'span':
    case 'count':
    case 'pitch':
    case 'percent':
    case 'pieces':
    case 'days':
    case 'day':
    case 'status':
    case 'swing':
      return cell;
  }
}

function finish<Words extends string>({ name, key, ...rest }: Finish, gate: Gate<Words>): Finish<Words> {
  return { ...rest, name: gate(name), ...(key !== undefined && { key: gate(key) }) };
}
