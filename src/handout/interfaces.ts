import type { BookOption, BookSelection } from '../book/index.js';
import type { HandoutInterface, HandoutStep } from './handout.js';
import { sieve } from './sieve.js';
import { optionsAt, sharePlace } from './work.js';
import type { Work } from './work.js';
import { milestoneOf, roomNumbers } from './words.js';

/** The trade's kinds of work in working order, each with what others do before and after it on the same places. */
export function steps(work: Work): readonly HandoutStep[] {
  const { look, categories } = work;
  return categories.flatMap((category) => {
    const own = work.selections.filter(
      (selection) => selection.category === category.slug && selection.state !== 'none',
    );
    if (own.length === 0) return [];
    const met = othersAt(work, own);
    const say = (earlier: boolean) => [
      ...new Set(
        met
          .filter(({ category: other }) => isBefore(work, other, category.slug) === earlier)
          .map((other) => `${look.categoryName(other.category)} (${look.tradeName(other.trade)})`),
      ),
    ];
    const { name, date } = milestoneOf(category.neededAt, look);
    return [
      {
        category: category.name,
        section: category.section,
        milestone: name,
        ...(date && { date }),
        rooms: roomNumbers(
          own.map(({ room }) => room),
          look,
        ),
        before: say(true),
        after: say(false),
      },
    ];
  });
}

/** What others leave for the trade: what its products need of them, and their work underneath. */
export function leftForYou(work: Work): readonly HandoutInterface[] {
  const asked = work.selections.flatMap((selection) =>
    optionsAt(selection).flatMap((id) => {
      const option = work.products.get(id)?.option;
      return (option?.needs ?? []).map((need) => ({
        ...need,
        trade: need.by,
        of: nameOf(option, selection),
        room: selection.room,
      }));
    }),
  );
  return gather(work, asked, true);
}

/** What the trade leaves for others: what their products need of it, and their work on top. */
export function leftByYou(work: Work): readonly HandoutInterface[] {
  const { look, trade } = work;
  const options = new Map(look.book.options.map((option) => [option.id, option]));
  const asked = look.book.selections
    .filter((selection) => selection.trade !== trade.slug)
    .flatMap((selection) =>
      optionsAt(selection).flatMap((id) => {
        const option = options.get(id);
        return (option?.needs ?? [])
          .filter(({ by }) => by === trade.slug)
          .map((need) => ({ ...need, trade: selection.trade, of: nameOf(option, selection), room: selection.room }));
      }),
    );
  return gather(work, asked, false);
}

function nameOf(option: BookOption | undefined, { state }: BookSelection): string {
  return state === 'open' ? `${option?.name ?? ''}, if chosen` : (option?.name ?? '');
}

interface Asked {
  readonly what: string;
  readonly before: string;
  /** The other trade. */
  readonly trade: string;
  readonly of: string;
  readonly room: string;
}

function gather(work: Work, asked: readonly Asked[], earlier: boolean): readonly HandoutInterface[] {
  const { look, trade } = work;
  const others = othersAt(work, work.selections);
  return look.book.trades
    .filter(({ slug }) => slug !== trade.slug)
    .flatMap(({ slug, name }) => {
      const items = mergeRooms(
        work,
        asked.filter((one) => one.trade === slug),
      );
      const kinds = others
        .filter((other) => other.trade === slug)
        .filter((other) =>
          work.selections.some(
            (own) => sharePlace(own, other) && isBefore(work, other.category, own.category) === earlier,
          ),
        )
        .map(({ category }) => look.categoryName(category));
      const done = [...new Set(kinds)];
      return items.length + done.length === 0 ? [] : [{ trade: name, items, work: done }];
    });
}

/** The same thing asked in several rooms is one item. */
function mergeRooms(work: Work, asked: readonly Asked[]): HandoutInterface['items'] {
  const merged = new Map<string, { first: Asked; rooms: string[]; of: Set<string> }>();
  for (const one of asked) {
    const key = `${one.before} ${one.what}`;
    const found = merged.get(key) ?? { first: one, rooms: [], of: new Set<string>() };
    found.rooms.push(one.room);
    found.of.add(one.of);
    merged.set(key, found);
  }
  return [...merged.values()].flatMap(({ first, rooms, of }) => {
    const what = sieve(first.what);
    const { name, date } = milestoneOf(first.before, work.look);
    if (what === '') return [];
    return [
      { what, of: [...of].join('; '), rooms: roomNumbers(rooms, work.look), before: name, ...(date && { date }) },
    ];
  });
}

/** Selections of other trades, with something in them, that share a place with one of these. */
export function othersAt(work: Work, own: readonly BookSelection[]): readonly BookSelection[] {
  return work.look.book.selections.filter(
    (other) =>
      other.trade !== work.trade.slug &&
      other.state !== 'none' &&
      own.some((selection) => sharePlace(selection, other)),
  );
}

/** Is the first category's work done before the second's? */
export function isBefore({ look }: Work, first: string, second: string): boolean {
  return (look.category(first)?.sequence ?? 0) < (look.category(second)?.sequence ?? 0);
}
