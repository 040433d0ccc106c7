import { cautionWords } from '../core/caution/index.js';
import { lower } from '../base/units/index.js';
import type { View } from './view.js';
import type { IndexEntry, SheetSet } from './page.js';
import { pagePaths } from './paths.js';

/** The pages that lead through the book, chapter by chapter. A chapter of one page is that page. */
export const chapters = [
  { id: 'start', title: 'Start', pages: [{ id: 'start', title: 'Start' }] },
  {
    id: 'rooms',
    title: 'Rooms',
    pages: [
      { id: 'house', title: 'The house, level by level' },
      { id: 'rooms', title: 'Every room' },
      { id: 'areas', title: 'Areas and walls' },
    ],
  },
  {
    id: 'choices',
    title: 'Choices',
    pages: [
      { id: 'choices', title: 'To decide' },
      { id: 'try', title: 'Try choices' },
      { id: 'slips', title: 'Choice slips' },
      { id: 'alternatives', title: 'Alternatives' },
      { id: 'options', title: 'Options' },
    ],
  },
  {
    id: 'money',
    title: 'Money',
    pages: [
      { id: 'money', title: 'From the contract to today' },
      { id: 'allowances', title: 'Allowances' },
      { id: 'upgrades', title: 'Upgrades and credits' },
      { id: 'agreed', title: 'Issues and change orders' },
    ],
  },
  { id: 'calendar', title: 'Calendar', pages: [{ id: 'calendar', title: 'Calendar' }] },
  { id: 'trades', title: 'Trades', pages: [{ id: 'trades', title: 'Trades' }] },
  {
    id: 'gaps',
    title: `Gaps and ${lower(cautionWords.title)}`,
    pages: [
      { id: 'scope', title: 'Scope' },
      { id: 'cautions', title: cautionWords.title },
    ],
  },
  {
    id: 'lists',
    title: 'Lists',
    pages: [
      { id: 'finishSchedule', title: 'Finish schedule' },
      { id: 'openings', title: 'Doors and openings' },
      { id: 'schedules', title: 'Other schedules' },
      { id: 'outside', title: 'Outside walls and roof' },
      { id: 'quantities', title: 'Quantities' },
      { id: 'orders', title: 'Order list' },
      { id: 'records', title: 'Records' },
      { id: 'numbers', title: 'About the numbers' },
    ],
  },
  { id: 'search', title: 'Search', pages: [{ id: 'search', title: 'Search' }] },
] as const;

export type ChapterId = (typeof chapters)[number]['id'];
export type LeadingPageId = (typeof chapters)[number]['pages'][number]['id'];

/** The chapters that a book has: choices are tried, and slips laid over each other, where the house lies beside its pages. */
export function chaptersOf({ beside, hasRecords }: View): readonly Chapter[] {
  return chapters.map(({ id, title, pages }) => ({
    id,
    title,
    pages: pages.filter(
      ({ id: page }) => (beside.trying !== undefined || !isTrying(page)) && (hasRecords || page !== 'records'),
    ),
  }));
}

/** Does a page need the house beside it? */
export function isTrying(id: LeadingPageId): boolean {
  return id === 'try' || id === 'slips';
}

/** The book as a set of pages. */
export function bookSet(view: View): SheetSet {
  return {
    title: `${view.book.house.name}: selections and specification book`,
    index: chaptersOf(view).map(({ id, title, pages }) => {
      const entries = pages.map((page): IndexEntry => ({ ...page, path: pagePaths[page.id] }));
      const path = entries[0]?.path ?? pagePaths.start;
      return { id, title, path, ...(entries.length > 1 && { pages: entries }) };
    }),
  };
}

interface Chapter {
  readonly id: ChapterId;
  readonly title: string;
  readonly pages: readonly { readonly id: LeadingPageId; readonly title: string }[];
}
