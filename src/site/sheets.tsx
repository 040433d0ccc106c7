import type { VNode } from 'preact';
import { checkPath, type Page } from './page.js';
import { chaptersOf, type ChapterId } from './chapters.js';
import { AlternativesPage } from './pages/alternatives.js';
import { AgreedPage } from './pages/agreed.js';
import { CalendarPage } from './pages/calendar.js';
import { CautionsPage } from './pages/cautions.js';
import { ChoicePage } from './pages/choice.js';
import { HousePage } from './pages/house.js';
import { MoneyPage } from './pages/money.js';
import { NumbersPage } from './pages/numbers.js';
import {
  finishSheet,
  openingSheet,
  orderSheet,
  otherSheet,
  quantitySheet,
  scopeSheet,
  outsideSheet,
} from '../table/index.js';
import { SheetPage } from './pages/sheet-page.js';
import { OptionPage } from './pages/option.js';
import { OptionsPage } from './pages/options.js';
import { RecordPage } from './pages/record.js';
import { RecordsPage } from './pages/records.js';
import { RoomPage } from './pages/room.js';
import { RoomsPage } from './pages/rooms.js';
import { SearchPage } from './pages/search.js';
import { StartPage } from './pages/start.js';
import { TryPage } from './pages/try.js';
import { marksOf, markRules } from './marks.js';
import { optionPath, recordPath, roomPath } from './paths.js';
import type { View } from './view.js';

/** Every page of the book, in the order of the set. */
export function allSheets(view: View): readonly Page[] {
  const { rooms, options, sources } = view.book;
  const pages: Page[] = [
    ...chaptersOf(view).map((chapter) => ({
      path: chapter.path,
      sheet: chapter.sheet,
      title: chapter.title,
      chapter: chapter.id,
      content: () => chapterContent[chapter.id](view),
      ...(chapter.id === 'house' && { style: markRules(marksOf(view)) }),
      ...(chapter.id === 'search' && {
        scripts: ['assets/minisearch.js', 'assets/search-index.js', 'assets/search.js'],
      }),
      ...(chapter.id === 'try' && tryScripts(view)),
    })),
    ...rooms.map((room) => ({
      path: roomPath(room),
      sheet: `A-${room.number}`,
      title: room.name,
      chapter: 'rooms' as const,
      content: () => <RoomPage room={room} />,
      ...tryScripts(view),
    })),
    ...rooms.flatMap((room) =>
      view.selectionsOf(room).flatMap((selection, index) => {
        const path = view.choicePath(selection);
        if (path === undefined) return [];
        return [
          {
            path,
            sheet: `D-${room.number}.${index + 1}`,
            title: `${view.categoryName(selection.category)}, ${room.name}`,
            chapter: 'rooms' as const,
            content: () => <ChoicePage selection={selection} />,
            ...tryScripts(view),
          },
        ];
      }),
    ),
    ...options.map((option, index) => ({
      path: optionPath(option),
      sheet: `A-2.${index + 1}`,
      title: option.name,
      chapter: 'options' as const,
      content: () => <OptionPage option={option} />,
    })),
    ...sources.map((source, index) => ({
      path: recordPath(source.path),
      sheet: `R-1.${index + 1}`,
      title: source.path,
      chapter: 'records' as const,
      content: () => <RecordPage source={source} />,
    })),
  ];
  pages.forEach((page) => checkPath(page.path));
  return pages;
}

/** Of pages on which choices can be tried. */
function tryScripts({ beside }: View): Pick<Page, 'scripts'> {
  return beside.trying ? { scripts: ['assets/try-start.js'] } : {};
}

const chapterContent: Readonly<Record<ChapterId, (view: View) => VNode>> = {
  start: () => <StartPage />,
  house: () => <HousePage />,
  rooms: () => <RoomsPage />,
  options: () => <OptionsPage />,
  'finish-schedule': (view) => <SheetPage sheet={finishSheet(view)} />,
  openings: (view) => <SheetPage sheet={openingSheet(view)} />,
  cautions: () => <CautionsPage />,
  schedules: (view) => <SheetPage sheet={otherSheet(view)} />,
  scope: (view) => <SheetPage sheet={scopeSheet(view)} />,
  outside: (view) => <SheetPage sheet={outsideSheet(view)} />,
  quantities: (view) => <SheetPage sheet={quantitySheet(view)} />,
  orders: (view) => <SheetPage sheet={orderSheet(view, { withMoney: true })} />,
  money: () => <MoneyPage />,
  agreed: () => <AgreedPage />,
  alternatives: () => <AlternativesPage />,
  try: () => <TryPage />,
  calendar: () => <CalendarPage />,
  records: () => <RecordsPage />,
  numbers: () => <NumbersPage />,
  search: () => <SearchPage />,
};
