import { cautionWords } from '../core/caution/index.js';
import type { View } from './view.js';
import type { SheetSet } from './page.js';
import { pagePaths } from './paths.js';

/** The sheet index: every chapter of the book in the order of the set. */
export const chapters = [
  { id: 'start', sheet: 'G-1', title: 'Start', path: pagePaths.start },
  { id: 'house', sheet: 'A-0', title: 'The house', path: pagePaths.house },
  { id: 'rooms', sheet: 'A-1', title: 'Rooms', path: pagePaths.rooms },
  { id: 'options', sheet: 'A-2', title: 'Options', path: pagePaths.options },
  { id: 'finish-schedule', sheet: 'A-3', title: 'Finish schedule', path: pagePaths.finishSchedule },
  { id: 'openings', sheet: 'A-4', title: 'Doors and openings', path: pagePaths.openings },
  { id: 'schedules', sheet: 'A-5', title: 'Other schedules', path: pagePaths.schedules },
  { id: 'scope', sheet: 'A-6', title: 'Scope', path: pagePaths.scope },
  { id: 'cautions', sheet: 'A-7', title: cautionWords.title, path: pagePaths.cautions },
  { id: 'outside', sheet: 'A-8', title: 'Outside walls and roof', path: pagePaths.outside },
  { id: 'quantities', sheet: 'Q-1', title: 'Quantities', path: pagePaths.quantities },
  { id: 'orders', sheet: 'Q-2', title: 'Order list', path: pagePaths.orders },
  { id: 'money', sheet: 'M-1', title: 'Money', path: pagePaths.money },
  { id: 'agreed', sheet: 'M-2', title: 'Issues and change orders', path: pagePaths.agreed },
  { id: 'alternatives', sheet: 'M-3', title: 'Alternatives', path: pagePaths.alternatives },
  { id: 'try', sheet: 'M-4', title: 'Try choices', path: pagePaths.try },
  { id: 'calendar', sheet: 'C-1', title: 'Calendar', path: pagePaths.calendar },
  { id: 'records', sheet: 'R-1', title: 'Records', path: pagePaths.records },
  { id: 'numbers', sheet: 'G-2', title: 'About the numbers', path: pagePaths.numbers },
  { id: 'search', sheet: 'G-3', title: 'Search', path: pagePaths.search },
] as const;

/** The chapters that a book has: choices are tried where the house lies beside its pages. */
export function chaptersOf({ beside }: View): readonly Chapter[] {
  return chapters.filter(({ id }) => id !== 'try' || beside.trying);
}

/** The book as a set of sheets. */
export function bookSet(view: View): SheetSet {
  return { title: `${view.book.house.name}: selections and specification book`, index: chaptersOf(view) };
}

type Chapter = (typeof chapters)[number];

export type ChapterId = (typeof chapters)[number]['id'];
