import type { Cell } from './cell.js';

/** What a column may ask about what a row points to. Names only: it holds no Book. */
export interface Names {
  /** `101 Great room`; `Outside`. */
  readonly title: (room: string) => string;
  readonly number: (room: string) => string;
  /** `outside` has no number and no page. */
  readonly room: (room: string) => Omit<Extract<Cell, { is: 'room' }>, 'is'>;
  readonly trade: (slug: string) => string;
  readonly category: (slug: string) => string;
  readonly option: (id: string) => string | undefined;
  readonly milestone: (id: string) => string;
  /** How urgent an open selection is; undefined when it is not open. */
  readonly urgency: (selection: string) => 'open' | 'due-soon' | 'late' | undefined;
}
