import { PDFDict, PDFRef, type PDFDocument } from 'pdf-lib';
import { append, element, holds, kidRefs, ofType, put, standsIn } from './elements.js';
import { elementOf, memory, profile, retype, type Rule } from './rule.js';
import { attribute, key, kidTypes, type Tag, type Tagged } from './tagged.js';

const most =
  (type: string, kid: string) =>
  (tagged: Tagged): readonly string[] =>
    ofType(tagged, type)
      .filter((tag) => kidTypes(tag).filter((one) => one === kid).length > 1)
      .map(() => `${type} with several ${kid}`);

const withBody =
  (part: string) =>
  (tagged: Tagged): readonly string[] =>
    ofType(tagged, 'Table')
      .filter((tag) => kidTypes(tag).includes(part) && !kidTypes(tag).includes('TBody'))
      .map(() => `Table with ${part} and no TBody`);

/** Columns that each row of a table takes, cells that reach down from rows above counted; undefined where two cells lie on each other. */
function widths(table: Tag): readonly (number | undefined)[] {
  const rows = rowsOf(table);
  const taken = new Map<number, Set<number>>();
  return rows.map((row, at) => {
    const here = taken.get(at) ?? new Set<number>();
    let isClear = true;
    let column = 0;
    for (const cell of row.kids) {
      while (here.has(column)) column += 1;
      const [wide, high] = [span(cell, 'ColSpan'), span(cell, 'RowSpan')];
      for (let right = column; right < column + wide; right += 1) {
        if (here.has(right)) isClear = false;
        for (let down = at; down < at + high; down += 1) {
          const there = taken.get(down) ?? new Set<number>();
          taken.set(down, there.add(right));
          if (down === at) here.add(right);
        }
      }
      column += wide;
    }
    return isClear ? here.size : undefined;
  });
}

const rowsOf = (table: Tag): readonly Tag[] =>
  table.kids.flatMap((kid) => (kid.standard === 'TR' ? [kid] : kid.kids.filter(({ standard }) => standard === 'TR')));

const span = (cell: Tag, way: 'ColSpan' | 'RowSpan'): number => Number(attribute(cell, way) ?? 1);

const giveSpan =
  (type: string, way: string, count: number) =>
  (document: PDFDocument): void =>
    elementOf(document, type).set(key('A'), document.context.obj({ O: 'Table', Scope: 'Column', [way]: count }));

/** Leaves the first table with that part alone. */
const bodiless =
  (part: 'THead' | 'TFoot') =>
  (document: PDFDocument): void => {
    put(part, 'Table')(document);
    const table = elementOf(document, 'Table');
    table.set(key('K'), document.context.obj(kidRefs(table).slice(-1)));
  };

