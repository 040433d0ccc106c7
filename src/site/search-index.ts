import { sourceText, stateWords } from '../core/caution/index.js';
import { withoutMarks } from '../core/records/index.js';
import { findingWords } from '../core/scope/index.js';
import { statusWords } from '../sheet/index.js';
import { choiceTitle } from '../table/index.js';
import { shownState } from './parts/words.js';
import {
  allowancePath,
  anchorOf,
  cautionPath,
  optionPath,
  pagePaths,
  recordPath,
  roomPath,
  selectionPath,
  tradePath,
} from './paths.js';
import { chaptersOf, type LeadingPageId } from './chapters.js';
import type { View } from './view.js';

/** Something that can be found. `path` is in the book's folder. */
interface SearchEntry {
  readonly id: number;
  readonly title: string;
  readonly kind: string;
  readonly text: string;
  readonly path: string;
}

/** What people type who look for a page. */
const alsoCalled: Partial<Record<LeadingPageId, string>> = {
  start: 'home due next total cover',
  house: 'floor plan key plan levels',
  areas: 'square feet perimeter gross net faces thickness',
  choices: 'open decide due late pending selections',
  try: 'what if compare price send slip',
  alternatives: 'sets packages options compare',
  money: 'cost price budget contract sum total markup tax forecast',
  allowances: 'cost price budget drawn balance over invoices quotations old prices',
  upgrades: 'extras additions deductions difference standard',
  agreed: 'what changed signed approved change order revisions history',
  calendar: 'schedule dates milestones deadlines lead time delivery when',
  trades: 'subcontractors handouts mason painter who works',
  scope: 'gaps missing nobody who does overlap',
  cautions: 'warnings check danger code',
  finishSchedule: 'finishes table by room',
  openings: 'doors windows hardware schedule',
  schedules: 'stone timber railing paint insulation schedule',
  outside: 'energy thermal insulation roof walls',
  quantities: 'takeoff how much area amounts',
  orders: 'buy purchase packs order',
  records: 'source files text markdown',
  numbers: 'how figured conventions rules waste rounding',
};

/** What the search finds: pages, rooms, options, choices and records. No private notes: the Book holds none. */
export function searchEntries(view: View): readonly SearchEntry[] {
  const { rooms, options, selections, sources, trades, categories, cautions, orders, scope, changeOrders } = view.book;
  const { allowances } = view.book.money;
  const named = new Map([...rooms, ...options, ...trades, ...categories].map(({ source, name }) => [source, name]));
  const entries: Omit<SearchEntry, 'id'>[] = [
    ...chaptersOf(view).flatMap(({ title: chapter, pages }) =>
      pages.map(({ id, title }) => ({
        title,
        kind: 'Page',
        text: `${chapter} ${alsoCalled[id] ?? ''}`,
        path: pagePaths[id],
      })),
    ),
    ...rooms.map((room) => ({
      title: `${room.number} ${room.name}`,
      kind: 'Room',
      text: `${room.use} ${view.levelName(room.level)} ${withoutMarks(room.body)}`,
      path: roomPath(room),
    })),
    ...options.map((option) => ({
      title: option.name,
      kind: view.category(option.category)?.name ?? 'Option',
      text: [
        ...[option.maker, option.model, option.summary].filter((each) => each !== undefined),
        ...option.attributes.map(({ attribute }) => attribute.text),
      ].join(' '),
      path: optionPath(option),
    })),
    ...selections.map((selection) => {
      const room = view.room(selection.room);
      const option = view.option(selection.category, selection.counted);
      return {
        title: `${room?.name ?? selection.room}: ${choiceTitle(selection, view)}`,
        kind: 'Choice',
        text: [
          statusWords[shownState(selection)],
          option?.name,
          'price cost',
          selection.note,
          ...selection.alternatives.map((each) => view.option(selection.category, each.option)?.name),
        ]
          .filter((each) => each !== undefined)
          .join(' '),
        path: selectionPath(selection),
      };
    }),
    ...cautions.map((caution) => ({
      title: `${view.roomName(caution.room)}: ${caution.title}, ${caution.placeText}`,
      kind: 'Caution',
      text: `${stateWords(caution)} ${caution.seen} ${caution.says} ${sourceText(caution.source)}`,
      path: cautionPath(caution),
    })),
    ...allowances.map(({ id, name, lines }) => ({
      title: name,
      kind: 'Allowance',
      text: `cost price money ${lines.map(({ selection }) => view.categoryName(view.selection(selection)?.category ?? '')).join(' ')}`,
      path: allowancePath({ id }),
    })),
    ...changeOrders.map(({ number, title }) => ({
      title: `Change order ${number}: ${title}`,
      kind: 'Change order',
      text: 'what changed agreed approved',
      path: pagePaths.agreed,
    })),
    ...scope.findings.map((finding) => ({
      title: `${view.roomName(finding.room)}: ${findingWords[finding.kind].toLowerCase()}`,
      kind: 'Gap',
      text: `${finding.what} ${finding.fix}`,
      path: `${pagePaths.scope}#${anchorOf('finding', finding.id)}`,
    })),
    ...orders.map((order) => ({
      title: `${view.optionById(order.option)?.name ?? order.option}${order.part === '' ? '' : `, ${order.part}`}`,
      kind: 'Order',
      text: `buy purchase ${view.tradeName(order.trade)}`,
      path: pagePaths.orders,
    })),
    ...trades.map((trade) => ({
      title: trade.name,
      kind: 'Trade',
      text: `takeoff how much ${trade.sections.join(' ')}`,
      path: tradePath(trade),
    })),
    ...sources.map(({ path }) => ({
      title: named.get(path) ?? path,
      kind: 'Record',
      text: path,
      path: recordPath(path),
    })),
  ];
  return entries.map((entry, id) => ({ id, ...entry }));
}

/** The entries as a classic script that a page on a disk may load. */
export function searchScript(entries: readonly SearchEntry[]): string {
  return `window.bookmatchSearch = ${scriptText(entries)};\n`;
}

/** A value as a script has it. `<` is written so that no text ends the script. */
export function scriptText(value: unknown): string {
  return JSON.stringify(value)
    .replaceAll('<', '\\u003c')
    .replaceAll('\u2028', '\\u2028')
    .replaceAll('\u2029', '\\u2029');
}
