import { picturedRoom, type KeyLevel, type LookUp } from '../../core/book/index.js';
import { capital, printDay } from '../../base/units/index.js';
import type { PrintDrawing } from '../drawings.js';
import { coverPlan } from '../levels.js';
import { coverPicture } from '../picture.js';

export interface Cover {
  readonly house: string;
  readonly number: string;
  readonly place: string;
  readonly day: string;
  readonly standing: string;
  /** Short digest of an issued copy; empty for any other. */
  readonly digest: string;
  readonly people: readonly { readonly role: string; readonly name: string; readonly contact: string }[];
  /** The house laid out from its rooms, else a room that stands for it. */
  readonly picture: PrintDrawing | null;
}

export function makeCover(look: LookUp, levels: readonly KeyLevel[], standing: string, digest: string): Cover {
  const { house, on } = look.book;
  const room = picturedRoom(look.book);
  return {
    house: house.name,
    number: house.number,
    place: house.place,
    day: printDay(on),
    standing,
    digest,
    people: house.people.map(({ role, name, contact }) => ({ role: capital(role), name, contact: contact ?? '' })),
    picture: coverPlan(levels) ?? (room ? coverPicture(room, look) : null),
  };
}
