import type { Caution } from '../core/caution/index.js';
import { anchorOf } from '../write/index.js';
import type { OptionPhoto } from '../core/model/index.js';
import type { BookOption, BookRoom, BookSelection, BookTrade, KeyLevel } from '../core/book/index.js';

/** Where things are in the book. One function for each kind of thing, so that a link cannot be mistyped. */
export const pagePaths = {
  start: 'index.html',
  house: 'house.html',
  rooms: 'rooms.html',
  areas: 'areas.html',
  choices: 'choices.html',
  trades: 'trades.html',
  options: 'options.html',
  finishSchedule: 'finish-schedule.html',
  openings: 'openings.html',
  cautions: 'cautions.html',
  schedules: 'schedules.html',
  scope: 'scope.html',
  outside: 'outside.html',
  quantities: 'quantities.html',
  orders: 'orders.html',
  money: 'money.html',
  allowances: 'allowances.html',
  upgrades: 'upgrades.html',
  agreed: 'agreed.html',
  alternatives: 'alternatives.html',
  try: 'try.html',
  slips: 'slips.html',
  calendar: 'calendar.html',
  records: 'records.html',
  numbers: 'about-the-numbers.html',
  search: 'search.html',
} as const;

export function roomPath(room: Pick<BookRoom, 'slug'> | string): string {
  return `rooms/${typeof room === 'string' ? room : room.slug}.html`;
}

/** Of a room, the page with all its drawings. */
export function drawingsPath(room: Pick<BookRoom, 'slug'> | string): string {
  return roomPath(room).replace('.html', '/drawings.html');
}

/** Of a room, the page with every step of its figures. */
export function figuresPath(room: Pick<BookRoom, 'slug'> | string): string {
  return roomPath(room).replace('.html', '/figures.html');
}

export function optionPath(option: Pick<BookOption, 'category' | 'slug'>): string {
  return `options/${option.category}/${option.slug}.html`;
}

/** What a trade measures and installs. */
export function tradePath(trade: Pick<BookTrade, 'slug'> | string): string {
  return `trades/${typeof trade === 'string' ? trade : trade.slug}.html`;
}

/** An option's photograph, beside the pages. */
export function photoFile({ category }: Pick<BookOption, 'category'>, { file }: OptionPhoto): string {
  return `photos/${category}/${file}`;
}

/** Anchor of a selection on its room's page. Ids hold slugs, marks and slashes; `_` is in none of them. */
export function selectionAnchor(selection: Pick<BookSelection, 'id' | 'room'>): string {
  return anchorOf('choice', selection.id.slice(selection.room.length + 1));
}

/** How a selection's quantity and cost come about, on the page of its room's figures. */
export function figuredAnchor(selection: Pick<BookSelection, 'id' | 'room'>): string {
  return anchorOf('figured', selection.id.slice(selection.room.length + 1));
}

export function figuredPath(selection: Pick<BookSelection, 'id' | 'room'>): string {
  return `${figuresPath(selection.room)}#${figuredAnchor(selection)}`;
}

export function allowancePath({ id }: { readonly id: string }): string {
  return `${pagePaths.allowances}#${anchorOf('allowance', id)}`;
}

export function selectionPath(selection: Pick<BookSelection, 'id' | 'room'>): string {
  return `${roomPath(selection.room)}#${selectionAnchor(selection)}`;
}

/** Anchor of a level's key plan; rooms apart have others than those of their level that hang together. */
export function levelAnchor({ level, rooms, isApart }: Pick<KeyLevel, 'level' | 'rooms' | 'isApart'>): string {
  return isApart ? `level-${level}-${rooms[0]?.slug ?? ''}` : `level-${level}`;
}

/** Anchor of a caution, on its room's page and in the register. */
export function cautionAnchor({ id }: Pick<Caution, 'id'>): string {
  return anchorOf('caution', id);
}

export function cautionPath(caution: Pick<Caution, 'id' | 'room'>): string {
  return `${roomPath(caution.room)}#${cautionAnchor(caution)}`;
}

/** A page for each selection, by id. Marks differ in more than a path may hold, such as D1, d1 and D.1: a number tells apart
 *  those that would meet. */
export function choicePaths(selections: readonly Pick<BookSelection, 'id'>[]): ReadonlyMap<string, string> {
  const taken = new Set<string>();
  return new Map(
    selections.map(({ id }) => {
      const plain = `choices/${id.toLowerCase().replace(/[^a-z0-9/]+/g, '-')}`;
      let path = plain;
      for (let next = 2; taken.has(path); next += 1) path = `${plain}-${next}`;
      taken.add(path);
      return [id, `${path}.html`];
    }),
  );
}

/** `content/rooms/study.md` is shown at `records/rooms/study.html`, `../our-book/trades/tile.md` at `records/shared/1/our-book/trades/tile.html`. */
export function recordPath(source: string, line?: number): string {
  const path = `records/${source
    .replace(/^(?:\.\.\/)+/, (up) => `shared/${up.length / 3}/`)
    .replace(/^content\//, '')
    .replace(/\.md$/, '')}.html`;
  return line === undefined ? path : `${path}#L${line}`;
}

export { anchorOf };
