import {
  changeList,
  moneyParts,
  movedByProduct,
  roomPoundsWords,
  roomWords,
  type AllowanceChange,
  type Comparison,
  type FieldChange,
  type ListedChange,
  type MovedProduct,
  type RecordChange,
  type RoomChange,
} from '../../core/compare/index.js';
import { col, layOut, money, type HouseBlock, type HouseTable } from '../../sheet/index.js';
import { capital, type Cents } from '../../base/units/index.js';
import { idsAsNames } from '../names-of.js';

const lay = <Row>(table: HouseTable<Row>, rows: readonly Row[]): HouseBlock => layOut(table, rows, idsAsNames);

interface Listed extends ListedChange {
  readonly at: number;
}

const changes: HouseTable<Listed> = {
  id: 'changes-table',
  caption: 'Changes to agree on, with what follows from each',
  named: 'what',
  rowId: ({ at }) => String(at),
  columns: [
    col.room(
      'room',
      'Room',
      ({ room, roomTitle = '' }) => {
        if (room === undefined) return { number: '', name: 'The house' };
        const [number = '', ...name] = roomTitle.split(' ');
        return { number, name: name.join(' '), place: { to: 'room', id: room } };
      },
      { width: 'short', brief: true },
    ),
    col.words('what', 'What', ({ what }) => what, { width: 'long' }),
    col.words('from', 'Was', ({ from }) => from, { width: 'words', brief: true }),
    col.words('to', 'Now', ({ to }) => to, { width: 'words', brief: 'now' }),
    col.money('money', 'Money', ({ money: amount }) => amount, { change: true, brief: true }),
    col.words('trade', 'Trade to tell', ({ trade }) => trade, { width: 'short' }),
    col.words('days', 'Days', ({ days }) => days, { under: 'trade' }),
    // More columns would be wider than a page of the site, where the note says the same.
    col.words('page', 'Page to initial again', ({ page }) => page, { width: 'short', not: ['html'] }),
  ],
};

/** What there is to agree on in one flat list, with the difference of the totals as its sum. */
export function changesTable(comparison: Comparison): HouseBlock {
  const sum = { what: 'Difference', strong: true, cells: { money: money(comparison.money.difference, true) } };
  const note = 'To initial again: the page of each room named; for what is of no room, the sign-off page.';
  return lay(
    { ...changes, sums: () => [sum], notes: () => [note] },
    changeList(comparison).map((change, at) => ({ ...change, at: at + 1 })),
  );
}

interface Part {
  readonly what: string;
  readonly amount: Cents;
  readonly is: 'total' | 'change';
}

/** From the older total to the newer: where the difference comes from. */
export function differenceTable(comparison: Comparison): HouseBlock {
  const { from, to, money: moved } = comparison;
  const table: HouseTable<Part> = {
    id: 'money-table',
    caption: 'Parts of the difference',
    named: 'part',
    rowId: ({ what }) => what,
    columns: [
      col.words('part', 'Part', ({ what }) => what, { width: 'long' }),
      col.money('amount', 'Amount', ({ amount }) => amount, { change: ({ is }) => is === 'change', brief: true }),
    ],
    sums: () => [
      { what: 'Difference', cells: { amount: money(moved.difference, true) } },
      { what: `Total, ${to.label}`, strong: true, cells: { amount: money(to.today) } },
    ],
  };
  const parts = moneyParts(comparison).map((part): Part => ({ ...part, is: 'change' }));
  return lay(table, [{ what: `Total, ${from.label}`, amount: from.today, is: 'total' }, ...parts]);
}

const rooms: HouseTable<RoomChange> = {
  id: 'rooms-table',
  caption: 'Rooms that changed',
  named: 'room',
  rowId: ({ room }) => room,
  columns: [
    col.room('room', 'Room', ({ number, name, room: id }) => ({ number, name, place: { to: 'room', id } }), {
      width: 'words',
    }),
    col.words('what', 'What changed', (room) => capital(roomWords(room)), { width: 'long' }),
    col.money('byChoice', 'Contract, by choices', ({ byChoice }) => byChoice, { change: true, brief: true }),
    col.money('cost', 'Cost in place', ({ difference }) => difference, { change: true }),
    col.words('weight', 'Weight', roomPoundsWords, { width: 'short' }),
  ],
};

