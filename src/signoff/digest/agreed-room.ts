import type { Book, BookOption, BookRoom, BookSelection } from '../../core/book/index.js';
import { withParts, type Cents } from '../../base/units/index.js';
import { leaveOut, withoutPaths } from './leave-out.js';

/** What initials on a room's page agree to: the room as measured, each selection with its quantities and its money, and the
 *  options behind them. Money is what it changes in the contract, as the page prints it: a share of an order that the whole house
 *  makes moves by cents with every other room. Left out: the calendar, order and delivery facts, who chose when, where the record stands, and
 *  what was considered once a choice is made. None of these changes what will be built or paid. */
export function agreedRoom(book: Book, room: BookRoom): object {
  const selections = book.selections.filter((selection) => selection.room === room.slug);
  const used = new Set(selections.flatMap(optionsBehind));
  return {
    format: 'bookmatch/agreed-room/1',
    house: { name: book.house.name, number: book.house.number, currency: book.house.currency },
    room: {
      slug: room.slug,
      number: room.number,
      name: room.name,
      level: room.level,
      use: room.use,
      body: room.body,
      measure: withoutPaths(room.measure),
      change: room.change,
    },
    selections: selections.map(agreedSelection),
    options: book.options.filter(({ id }) => used.has(id)).map(agreedOption),
  };
}

/** The same without what a room's choices come to: two that are equal here differ at most by what the whole house moves, such as a share of packs
 *  that another room opens. */
export function agreedRoomWithoutSums(book: Book, room: BookRoom): object {
  const selections = book.selections.map((selection) =>
    selection.room === room.slug ? withParts(selection, { change: 0 as Cents }) : selection,
  );
  return agreedRoom(withParts(book, { selections }), { ...room, change: 0 as Cents });
}

function agreedSelection(selection: BookSelection): object {
  return {
    ...workOf(selection),
    standard: selection.standard,
    allowance: selection.allowance,
    considering: selection.state === 'open' ? selection.considering : [],
    change: selection.change,
  };
}

/** The part of a selection that is work and not money. */
export function workOf(selection: BookSelection): object {
  return {
    id: selection.id,
    category: selection.category,
    trade: selection.trade,
    places: selection.places,
    placeText: selection.placeText,
    chosen: selection.chosen,
    none: selection.state === 'none',
    counted: selection.counted,
    supply: selection.supply,
    note: selection.note,
    // How boards are cut is no agreement: a better layout must not ask for new signatures.
    takeoff: selection.takeoff.map((takeoff) => leaveOut(takeoff, 'layout')),
    pounds: selection.pounds,
  };
}

/** Ids of the options that a selection stands on. */
function optionsBehind(selection: BookSelection): readonly string[] {
  const { counted, chosen, standard, considering, state, category } = selection;
  const slugs = [counted, chosen, standard, ...(state === 'open' ? considering : [])];
  return slugs.flatMap((slug) => (slug === undefined ? [] : [`${category}/${slug}`]));
}

function agreedOption(option: BookOption): object {
  return leaveOut(option, 'source', 'shared', 'quoted', 'leadDays', 'photo');
}
