import { optionPath, pagePaths, roomPath, tradePath } from '../paths.js';
import type { View } from '../view.js';

/** The page that shows what a record says. */
export function shownBy(view: View, source: string): { readonly path: string; readonly title: string } | undefined {
  const { rooms, options, categories, trades, house } = view.book;
  const room = rooms.find((candidate) => candidate.source === source);
  if (room) return { path: roomPath(room), title: `room ${room.number}, ${room.name}` };
  const option = options.find((candidate) => candidate.source === source);
  if (option) return { path: optionPath(option), title: option.name };
  if (categories.some((category) => category.source === source))
    return { path: pagePaths.numbers, title: 'About the numbers' };
  const trade = trades.find((candidate) => candidate.source === source);
  if (trade) return { path: tradePath(trade), title: `${trade.name}, its quantities` };
  return house.source === source ? { path: pagePaths.money, title: 'Money' } : undefined;
}