export const roomTable = (changed: readonly RoomChange[]): HouseBlock => lay(rooms, changed);

const products: HouseTable<MovedProduct> = {
  id: 'moved-table',
  caption: 'Products that cost more or less where nothing was chosen anew',
  named: 'product',
  rowId: ({ product, categoryName }) => `${categoryName}-${product}`,
  columns: [
    col.words('product', 'Product', ({ product }) => product, { width: 'words' }),
    col.words('category', 'What', ({ categoryName }) => categoryName, { width: 'short' }),
    col.count('places', 'Places', ({ places }) => places),
    col.money('cost', 'Cost in place', ({ cost }) => cost, { change: true }),
    col.money('contract', 'Contract', ({ contract }) => contract, { change: true, brief: true }),
  ],
};

export const productTable = (changed: readonly RoomChange[]): HouseBlock => lay(products, movedByProduct(changed));

type OptionField = FieldChange & { readonly option: string; readonly at: number };

const optionFields: HouseTable<OptionField> = {
  id: 'price-book-table',
  caption: 'Options that changed',
  named: 'option',
  rowId: ({ option, field, at }) => `${option}-${field}-${at}`,
  columns: [
    col.words('option', 'Option', ({ option }) => option, { width: 'words' }),
    col.words('what', 'What', ({ field }) => capital(field), { width: 'short', brief: true }),
    col.words('was', 'Was', ({ from }) => from, { width: 'words', brief: true }),
    col.words('now', 'Now', ({ to }) => to, { width: 'words', brief: 'now' }),
  ],
};

export function priceBookTable({ priceBook }: Comparison): HouseBlock {
  const rows = priceBook.flatMap(({ name: option, kind, renamedFrom, fields }) => [
    ...(kind === 'changed' ? [] : [{ option, field: kind, from: renamedFrom ?? '', to: '' }]),
    ...fields.map((field) => ({ option, ...field })),
  ]);
  return lay(
    optionFields,
    rows.map((row, at) => ({ ...row, at })),
  );
}

const drawn: HouseTable<AllowanceChange> = {
  id: 'allowances-table',
  caption: 'What is drawn, and what it does to the contract',
  named: 'allowance',
  rowId: ({ allowance }) => allowance,
  columns: [
    col.words('allowance', 'Allowance', ({ name }) => name, { width: 'words' }),
    col.money('was', 'Was drawn', ({ drawn: { from } }) => from),
    col.money('now', 'Now drawn', ({ drawn: { to } }) => to),
    col.money('byChoice', 'Contract, by choices', ({ byChoice }) => byChoice.total, { change: true }),
    col.money('contract', 'Contract', ({ contract }) => contract, { change: true, brief: true }),
  ],
};

export const drawnTable = ({ allowances }: Comparison): HouseBlock => lay(drawn, allowances);

/** Facts that read otherwise now. */
export function fieldTable(id: string, caption: string, fields: readonly FieldChange[]): HouseBlock {
  const table: HouseTable<FieldChange> = {
    id,
    caption,
    named: 'what',
    rowId: ({ field }) => field,
    columns: [
      col.words('what', 'What', ({ field }) => capital(field), { width: 'words' }),
      col.words('was', 'Was', ({ from }) => from, { width: 'words', brief: true }),
      col.words('now', 'Now', ({ to }) => to, { width: 'words', brief: 'now' }),
    ],
  };
  return lay(table, fields);
}

const kindWords = { added: 'New', removed: 'Taken out', edited: 'Edited', renamed: 'Renamed' } as const;

const records: HouseTable<RecordChange> = {
  id: 'records-table',
  caption: 'Records that changed',
  named: 'record',
  rowId: ({ path }) => path,
  columns: [
    col.words('record', 'Record', ({ path }) => ({ text: path, place: { to: 'record', id: path } }), { width: 'long' }),
    col.words('what', 'What', ({ kind }) => kindWords[kind], { width: 'short', brief: true }),
    col.words('before', 'Was', ({ renamedFrom }) => renamedFrom, { width: 'long' }),
  ],
};

export const recordTable = (comparison: Comparison): HouseBlock => lay(records, comparison.records);
