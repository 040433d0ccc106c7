import { nothing, type Cell, type Finish, type Place } from './cell.js';

/** What words of a record must pass to be read by an audience; what may not pass becomes ''. The only way to words of another
 *  type, so that no string of a record reaches a trade by the side. `name`: it has to be called something. */
export type Gate<Words extends string> = (text: string, as?: 'name') => Words;

/** The house reads everything. */
export const open: Gate<string> = (text) => text;

/** A cell with all of its words through the gate. What has no words left is nothing. */
export function gated<Words extends string>(cell: Cell, gate: Gate<Words>): Cell<Words> {
  switch (cell.is) {
    case 'words':
    case 'mark': {
      const { place, ...rest } = cell;
      const text = gate(cell.text);
      return text === '' ? nothing : { ...rest, text, ...placed(place, gate) };
    }
    case 'prose': {
      const text = gate(cell.text);
      return text === '' ? nothing : { is: 'prose', text };
    }
    case 'room': {
      const { number, name, place } = cell;
      return { is: 'room', number: gate(number, 'name'), name: gate(name, 'name'), ...placed(place, gate) };
    }
    case 'day':
      return { is: 'day', day: gate(cell.day) };
    case 'status': {
      const { place, status } = cell;
      return { is: 'status', status, ...placed(place, gate) };
    }
    case 'amount': {
      const { unit, ...rest } = cell;
      return unit === undefined ? rest : { ...rest, unit: gate(unit) };
    }
    case 'unit':
      return { ...cell, unit: gate(cell.unit) };
    case 'pack':
      return { ...cell, name: gate(cell.name, 'name'), unit: gate(cell.unit) };
    case 'rooms':
      // Who goes there asks which, not how many.
      return { is: 'rooms', numbers: cell.numbers.map((number) => gate(number, 'name')), all: true };
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
    case 'swing':
      return cell;
  }
}

/** Who must not build yet reads 'if chosen' at whatever stands only for now; how urgent a choice is, is the house's affair. */
function finish<Words extends string>(
  { name, key, place, selection, kind, standing, urgency: _, ...rest }: Finish,
  gate: Gate<Words>,
): Finish<Words> {
  return {
    ...rest,
    standing: standing === 'standard' ? 'considered' : standing,
    name: gate(name, 'name'),
    ...(key !== undefined && { key: gate(key, 'name') }),
    ...placed(place, gate),
    ...(selection !== undefined && { selection: gate(selection, 'name') }),
    ...(kind !== undefined && { kind: gate(kind, 'name') }),
  };
}

function placed<Words extends string>(place: Place | undefined, gate: Gate<Words>): { readonly place?: Place<Words> } {
  return place ? { place: { ...place, id: gate(place.id, 'name') } } : {};
}
