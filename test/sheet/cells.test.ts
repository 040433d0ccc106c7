import { describe, expect, test } from 'vitest';
import {
  col,
  dataHead,
  gated,
  layOut,
  layOutFor,
  plainWords,
  raw,
  type Cell,
  type Finish,
  type HouseCell,
  type Names,
  type Table,
} from '../../src/sheet/index.js';
import type { Cents, Length } from '../../src/base/units/index.js';

const inches = (count: number) => (count * 25_400_000) as Length;

const finish = (of: Partial<Finish>): Cell => ({
  is: 'finish',
  name: 'Flat alder',
  standing: 'chosen',
  by: 'contractor',
  ...of,
});

/** What each kind says to people, and is worth to a machine. */
const cells: readonly (readonly [HouseCell, string, string | number])[] = [
  [{ is: 'nothing' }, '–', ''],
  [{ is: 'words', text: 'Knotty alder' }, 'Knotty alder', 'Knotty alder'],
  [{ is: 'room', number: '101', name: 'Great room' }, '101 Great room', '101 Great room'],
  [{ is: 'room', number: '', name: 'Outside' }, 'Outside', 'Outside'],
  [{ is: 'mark', text: 'H3', bracketed: true }, '(H3)', '(H3)'],
  [{ is: 'length', nm: inches(204.5625) }, `17'-0 9/16"`, 204.5625],
  [{ is: 'span', from: inches(96), to: inches(144) }, `8'-0" to 12'-0"`, '96 to 144'],
  [{ is: 'amount', value: 1240.25, digits: 1 }, '1,240.3', 1240.25],
  [{ is: 'amount', value: 24, digits: 1, unit: 'sq ft' }, '24 sq ft', 24],
  [{ is: 'count', value: 1204 }, '1,204', 1204],
  [{ is: 'percent', value: 7.5 }, '7.5', 7.5],
  [
    { is: 'pack', count: 18, name: 'bundle', holds: 24, unit: 'sq ft' },
    '18 bundles of 24 sq ft',
    '18 bundles of 24 sq ft',
  ],
  [{ is: 'pack', count: 1, name: 'box', holds: 10.5, unit: 'lin ft' }, '1 box of 10.5 lin ft', '1 box of 10.5 lin ft'],
  [{ is: 'pieces', of: [{ count: 18, length: inches(144) }] }, `18 at 12'-0"`, `18 at 12'-0"`],
  [{ is: 'days', working: 30 }, '6 weeks', 30],
  [{ is: 'days', working: 5 }, '1 week', 5],
  [{ is: 'days', working: 3 }, '3 days', 3],
  [{ is: 'days', working: 0 }, 'none', 0],
  [{ is: 'day', day: '2026-05-04' }, '4 May 2026', '2026-05-04'],
  [{ is: 'rooms', numbers: ['101', '103'] }, '101, 103', '101, 103'],
  [
    { is: 'rooms', numbers: Array.from({ length: 9 }, (_, at) => String(101 + at)) },
    '9 rooms',
    '101, 102, 103, 104, 105, 106, 107, 108, 109',
  ],
  [finish({}), 'Flat alder', 'Flat alder'],
  [finish({ standing: 'standard', urgency: 'late' }), 'Flat alder, standard for now Late', 'Flat alder'],
  [finish({ standing: 'considered' }), 'Flat alder, if chosen', 'Flat alder'],
  [finish({ standing: 'open', urgency: 'open' }), 'not decided Open', 'open'],
  [finish({ standing: 'open', kind: 'paint' }), 'paint not decided', 'open'],
  [finish({ standing: 'none' }), 'Deliberately none', 'none'],
  [finish({ by: 'owner-furnished' }), 'Flat alder Owner-furnished', 'Flat alder'],
  [finish({ key: 'CS1' }), 'CS1 Flat alder', 'Flat alder'],
  [finish({ key: 'CS1', keyOnly: true, standing: 'standard' }), '(CS1)', '(CS1)'],
  [{ is: 'status', status: 'due-soon' }, 'Due soon', 'due-soon'],
  [{ is: 'money', cents: 124000 as Cents }, '$1,240.00', 1240],
  [{ is: 'money', cents: -31050 as Cents, change: true }, '−$310.50', -310.5],
  [{ is: 'money', cents: 0 as Cents }, '–', 0],
  [{ is: 'money', cents: 0 as Cents, zero: 'told' }, '$0.00', 0],
  [
    {
      is: 'list',
      parted: ', ',
      of: [
        { is: 'mark', text: 'D01' },
        { is: 'mark', text: 'D02', bracketed: true },
      ],
    },
    'D01, (D02)',
    'D01, (D02)',
  ],
  [
    {
      is: 'lines',
      of: [
        { at: '108', cell: { is: 'mark', text: 'CS1' } },
        { at: '110', cell: { is: 'mark', text: 'CS2' } },
      ],
    },
    '108 CS1; 110 CS2',
    '108 CS1; 110 CS2',
  ],
];

test.each(cells)('%j', (cell, said, worth) => {
  expect(plainWords(cell)).toBe(said);
  expect(raw(cell)).toBe(worth);
});

test('a head in data is words with the unit', () => {
  expect(dataHead({ key: 'roughWidth', kind: 'length', head: 'Rough width' })).toBe('rough width (in)');
  expect(dataHead({ key: 'area', kind: 'amount', head: 'Area, sq ft' })).toBe('area (sq ft)');
  expect(dataHead({ key: 'mark', kind: 'mark', head: 'Mark' })).toBe('mark');
});

describe('the gate', () => {
  /** Lets nothing through that speaks of money. */
  const gate = (text: string) => (text.includes('$') ? '' : text);

  test.each<[Cell, string]>([
    [{ is: 'words', text: 'was $400' }, '–'],
    [{ is: 'mark', text: '$4' }, '–'],
    [
      {
        is: 'list',
        parted: ', ',
        of: [
          { is: 'words', text: 'oak' },
          { is: 'words', text: '$400 oak' },
        ],
      },
      'oak',
    ],
    [{ is: 'lines', of: [{ at: '$4', cell: { is: 'words', text: 'oak' } }] }, ' oak'],
    [finish({ name: 'Oak at $4', key: '$5' }), ' '],
    [{ is: 'pack', count: 2, name: 'box ($9)', holds: 3, unit: 'sq ft' }, '2 s of 3 sq ft'],
  ])('reaches every word of %j', (cell, said) => {
    const passed = plainWords(gated(cell, gate));
    expect(passed).not.toContain('$');
    if (cell.is !== 'pack') expect(passed).toBe(said);
  });

  test('reaches heads of groups, captions, sums and notes', () => {
    const table: Table<{ readonly name: string }> = {
      id: 't',
      caption: 'Caption $1',
      named: 'name',
      rowId: ({ name }) => name,
      columns: [col.words('name', 'Name', ({ name }) => name)],
      group: () => ({ title: 'Group $2', why: 'because $3' }),
      sums: () => [{ what: 'Sum $4', why: '$5', cells: { name: { is: 'words', text: '$6' } } }],
      notes: () => ['Note $7', 'kept'],
    };
    const laid = layOutFor(table, [{ name: 'row $8' }], {} as Names, gate);
    const texts = JSON.stringify({
      ...laid,
      groups: laid.groups.map(({ rows, ...group }) => ({ ...group, cells: rows.map(({ cells }) => cells) })),
    });
    expect(texts).not.toContain('$');
    expect(laid.notes).toEqual(['kept']);
    expect(JSON.stringify(layOut(table, [{ name: 'row' }], {} as Names))).toContain('$7');
  });
});
