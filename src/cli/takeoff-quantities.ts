import { assemblySteps, quantityRows, roomWords, stepWords, supplyOrderRows, takeoffSteps } from '../export/index.js';
import type { QuantityRow } from '../export/index.js';
import { lookUp } from '../book/index.js';
import type { Book, BookSelection, LookUp } from '../book/index.js';
import { countWords, supplyWords } from '../takeoff/index.js';
import type { SupplyOrder } from '../takeoff/index.js';
import { printTable } from './table.js';
import { layoutPrinter } from './takeoff-layouts.js';
import type { Column } from './table.js';

/** Quantities, then supplies and effective R, room by room or trade by trade. */
export function printQuantities(
  book: Book,
  { by, arithmetic }: { readonly by: 'room' | 'trade' | 'option'; readonly arithmetic?: boolean },
): string {
  const look = lookUp(book);
  const byTrade = by === 'trade';
  const groups = byTrade ? tradeGroups(book, look) : roomGroups(book);
  const printLayouts = layoutPrinter(book, byTrade);
  return groups
    .filter(({ rows }) => rows.length > 0)
    .map(({ head, rows, supplies, selections, isHere }) =>
      [
        `${head}\n`,
        printTable(rows, byTrade ? [roomColumn, ...quantityColumns] : quantityColumns),
        printLayouts(isHere),
        supplies,
        printResistance(selections, look),
        ...(arithmetic ? [printArithmetic(selections, look)] : []),
      ]
        .filter((part) => part !== '')
        .join('\n'),
    )
    .join('\n');
}

interface Group {
  readonly head: string;
  readonly rows: readonly QuantityRow[];
  readonly supplies: string;
  readonly selections: readonly BookSelection[];
  readonly isHere: (row: Pick<QuantityRow, 'room' | 'trade'>) => boolean;
}

function roomGroups(book: Book): Group[] {
  const rows = quantityRows(book);
  return book.rooms.map((room) => ({
    head: `${room.number} ${room.name}`,
    rows: rows.filter((row) => row.room === room.number),
    supplies: inSection('Supplies', room.supplies ?? [], roomSupplyColumns),
    selections: book.selections.filter((selection) => selection.room === room.slug),
    isHere: (row) => row.room === room.number,
  }));
}

function tradeGroups(book: Book, look: LookUp): Group[] {
  const rows = quantityRows(book);
  const supplies = supplyOrderRows(book);
  const trades = [...new Set(rows.map(({ trade }) => trade))];
  return trades.map((trade) => ({
    head: look.tradeName(trade),
    rows: rows.filter((row) => row.trade === trade),
    supplies: inSection(
      'Supplies for the house',
      supplies.filter((row) => row.trade === trade),
      supplyOrderColumns,
    ),
    selections: book.selections.filter((selection) => selection.trade === trade),
    isHere: (row) => row.trade === trade,
  }));
}

/** Walls and ceilings with their framing. */
function printResistance(selections: readonly BookSelection[], look: LookUp): string {
  const lines = selections.flatMap((selection) =>
    selection.takeoff.flatMap(({ assemblies = [] }) => assemblies.map((assembly) => ({ selection, assembly }))),
  );
  return inSection('R with the framing', lines, [
    { head: 'Room', align: 'left', text: ({ selection }) => numberOf(selection, look) },
    { head: 'Place', align: 'left', text: ({ selection }) => selection.placeText },
    { head: 'Assembly', align: 'left', text: ({ assembly }) => assembly.name },
    { head: 'Insulation', align: 'left', text: ({ assembly }) => assembly.cavity.fill.what },
    { head: 'Labelled R', align: 'right', text: ({ assembly }) => number(assembly.labelled) },
    { head: 'Framing %', align: 'right', text: ({ assembly }) => number(assembly.framing.share * 100) },
    { head: 'U', align: 'right', text: ({ assembly }) => assembly.transmittance.toFixed(4) },
    { head: 'Effective R', align: 'right', text: ({ assembly }) => number(assembly.effective) },
  ]);
}

