import type { Book } from '../../core/book/index.js';
import { isTold, type Comparison } from '../../core/compare/index.js';
import { checkPath, type IndexEntry, type Page, type SheetSet } from '../page.js';
import { makeView, type Beside } from '../view.js';
import { Overview } from './overview.js';
import { recordsPath, roomChangePath, standingAlone, type ComparisonPlace } from './place.js';
import { RecordsChanged } from './records.js';
import { RoomChanged } from './room.js';

/** What lies between two Books as pages: an overview, one page for each room that changed, and the text of the records side
 *  by side. They are rendered with the newer Book as the page's own. Without a place they stand alone in a folder. */
export function comparisonPages(
  comparison: Comparison,
  from: Book,
  to: Book,
  place: ComparisonPlace = standingAlone,
): readonly Page[] {
  const context = { comparison, place, from: makeView(from), to: makeView(to), rooms: comparison.rooms.filter(isTold) };
  const pages: Page[] = [
    {
      path: place.overview,
      title: 'What changed',
      chapter: 'overview',
      scripts: ['assets/lists.js'],
      content: () => <Overview {...context} />,
    },
    ...context.rooms.map((room) => ({
      path: roomChangePath(place, room),
      title: room.name,
      chapter: 'rooms',
      content: () => <RoomChanged {...context} room={room} />,
    })),
    {
      path: recordsPath(place),
      title: 'Records',
      chapter: 'records',
      content: () => <RecordsChanged {...context} />,
    },
  ];
  pages.forEach((page) => checkPath(page.path));
  return pages;
}

/** The pages that stand alone, as a set with an index of its own, and the way back to the book where it lies beside. */
export function comparisonSet(
  { house, from, to }: Comparison,
  pages: readonly Page[],
  { book }: Beside = {},
): SheetSet {
  const entries = (chapter: string): IndexEntry[] =>
    pages.filter((page) => page.chapter === chapter).map(({ title, path }) => ({ id: path, title, path }));
  const rooms = entries('rooms');
  const [firstRoom] = rooms;
  return {
    title: `${house.name}: what changed from ${from.label} to ${to.label}`,
    index: [
      ...entries('overview'),
      ...(firstRoom ? [{ id: 'rooms', title: 'Rooms', path: firstRoom.path, pages: rooms }] : []),
      ...entries('records'),
      ...(book === undefined ? [] : [{ id: 'book', title: 'Back to the book', path: book }]),
    ],
  };
}
