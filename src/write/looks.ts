import { say, type HouseCell, type Kind, type LaidColumn, type LaidRow, type TableBlock } from '../sheet/index.js';

/** Kinds that stand right, on their points. */
const figures: readonly Kind[] = ['length', 'span', 'amount', 'count', 'percent', 'money'];

export const isFigure = ({ kind }: Pick<LaidColumn, 'kind'>): boolean => figures.includes(kind);

/** The columns that one output shows as such, and what stands beneath each. */
export function shownColumns(
  table: TableBlock,
  output: 'html' | 'pdf' | 'text',
): { readonly columns: readonly LaidColumn[]; readonly beneath: (key: string) => readonly LaidColumn[] } {
  const kept = table.columns.filter(({ not }) => !not?.includes(output)).filter((column) => isUsed(column, table));
  // What would stand beneath a column that is left out stands by itself.
  const isThere = (under: string | undefined) => under !== undefined && kept.some(({ key }) => key === under);
  return {
    columns: kept.filter(({ under }) => !isThere(under)),
    beneath: (key) => kept.filter(({ under }) => under === key),
  };
}

/** A column in which no row says anything is left out where people read. */
function isUsed({ key }: LaidColumn, { groups, sums }: TableBlock): boolean {
  const says = ({ cells }: Pick<LaidRow<HouseCell>, 'cells'>) => (cells[key] ?? { is: 'nothing' }).is !== 'nothing';
  return groups.some(({ rows }) => rows.some(says)) || sums.some(says);
}

/** Digits after the point that a column keeps room for: the most of any cell, sums too. */
export function pointOf(table: TableBlock, key: string): number {
  const all = [...table.groups.flatMap(({ rows }) => rows), ...table.sums];
  const digits = all.flatMap(({ cells }) =>
    say(cells[key] ?? { is: 'nothing' })
      .flat()
      .map(({ figure = 0 }) => figure),
  );
  return Math.max(0, ...digits);
}
