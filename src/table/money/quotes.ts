import type { BookOption, Quote, QuoteState } from '../../core/book/index.js';
import { col, layOut, money, type HouseTable } from '../../sheet/index.js';
import { counted, type Cents } from '../../base/units/index.js';
import { namesOf } from '../names-of.js';
import type { HouseSchedule } from '../schedule.js';

interface Line extends Quote {
  readonly name: string;
  readonly category: string;
}

const table: HouseTable<Line> = {
  id: 'quotes',
  caption: 'Prices that money not yet ordered rests on, those that are past first',
  named: 'product',
  rowId: ({ option }) => option,
  columns: [
    col.words('product', 'Product', ({ name }) => name, { width: 'long' }),
    col.words('category', 'Kind', ({ category }, names) => names.category(category), { under: 'product' }),
    col.words('by', 'Quoted by', ({ quoted }) => quoted?.by, { width: 'short' }),
    col.day('on', 'Quoted', ({ quoted }) => quoted?.on),
    col.day('until', 'Good until', ({ quoted }) => quoted?.until),
    col.words('status', 'Status', statusOf, { width: 'short', brief: true }),
    col.money('inOrders', 'In today’s orders', ({ inOrders }) => inOrders),
    col.money('ifChosen', 'If chosen', ({ ifChosen }) => ifChosen),
  ],
};

const status: Readonly<Record<QuoteState, string>> = {
  good: 'Good',
  expired: 'Run out',
  old: 'Older than the house takes for good',
  unquoted: 'Not quoted',
};

/** Who quoted each price, until when it is good, and what rests on it; at the foot, what rests on those that are past. */
export const quotes: HouseSchedule = {
  id: table.id,
  lay: (look) => {
    const options = new Map(look.book.options.map((option) => [option.id, option]));
    const lines = look.book.money.quotes.flatMap((quote) => lineOf(quote, options.get(quote.option)));
    const past = lines.filter(({ past: days }) => days > 0);
    const sums = () => [
      {
        what: 'Rests on prices that are past',
        strong: true,
        cells: { inOrders: money(sumOf(past, 'inOrders')), ifChosen: money(sumOf(past, 'ifChosen')) },
      },
    ];
    return layOut({ ...table, sums }, lines, namesOf(look));
  },
};

function lineOf(quote: Quote, option: BookOption | undefined): Line[] {
  return option ? [{ ...quote, name: option.name, category: option.category }] : [];
}

function statusOf({ state, past }: Line): string {
  return past === 0 ? status[state] : `${status[state]}, by ${counted(past, 'day')}`;
}

function sumOf(lines: readonly Line[], key: 'inOrders' | 'ifChosen'): Cents {
  return lines.reduce((sum, line) => sum + line[key], 0) as Cents;
}
