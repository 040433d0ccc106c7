import type { Book } from '../../book/index.js';
import { agreedRoom } from './agreed-room.js';
import { agreedTrade } from './agreed-trade.js';
import { digestOf } from './digest-of.js';
import { withoutDay } from './without-day.js';

/** SHA-256 digests as 64 hexadecimal digits; rooms and trades by slug. */
export interface BookDigests {
  /** Of everything in the Book but the day it was read on. */
  readonly book: string;
  readonly rooms: Readonly<Record<string, string>>;
  readonly trades: Readonly<Record<string, string>>;
}

/** The digests of a Book, the same on whatever day it is made. */
export function digestsOf(book: Book): BookDigests {
  return {
    book: digestOf(withoutDay(book)),
    rooms: Object.fromEntries(book.rooms.map((room) => [room.slug, digestOf(agreedRoom(book, room))])),
    trades: Object.fromEntries(book.trades.map((trade) => [trade.slug, digestOf(agreedTrade(book, trade))])),
  };
}