/** Every step with its reason, selection by selection. */
function printArithmetic(selections: readonly BookSelection[], look: LookUp): string {
  const blocks = selections.flatMap((selection) =>
    selection.takeoff.map((takeoff) => {
      const option = look.option(selection.category, selection.counted)?.name ?? selection.category;
      const { part, supplies = [], counts = [], notes = [], assemblies = [], rule, source } = takeoff;
      const lines = [
        ...takeoffSteps(takeoff).map(stepWords),
        ...counts.map((count) => `Counted as ${countWords(count)}: ${count.why}. Source: ${count.source}`),
        ...supplies.map((supply) => `${supply.what}: ${supplyWords(supply)}. Source: ${supply.source}`),
        ...notes.map((note) => `${note.what}: ${note.words}. Source: ${note.source}`),
        ...assemblies.flatMap((assembly) => [
          `${assembly.name}, R with the framing:`,
          ...assemblySteps(assembly).map((step) => `  ${stepWords(step)}`),
        ]),
        `Rule: ${rule} Source: ${source}`,
      ];
      const name = part === 'main' ? option : `${option}, ${part}`;
      return `${numberOf(selection, look)} ${selection.placeText}: ${name}\n${lines.map((line) => `  ${line}\n`).join('')}`;
    }),
  );
  return `How it comes about\n\n${blocks.join('\n')}`;
}

function inSection<Row>(title: string, rows: readonly Row[], columns: readonly Column<Row>[]): string {
  return rows.length === 0 ? '' : `${title}\n\n${printTable(rows, columns)}`;
}

function numberOf({ room }: BookSelection, { book }: LookUp): string {
  return book.rooms.find(({ slug }) => slug === room)?.number ?? room;
}

const number = (amount: number) => amount.toFixed(1);

const roomColumn: Column<QuantityRow> = { head: 'Room', align: 'left', text: (row) => row.room };

const quantityColumns: readonly Column<QuantityRow>[] = [
  { head: 'Place', align: 'left', text: (row) => row.place },
  { head: 'Finish', align: 'left', text: (row) => (row.part === 'main' ? row.option : `${row.option}, ${row.part}`) },
  { head: 'Gross', align: 'right', text: (row) => number(row.gross) },
  { head: 'Less', align: 'right', text: (row) => number(row.deducted) },
  { head: 'Net', align: 'right', text: (row) => number(row.net) },
  { head: 'Coats', align: 'right', text: (row) => (row.times === 1 ? '' : String(row.times)) },
  { head: 'Waste %', align: 'right', text: (row) => number(row.wastePercent) },
  { head: 'Required', align: 'right', text: (row) => number(row.required) },
  { head: 'Unit', align: 'left', text: (row) => row.unit },
];

const roomSupplyColumns: readonly Column<SupplyOrder>[] = [
  { head: 'Supply', align: 'left', text: ({ what }) => what },
  { head: 'Net', align: 'right', text: ({ net }) => number(net) },
  { head: 'With waste', align: 'right', text: ({ required }) => number(required) },
  { head: 'Unit', align: 'left', text: ({ unit }) => unit },
];

/** Supplies of the whole house, as they are ordered. */
export const supplyOrderColumns: readonly Column<ReturnType<typeof supplyOrderRows>[number]>[] = [
  { head: 'Supply', align: 'left', text: (row) => row.option },
  { head: 'Net', align: 'right', text: (row) => number(row.net) },
  { head: 'With waste', align: 'right', text: (row) => number(row.required) },
  { head: 'Unit', align: 'left', text: (row) => row.unit },
  { head: 'Order', align: 'left', text: (row) => row.packs },
  { head: 'Rooms', align: 'left', text: (row) => roomWords(row.rooms) },
];
