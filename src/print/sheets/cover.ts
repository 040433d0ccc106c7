import { floorArea } from '../../core/model/index.js';
import type { BookRoom, LookUp } from '../../core/book/index.js';
import { capital, printDay } from '../../base/units/index.js';
import { coverDrawing, type PrintDrawing } from '../drawings.js';

export interface Cover {
  readonly house: string;
  readonly number: string;
  readonly place: string;
  readonly day: string;
  readonly standing: string;
  /** Short digest of an issued copy; empty for any other. */
  readonly digest: string;
  readonly people: readonly { readonly role: string; readonly name: string; readonly contact: string }[];
  readonly drawing: PrintDrawing | null;
}

export function makeCover(look: LookUp, standing: string, digest: string): Cover {
  const { house, on, rooms } = look.book;
  const room = greatestRoom(rooms);
  return {
    house: house.name,
    number: house.number,
    place: house.place,
    day: printDay(on),
    standing,
    digest,
    people: house.people.map(({ role, name, contact }) => ({ role: capital(role), name, contact: contact ?? '' })),
    drawing: room ? coverDrawing(room, look) : null,
  };
}

/** The room people would know the house by: the living room, else the one with the largest floor. */
function greatestRoom(rooms: readonly BookRoom[]): BookRoom | undefined {
  const living = rooms.filter(({ use }) => use === 'living');
  return [...(living.length > 0 ? living : rooms)].sort(
    (a, b) => floorArea(b.measure.floor) - floorArea(a.measure.floor),
  )[0];
}
