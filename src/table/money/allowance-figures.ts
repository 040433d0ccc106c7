import type { LookUp } from '../../core/book/index.js';
import type { LedgerEntry, ReasonedFigure } from '../../core/price/index.js';
import { col, layOut, type Column, type HouseBlock, type HouseCell, type HouseTable } from '../../sheet/index.js';
import { namesOf } from '../names-of.js';
import { houseSchedule } from '../schedule.js';

interface Figure extends ReasonedFigure {
  readonly allowance: string;
  /** The change of the contract: what the others lead to. */
  readonly isLast: boolean;
}

const columns: readonly Column<Figure, HouseCell>[] = [
  col.words('figure', 'Figure', ({ what }) => what, { width: 'long' }),
  col.words('why', 'Why', ({ why }) => why, { under: 'figure' }),
  col.money('amount', 'Amount', ({ amount }) => amount, { change: ({ isLast }) => isLast }),
];

const table = { columns, named: 'figure', strong: ({ isLast }: Figure) => isLast } as const;

/** The figures of every allowance in the order to tick them. */
export const allowanceFigures = houseSchedule<Figure>(
  {
    ...table,
    id: 'allowance-figures',
    caption: 'Each allowance, figure by figure',
    rowId: ({ allowance, what }) => `${allowance}-${what}`,
    group: ({ allowance }) => ({ title: allowance }),
  },
  ({ book }) => book.money.allowances.flatMap(figuresOf),
);

export function figureTable(entry: LedgerEntry, look: LookUp): HouseBlock {
  const { id, name } = entry;
  const one: HouseTable<Figure> = {
    ...table,
    id: `allowance-${id}-figures`,
    caption: `${name}, figure by figure`,
    rowId: ({ what }) => what,
  };
  return layOut(one, figuresOf(entry), namesOf(look));
}

const figuresOf = ({ name: allowance, figures }: LedgerEntry): readonly Figure[] =>
  figures.map((figure, index) => ({ ...figure, allowance, isLast: index === figures.length - 1 }));
