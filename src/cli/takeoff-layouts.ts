import { cutRows, layoutRows } from '../export/index.js';
import type { CutRow, LayoutRow } from '../export/index.js';
import type { Book } from '../book/index.js';
import { printTable } from './table.js';
import type { Column } from './table.js';

/** What every row of a layout is told by. */
type Placed = Pick<LayoutRow, 'trade' | 'room'>;

/** Prints the layouts and cut lists of those rows that are asked for; nothing when nothing is laid out there. */
export function layoutPrinter(book: Book, withRoom: boolean): (isHere: (row: Placed) => boolean) => string {
  const [layouts, cuts] = [layoutRows(book), cutRows(book).flatMap(wrapped)];
  const columns = <Row extends Placed>(own: readonly Column<Row>[]): readonly Column<Row>[] =>
    withRoom ? [roomColumn, ...own] : own;
  return (isHere) => {
    const laid = layouts.filter(isHere);
    if (laid.length === 0) return '';
    return [
      'Laid out\n',
      printTable(laid, columns(layoutColumns)),
      'Cut list\n',
      printTable(cuts.filter(isHere), columns(cutColumns)),
    ].join('\n');
  };
}

/** A cut list's pieces in lines of a length that a terminal bears; what follows the first has no head of its own. */
function wrapped(row: CutRow): CutText[] {
  const lines = row.pieces.reduce<string[]>((lines, piece) => {
    const longer = `${lines.at(-1) ?? ''}, ${piece}`;
    return lines.length === 0 || longer.length > longestPieces ? [...lines, piece] : [...lines.slice(0, -1), longer];
  }, []);
  return lines.map((pieces, index) => ({ ...row, isFirst: index === 0, line: pieces }));
}

const longestPieces = 88;

interface CutText extends CutRow {
  readonly isFirst: boolean;
  readonly line: string;
}

const number = (amount: number) => amount.toFixed(1);

const roomColumn: Column<Placed> = { head: 'Room', align: 'left', text: (row) => row.room };

const layoutColumns: readonly Column<LayoutRow>[] = [
  { head: 'Place', align: 'left', text: (row) => row.place },
  { head: 'Finish', align: 'left', text: (row) => row.option },
  { head: 'Run', align: 'left', text: (row) => row.run },
  { head: 'Courses', align: 'right', text: (row) => String(row.courses) },
  { head: 'First', align: 'right', text: (row) => row.firstCourse },
  { head: 'Last', align: 'right', text: (row) => row.lastCourse },
  { head: 'True waste %', align: 'right', text: (row) => number(row.wastePercent) },
  { head: 'Bought ft', align: 'right', text: (row) => number(row.boughtFeet) },
  { head: 'Least ft', align: 'right', text: (row) => number(row.leastFeet) },
  { head: 'Over least %', align: 'right', text: (row) => number(row.overPercent) },
];

const cutColumns: readonly Column<CutText>[] = [
  { head: 'Place', align: 'left', text: (row) => (row.isFirst ? row.place : '') },
  { head: 'Finish', align: 'left', text: (row) => (row.isFirst ? row.option : '') },
  { head: 'Buy', align: 'right', text: (row) => (row.isFirst ? String(row.count) : '') },
  { head: 'Of', align: 'right', text: (row) => (row.isFirst ? row.from : '') },
  { head: 'Cut into', align: 'left', text: (row) => row.line },
];
