import type { Book } from '../book.js';
import type { LookUp } from '../look-up.js';

/** A Book before its schedules are made, with its parts at hand. */
export type Unscheduled = LookUp<Omit<Book, 'schedules'>>;
