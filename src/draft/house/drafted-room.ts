import type { RawRoom, RawSelection } from '../../core/records/index.js';
import { freshSlug } from '../record/slug.js';
import type { RoomLine, RoomName } from './room-line.js';
import { usualUse } from '../record/use.js';
import { starterAllowances, starterSelections } from './starter.js';

/** A room before it is a record: its file name and everything but what is chosen in it. Whoever drafts rooms, from a line or from a model of
 *  the house, drafts these. */
export interface DraftedRoom {
  readonly slug: string;
  readonly values: RawRoom;
  /** Where it is written already: that text, which is kept. */
  readonly text?: string;
}

/** Level of a house that says nothing of levels. */
export const onlyLevel = { id: 'main', name: 'Main level' };

/** Rooms of lines, numbered from 101 in their order. */
export function roomsOfLines(lines: readonly RoomLine[], ceiling: string): readonly DraftedRoom[] {
  const taken = new Set<string>();
  return lines.map((line, index) => {
    const room = roomOfLine(line, { number: String(101 + index), level: onlyLevel.id, ceiling, taken });
    taken.add(room.slug);
    return room;
  });
}

type Shaped = { readonly size: string } | { readonly walls: NonNullable<RawRoom['walls']> };

interface AsRoom {
  readonly number: string;
  readonly level: string;
  readonly ceiling: string;
  /** File names of the house's rooms. */
  readonly taken: ReadonlySet<string>;
}

/** A room by its name and its shape: a size, or walls as they were walked. */
export function roomOfLine(
  { name, use, ...shape }: RoomName & Shaped,
  { number, level, ceiling, taken }: AsRoom,
): DraftedRoom {
  return {
    slug: freshSlug(name, taken, `room-${number.toLowerCase().replace(/[^a-z0-9]/gu, '')}`),
    values: { name, number, level, use: use ?? usualUse, ...shape, ceiling: `flat ${ceiling}` },
  };
}

/** What is to be chosen in a room of that use, of the kinds of finishes that the house has, on the allowances that it has for them. */
export function selectionsFor(
  use: RawRoom['use'],
  categories: ReadonlySet<string>,
  allowances: ReadonlyMap<string, string>,
): readonly RawSelection[] {
  return starterSelections
    .filter((each) => each.in(use) && categories.has(each.category))
    .map(({ at, category }) => {
      const allowance = allowances.get(category);
      return {
        at: typeof at === 'string' ? at : [...at],
        category,
        ...(allowance !== undefined && { allowance }),
      };
    });
}

/** The starter's allowances that something in these rooms draws on. */
export function allowancesOf(rooms: readonly DraftedRoom[]): readonly (typeof starterAllowances)[number][] {
  const used = new Set(rooms.flatMap(({ values: { use } }) => starterSelections.filter((each) => each.in(use))));
  const wanted = new Set([...used].map(({ category }) => category));
  return starterAllowances.filter(({ categories }) => categories.some((category) => wanted.has(category)));
}
