import type { VNode } from 'preact';
import { lower } from '../base/units/index.js';
import { checkPath, type Page } from './page.js';
import { chaptersOf, isTrying, type LeadingPageId } from './chapters.js';
import { AlternativesPage } from './pages/alternatives.js';
import { AgreedPage } from './pages/agreed.js';
import { CalendarPage } from './pages/calendar.js';
import { CautionsPage } from './pages/cautions.js';
import { ChoicePage } from './pages/choice.js';
import { ChoicesPage } from './pages/choices.js';
import { AreasPage, HousePage } from './pages/house.js';
import { AllowancesPage, MoneyPage, UpgradesPage } from './pages/money.js';
import { NumbersPage } from './pages/numbers.js';
import {
  finishSheet,
  openingSheet,
  orderSheet,
  otherSheet,
  tradeSheet,
  scopeSheet,
  outsideSheet,
} from '../table/index.js';
import { SheetPage } from './pages/sheet-page.js';
import { OptionPage } from './pages/option.js';
import { OptionsPage } from './pages/options.js';
import { QuantitiesPage } from './pages/quantities.js';
import { RecordPage } from './pages/record.js';
import { RecordsPage } from './pages/records.js';
import { RoomPage } from './pages/room.js';
import { RoomDrawingsPage } from './pages/room-drawings.js';
import { RoomFiguresPage } from './pages/room-figures.js';
import { RoomsPage } from './pages/rooms.js';
import { SearchPage } from './pages/search.js';
import { StartPage } from './pages/start.js';
import { SlipsPage } from './pages/slips.js';
import { TradesPage } from './pages/trades.js';
import { TryPage } from './pages/try.js';
import { printedSheetScript } from './parts/printed-sheet.js';
import { marksOf, markRules } from './marks.js';
import { drawingsPath, figuresPath, optionPath, pagePaths, recordPath, roomPath, tradePath } from './paths.js';
import type { View } from './view.js';

/** Every page of the book, in the order of the set. */
export function allSheets(view: View): readonly Page[] {
  const { rooms, options, sources, trades } = view.book;
  const pages: Page[] = [
    ...chaptersOf(view).flatMap((chapter) =>
      chapter.pages.map(({ id, title }) => ({
        path: pagePaths[id],
        title,
        chapter: chapter.id,
        content: () => leadingPages[id](view),
        ...(id === 'house' && { style: markRules(marksOf(view)) }),
        ...(id === 'search' && {
          scripts: ['assets/minisearch.js', 'assets/search-index.js', 'assets/search.js'],
        }),
        ...(isTrying(id) && tryScripts(view)),
        ...(listed.has(id) && { scripts: ['assets/lists.js'] }),
        ...(id === 'agreed' && view.book.house.site !== undefined && { scripts: [printedSheetScript] }),
      })),
    ),
    ...rooms.map((room) => ({
      path: roomPath(room),
      title: room.name,
      chapter: 'rooms' as const,
      content: () => <RoomPage room={room} />,
      ...tryScripts(view),
    })),
    ...rooms.map((room) => ({
      path: drawingsPath(room),
      title: `${room.name}, drawn`,
      chapter: 'rooms' as const,
      content: () => <RoomDrawingsPage room={room} />,
    })),
    ...rooms.map((room) => ({
      path: figuresPath(room),
      title: `${room.name}, figured`,
      chapter: 'rooms' as const,
      content: () => <RoomFiguresPage room={room} />,
    })),
    ...trades.map((trade) => ({
      path: tradePath(trade),
      title: `Quantities of ${lower(trade.name)}`,
      chapter: 'trades' as const,
      content: () => <SheetPage sheet={tradeSheet(trade, view)} />,
      scripts: ['assets/lists.js'],
    })),
    ...rooms.flatMap((room) =>
      view.selectionsOf(room).flatMap((selection) => {
        const path = view.choicePath(selection);
        if (path === undefined) return [];
        return [
          {
            path,
            title: `${view.categoryName(selection.category)}, ${room.name}`,
            chapter: 'choices' as const,
            content: () => <ChoicePage selection={selection} />,
            ...tryScripts(view),
          },
        ];
      }),
    ),
    ...options.map((option) => ({
      path: optionPath(option),
      title: option.name,
      chapter: 'choices' as const,
      content: () => <OptionPage option={option} />,
    })),
    ...sources.map((source) => ({
      path: recordPath(source.path),
      title: source.path,
      chapter: 'lists' as const,
      content: () => <RecordPage source={source} />,
    })),
  ];
  pages.forEach((page) => checkPath(page.path));
  return pages;
}

/** Pages of tables that may be long. */
const listed: ReadonlySet<LeadingPageId> = new Set([
  'rooms',
  'upgrades',
  'scope',
  'finishSchedule',
  'openings',
  'schedules',
  'outside',
  'orders',
]);

/** Of pages on which choices can be tried. */
function tryScripts({ beside }: View): Pick<Page, 'scripts'> {
  return beside.trying ? { scripts: ['assets/try-start.js'] } : {};
}

const leadingPages: Readonly<Record<LeadingPageId, (view: View) => VNode>> = {
  start: () => <StartPage />,
  house: () => <HousePage />,
  areas: () => <AreasPage />,
  rooms: () => <RoomsPage />,
  choices: () => <ChoicesPage />,
  trades: () => <TradesPage />,
  options: () => <OptionsPage />,
  finishSchedule: (view) => <SheetPage sheet={finishSheet(view)} />,
  openings: (view) => <SheetPage sheet={openingSheet(view)} />,
  cautions: () => <CautionsPage />,
  schedules: (view) => <SheetPage sheet={otherSheet(view)} />,
  scope: (view) => <SheetPage sheet={scopeSheet(view)} />,
  outside: (view) => <SheetPage sheet={outsideSheet(view)} />,
  quantities: () => <QuantitiesPage />,
  orders: (view) => <SheetPage sheet={orderSheet(view, { withMoney: true })} />,
  money: () => <MoneyPage />,
  allowances: () => <AllowancesPage />,
  upgrades: () => <UpgradesPage />,
  agreed: () => <AgreedPage />,
  alternatives: () => <AlternativesPage />,
  try: () => <TryPage />,
  slips: () => <SlipsPage />,
  calendar: () => <CalendarPage />,
  records: () => <RecordsPage />,
  numbers: () => <NumbersPage />,
  search: () => <SearchPage />,
};
