import { sourceText, stateWords } from '../core/caution/index.js';
import { withoutMarks } from '../core/records/index.js';
import { choiceTitle } from '../table/index.js';
import { cautionPath, optionPath, pagePaths, recordPath, roomPath, selectionPath } from './paths.js';
import { chaptersOf } from './chapters.js';
import type { View } from './view.js';

/** Something that can be found. `path` is in the book's folder. */
interface SearchEntry {
  readonly id: number;
  readonly title: string;
  readonly kind: string;
  readonly text: string;
  readonly path: string;
}

/** What the search finds: sheets, rooms, options, choices and records. No private notes: the Book holds none. */
export function searchEntries(view: View): readonly SearchEntry[] {
  const { rooms, options, selections, sources, trades, cautions } = view.book;
  const entries: Omit<SearchEntry, 'id'>[] = [
    ...chaptersOf(view).map(({ title, sheet, path }) => ({ title, kind: 'Sheet', text: sheet, path })),
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
        text: `${selection.state} ${option?.name ?? ''} ${selection.note ?? ''}`,
        path: selectionPath(selection),
      };
    }),
    ...cautions.map((caution) => ({
      title: `${view.roomName(caution.room)}: ${caution.title}, ${caution.placeText}`,
      kind: 'Caution',
      text: `${stateWords(caution)} ${caution.seen} ${caution.says} ${sourceText(caution.source)}`,
      path: cautionPath(caution),
    })),
    ...trades.map((trade) => ({
      title: trade.name,
      kind: 'Trade',
      text: trade.sections.join(' '),
      path: `${pagePaths.quantities}`,
    })),
    ...sources.map((source) => ({ title: source.path, kind: 'Record', text: '', path: recordPath(source.path) })),
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
