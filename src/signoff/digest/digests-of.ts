import type { Book } from '../../core/book/index.js';
import { agreedRoom, agreedRoomWithoutSums } from './agreed-room.js';
import { agreedTrade } from './agreed-trade.js';
import { digestOf } from './digest-of.js';

/** SHA-256 by slug, as 64 hexadecimal digits. */
type Digests = Readonly<Record<string, string>>;

/** The digest of what each room's page agrees to, the same on whatever day the Book is made. */
export function roomDigests(book: Book): Digests {
  return Object.fromEntries(book.rooms.map((room) => [room.slug, digestOf(agreedRoom(book, room))]));
}

/** The same for rooms without what their choices come to. */
export function roomDigestsWithoutSums(book: Book): Digests {
  return Object.fromEntries(book.rooms.map((room) => [room.slug, digestOf(agreedRoomWithoutSums(book, room))]));
}

/** The digest of what each trade works from, the same on whatever day the Book is made. */
export function tradeDigests(book: Book): Digests {
  return Object.fromEntries(book.trades.map((trade) => [trade.slug, digestOf(agreedTrade(book, trade))]));
}
