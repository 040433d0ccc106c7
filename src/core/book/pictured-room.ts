import { floorArea } from '../model/index.js';
import type { Book, BookRoom } from './book.js';

/** The room whose picture stands for the house: the one that its record names, else the one with most open choices; among equals a living room, then the
 *  one with the largest floor. Undefined in a house without rooms. */
export function picturedRoom({ house, rooms }: Pick<Book, 'house' | 'rooms'>): BookRoom | undefined {
  return rooms.find(({ slug }) => slug === house.picture) ?? rooms.toSorted(byWorth)[0];
}

function byWorth(a: BookRoom, b: BookRoom): number {
  const living = (room: BookRoom): number => (room.use === 'living' ? 1 : 0);
  return b.open - a.open || living(b) - living(a) || floorArea(b.measure.floor) - floorArea(a.measure.floor);
}
