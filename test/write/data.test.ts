import { expect, test } from 'vitest';
import { col, layOut, type Names, type Table } from '../../src/sheet/index.js';
import { printTable, tableCsv, tableText } from '../../src/write/index.js';

interface Face {
  readonly name: string;
  readonly net: number;
}

const names = {} as Names;
const faces = [{ name: 'Front', net: 99.4 }];

const plain: Table<Face> = {
  id: 'faces',
  caption: 'Faces',
  named: 'name',
  rowId: ({ name }) => name,
  columns: [
    col.words('name', 'Face', ({ name }) => name),
    col.amount('netArea', 'Net, sq ft', ({ net }) => net),
    col.lines('both', 'Both', ({ name, net }) => [
      { at: `${name}:`, cell: { is: 'amount', value: net, digits: 1 }, after: 'of 145.8' },
    ]),
  ],
  notes: () => ['As measured.'],
};
const table = layOut(plain, faces, names);

test('a figure among words keeps what follows its point on paper', () => {
  const [row] = printTable(table, () => undefined).groups[0]?.rows ?? [];
  const words = row?.cells[2]?.lines.map((line) => line.map(({ text, rest }) => text + rest).join(''));
  expect(words).toEqual(['Front: 99.4 of 145.8']);
});

test('a column of figures is as wide as they are, but where words stand beneath them', () => {
  const widthOver = (says: string) => {
    const under = col.words('how', 'How', (_: Face) => says, { under: 'netArea' });
    const both = layOut({ ...plain, columns: [...plain.columns, under] }, faces, names);
    return printTable(both, () => undefined).columns[1];
  };
  expect(widthOver('Douglas fir 8x10, boxed heart, green')).toMatchObject({ width: 'words', right: true });
  expect(widthOver('5,147 lb today')).toMatchObject({ width: 'fit', right: true });
});

test('an amount has its unit in the head of its data', () => {
  expect(tableCsv(table)).toBe('name,net area (sq ft),both\r\nFront,99.4,Front: 99.4 of 145.8\r\n');
});

test('tables of one file keep their own columns, and each row says which table it is of', () => {
  const other: Table<Face> = { ...plain, id: 'sides', columns: [col.words('side', 'Side', ({ name }) => name)] };
  expect(tableCsv(table, layOut(other, faces, names))).toBe(
    'table,name,net area (sq ft),both,side\r\nfaces,Front,99.4,Front: 99.4 of 145.8,\r\nsides,,,,Front\r\n',
  );
});

test('a note stands apart from the table in a terminal', () => {
  expect(tableText(table).split('\n').slice(-3)).toEqual(['', 'As measured.', '']);
});
