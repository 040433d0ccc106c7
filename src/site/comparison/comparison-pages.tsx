import type { Book } from '../../core/book/index.js';
import { isTold, type Comparison } from '../../core/compare/index.js';
import { checkPath, type Page, type SheetSet } from '../page.js';
import { makeView } from '../view.js';
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
      sheet: `${place.sheet}-1`,
      title: 'What changed',
      chapter: place.chapter ?? 'overview',
      content: () => <Overview {...context} />,
    },
    ...context.rooms.map((room) => ({
      path: roomChangePath(place, room),
      sheet: `${place.sheet}-${room.number}`,
      title: room.name,
      chapter: place.chapter ?? `room-${room.room}`,
      content: () => <RoomChanged {...context} room={room} />,
    })),
    {
      path: recordsPath(place),
      sheet: `${place.sheet}-2`,
      title: 'Records',
      chapter: place.chapter ?? 'records',
      content: () => <RecordsChanged {...context} />,
    },
  ];
  pages.forEach((page) => checkPath(page.path));
  return pages;
}

/** The pages that stand alone, as a set with an index of its own. */
export function comparisonSet({ house, from, to }: Comparison, pages: readonly Page[]): SheetSet {
  return {
    title: `${house.name}: what changed from ${from.label} to ${to.label}`,
    index: pages.map(({ chapter, sheet, title, path }) => ({ id: chapter, sheet, title, path })),
  };
}