/** How tables hold together. */
export const tableRules: readonly Rule[] = [
  {
    id: '7.2-3',
    source: profile,
    says: 'a table holds rows and their groups, with a caption first or last',
    faults: holds('Table', /^$|^Caption$|^(Caption )?(TR|THead|TBody|TFoot)( (TR|THead|TBody|TFoot))*( Caption)?$/u),
    plant: put('P', 'Table'),
  },
  {
    id: '7.2-4',
    source: profile,
    says: 'a row stands in a table',
    faults: standsIn('TR', 'Table', 'THead', 'TBody', 'TFoot'),
    plant: put('TR', 'Document'),
  },
  {
    id: '7.2-5',
    source: profile,
    says: 'the head of a table stands in a table',
    faults: standsIn('THead', 'Table'),
    plant: put('THead', 'Document'),
  },
  {
    id: '7.2-6',
    source: profile,
    says: 'the body of a table stands in a table',
    faults: standsIn('TBody', 'Table'),
    plant: put('TBody', 'Document'),
  },
  {
    id: '7.2-7',
    source: profile,
    says: 'the foot of a table stands in a table',
    faults: standsIn('TFoot', 'Table'),
    plant: put('TFoot', 'Document'),
  },
  {
    id: '7.2-8',
    source: profile,
    says: 'a cell that is a head stands in a row',
    faults: standsIn('TH', 'TR'),
    plant: put('TH', 'Document'),
  },
  {
    id: '7.2-9',
    source: profile,
    says: 'a cell stands in a row',
    faults: standsIn('TD', 'TR'),
    plant: put('TD', 'Document'),
  },
  {
    id: '7.2-10',
    source: profile,
    says: 'a row holds cells alone',
    faults: holds('TR', /^$|^(TH|TD)( (TH|TD))*$/u),
    plant: retype('TH', 'P'),
  },
  {
    id: '7.2-11',
    source: profile,
    says: 'a table has one head at most',
    faults: most('Table', 'THead'),
    plant: (document) => {
      put('THead', 'Table')(document);
      put('THead', 'Table')(document);
    },
  },
  {
    id: '7.2-12',
    source: profile,
    says: 'a table has one foot at most',
    faults: most('Table', 'TFoot'),
    plant: (document) => {
      put('TFoot', 'Table')(document);
      put('TFoot', 'Table')(document);
    },
  },
  {
    id: '7.2-13',
    source: profile,
    says: 'a table with a foot has a body',
    faults: withBody('TFoot'),
    plant: bodiless('TFoot'),
  },
  {
    id: '7.2-14',
    source: profile,
    says: 'a table with a head has a body',
    faults: withBody('THead'),
    plant: bodiless('THead'),
  },
  {
    id: '7.2-15',
    source: profile,
    says: 'no cell lies on another',
    faults: (tagged) =>
      ofType(tagged, 'Table')
        .filter((table) => widths(table).includes(undefined))
        .map(() => 'cells on each other'),
    plant: (document) => {
      // A cell that reaches down at the end of its row, and one beneath that is wider than what is left beside it.
      put('Table', 'Document')(document);
      const [table] = kidRefs(elementOf(document, 'Document')).slice(-1);
      if (!(table instanceof PDFRef)) throw new Error('no table was put');
      for (const cells of [[{}, { RowSpan: 2 }], [{ ColSpan: 2 }]]) {
        const row = element(document, 'TR', table);
        append(document.context.lookup(table, PDFDict), row);
        for (const spans of cells)
          append(document.context.lookup(row, PDFDict), element(document, 'TD', row, { A: { O: 'Table', ...spans } }));
      }
    },
  },
  {
    id: '7.2-41',
    source: profile,
    says: 'no cell reaches down beyond the last row',
    faults: (tagged) =>
      ofType(tagged, 'Table').flatMap((table) =>
        rowsOf(table).flatMap((row, at, rows) =>
          row.kids.filter((cell) => at + span(cell, 'RowSpan') > rows.length).map(() => 'a cell beyond the last row'),
        ),
      ),
    plant: giveSpan('TH', 'RowSpan', 999),
  },
  {
    id: '7.2-42',
    source: memory,
    says: 'the rows of a table are equally wide',
    faults: (tagged) =>
      ofType(tagged, 'Table')
        .map(widths)
        .filter((all) => new Set(all).size > 1)
        .map((all) => `rows of ${[...new Set(all)].join(' and ')} columns`),
    plant: giveSpan('TH', 'ColSpan', 3),
  },
  {
    id: '7.2-36',
    source: profile,
    says: 'the head of a table holds rows alone',
    faults: holds('THead', /^(TR( TR)*)?$/u),
    plant: put('P', 'THead'),
  },
  {
    id: '7.2-37',
    source: profile,
    says: 'the body of a table holds rows alone',
    faults: holds('TBody', /^(TR( TR)*)?$/u),
    plant: put('P', 'TBody'),
  },
  {
    id: '7.2-38',
    source: profile,
    says: 'the foot of a table holds rows alone',
    faults: holds('TFoot', /^(TR( TR)*)?$/u),
    plant: (document) => {
      put('TFoot', 'Table')(document);
      put('P', 'TFoot')(document);
    },
  },
  {
    id: '7.5-1',
    source: profile,
    says: 'a head of a table says what it is the head of',
    faults: (tagged) =>
      ofType(tagged, 'TH')
        .filter((tag) => attribute(tag, 'Scope') === undefined && attribute(tag, 'Headers') === undefined)
        .map(() => 'a TH without Scope'),
    plant: (document) => {
      elementOf(document, 'TH').delete(key('A'));
    },
  },
];
