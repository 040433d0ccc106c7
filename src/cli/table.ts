export interface Column<Row> {
  readonly head: string;
  readonly align: 'left' | 'right';
  text(row: Row): string;
}

/** Rows as aligned columns for a terminal, two spaces between, a rule under the heads. Numbers of one column should come
 *  with the same places so that they align on the decimal. */
export function printTable<Row>(rows: readonly Row[], columns: readonly Column<Row>[]): string {
  const cells = rows.map((row) => columns.map((column) => column.text(row)));
  const heads = columns.map((column) => column.head);
  const widths = columns.map((_, index) =>
    Math.max(...[heads, ...cells].map((line) => [...(line[index] ?? '')].length)),
  );
  const rule = widths.map((width) => '-'.repeat(width));
  return [heads, rule, ...cells].map((line) => `${printLine(line, widths, columns)}\n`).join('');
}

function printLine<Row>(line: readonly string[], widths: readonly number[], columns: readonly Column<Row>[]): string {
  const padded = line.map((text, index) => {
    const room = ' '.repeat(Math.max(0, (widths[index] ?? 0) - [...text].length));
    return columns[index]?.align === 'right' ? room + text : text + room;
  });
  return padded.join('  ').trimEnd();
}
