import { lastDigits, shown, unitName, type Cents, type IsoDate, type Length } from '../base/units/index.js';
import {
  nothing,
  words,
  type Cell,
  type Finish,
  type Is,
  type Kind,
  type MoneyCell,
  type Place,
  type Status,
} from './cell.js';
import type { Names } from './names.js';
import { unitOfHead } from './head.js';
import type { Column } from './table.js';

type Options = Pick<Column<never>, 'under' | 'width' | 'brief' | 'not'>;

type Maker<In> = <Row>(
  key: string,
  head: string,
  of: (row: Row, names: Names) => In | undefined,
  options?: Options,
) => Column<Row>;

/** A column of one kind: the value in, the cell out. What is absent is nothing. */
function maker<In>(kind: Kind, cell: (value: In) => Cell): Maker<In> {
  return (key, head, of, options) => ({
    key,
    head,
    kind,
    ...options,
    value: (row, names) => {
      const value = of(row, names);
      return value === undefined ? nothing : cell(value);
    },
  });
}

/** An amount in the units that the house reads. */
export function amountCell(value: number, unit: string, digits?: number): Extract<Cell, { is: 'amount' }> {
  const own = shown(value, unit, digits);
  return { is: 'amount', value: own.amount, digits: own.digits };
}

/** Amounts in the unit that the column's head names, in the house's units. */
function amountOf(digits: number): Maker<number> {
  return (key, head, of, options) => {
    const unit = unitOfHead(head) ?? '';
    return maker<number>('amount', (value) => amountCell(value, unit, digits))(key, head, of, options);
  };
}

interface Quantity {
  readonly amount: number;
  readonly unit: string;
}

type Of<K extends Cell['is']> = Omit<Extract<Cell, { is: K }>, 'is'>;
type Pointed = { readonly text: string; readonly place?: Place };

/** Columns by the kind of their cells. */
export const col = {
  /** Names and sentences. */
  words: maker<string | Pointed>('words', (value) =>
    typeof value === 'string' ? words(value) : words(value.text, value.place),
  ),
  prose: maker<string>('prose', (text) => (text === '' ? nothing : { is: 'prose', text })),
  room: maker<Of<'room'>>('room', (value) => ({ is: 'room', ...value })),
  mark: maker<string | Of<'mark'>>('mark', (value) =>
    typeof value === 'string' ? { is: 'mark', text: value } : { is: 'mark', ...value },
  ),
  length: maker<Length>('length', (nm) => ({ is: 'length', nm })),
  span: maker<Of<'span'>>('span', (value) =>
    value.from === value.to ? { is: 'length', nm: value.to } : { is: 'span', ...value },
  ),
  /** One digit after the point, in the unit that the head names. */
  amount: amountOf(1),
  exact: amountOf,
  /** In the unit that the row names. */
  quantity: maker<Quantity>('amount', ({ amount, unit }) => {
    const cell = amountCell(amount, unit);
    return { ...cell, digits: Math.max(cell.digits, lastDigits()) };
  }),
  /** Resistance to heat, in the house's units. */
  resistance: maker<number>('amount', (value) => amountCell(value, 'sq ft h °F / Btu')),
  /** With the digits, and the figure, that let the row hold as printed. */
  ticked: maker<Omit<Of<'amount'>, 'unit'>>('amount', (value) => ({ is: 'amount', ...value })),
  count: maker<number>('count', (value) => ({ is: 'count', value })),
  pitch: maker<number>('pitch', (slope) => ({ is: 'pitch', slope })),
  percent: maker<number>('percent', (value) => ({ is: 'percent', value })),
  unit: maker<string>('unit', (unit) => ({ is: 'unit', unit: unitName(unit) })),
  pack: maker<Of<'pack'>>('pack', ({ holds, unit, ...pack }) => {
    const own = shown(holds, unit, 2);
    return { is: 'pack', ...pack, holds: own.amount, unit: own.unit };
  }),
  pieces: maker<Of<'pieces'>['of']>('pieces', (of) => (of.length === 0 ? nothing : { is: 'pieces', of })),
  days: maker<number>('days', (working) => ({ is: 'days', working })),
  day: maker<IsoDate>('day', (day) => ({ is: 'day', day })),
  rooms: maker<readonly string[]>('rooms', (numbers) => (numbers.length === 0 ? nothing : { is: 'rooms', numbers })),
  finish: maker<Finish>('finish', (value) => ({ is: 'finish', ...value })),
  status: maker<Status>('status', (status) => ({ is: 'status', status })),
  swing: maker<Of<'swing'>>('swing', (value) => ({ is: 'swing', ...value })),
  list: maker<readonly Cell[]>('list', (of) => (of.length === 0 ? nothing : { is: 'list', of, parted: ', ' })),
  lines: maker<Of<'lines'>['of']>('lines', (of) => (of.length === 0 ? nothing : { is: 'lines', of })),
  /** A cell as it is, of a kind that the row decides. */
  cell: <Row>(
    kind: Kind,
    key: string,
    head: string,
    value: (row: Row, names: Names) => Cell,
    options?: Options,
  ): Column<Row> => ({ key, head, kind, ...options, value }),
  /** For the house alone: a trade's table has no such column. `change`: with its sign; `zero`: nothing as an amount. */
  money: <Row>(
    key: string,
    head: string,
    of: (row: Row) => Cents | undefined,
    options?: Options & Pick<MoneyCell, 'zero'> & { readonly change?: boolean | ((row: Row) => boolean) },
  ): Column<Row, MoneyCell | Is<'nothing'>> => {
    const { change = false, zero, ...rest } = options ?? {};
    return {
      key,
      head,
      kind: 'money',
      ...rest,
      value: (row) => {
        const cents = of(row);
        if (cents === undefined) return nothing;
        return money(cents, typeof change === 'boolean' ? change : change(row), zero);
      },
    };
  },
};

export const money = (cents: Cents, change = false, zero?: 'told'): MoneyCell => ({
  is: 'money',
  cents,
  ...(change && { change }),
  ...(zero && { zero }),
});
