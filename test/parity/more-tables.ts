/** Tables of the house that stand on no sheet of their own: agreements, comparisons, a room's quantities. */
import type { LookUp } from '../../src/core/book/index.js';
import { compare } from '../../src/core/compare/index.js';
import type { Block } from '../../src/sheet/index.js';
import {
  comparisonSections,
  layoutsOnPaper,
  layoutTables,
  quantitiesOfRoom,
  quantityLines,
  roomCosts,
  roomSupplies,
} from '../../src/table/index.js';
import { smallBook } from '../book/small-house.js';

const digest = 'd'.repeat(64);
const commit = 'c'.repeat(40);
const order = (state: string, amount: string, decided: string): string => `---
title: Oak in the study
state: ${state}
from: ${commit}
to: ${commit}
proposed-on: 2026-04-21
${decided}reason: The sample looked better.
days: 2 days
amount: ${amount}
lines:
  - { room: study, what: Floor, from: Pine, to: Oak, amount: ${amount} }
---
`;

/** A small house with what was issued and agreed. */
export const agreedBook = smallBook({
  'content/issues/001.md': `---
purpose: pricing
date: 2026-04-17
commit: ${commit}
digest: ${digest}
rooms: { study: ${digest} }
trades: {}
---
`,
  'content/changes/001.md': order('approved', '$120.25', 'decided-on: 2026-04-23\ndecided-by: The owners\n'),
  'content/changes/002.md': order('proposed', '-$20.50', ''),
});

const comparison = compare({
  from: smallBook(),
  to: smallBook({
    'content/rooms/study.md': [['chosen: pine', 'chosen: oak']],
    'content/options/floor/pine.md': [['material: $4.00', 'material: $4.50']],
    'content/house.md': [
      ['overage-markup: 15 %', 'overage-markup: 12 %'],
      ['sum: $100,000', 'sum: $101,000'],
      ['amount: "$1,000"', 'amount: "$1,200"'],
      ['date: 2026-05-04', 'date: 2026-05-11'],
    ],
  }),
  labels: { from: 'issue 1', to: 'records' },
  between: {},
});

/** Each part of a comparison. */
export const comparedBlocks: readonly Block[] = [
  ...comparisonSections.money(comparison),
  ...comparisonSections.rooms(comparison.rooms),
  ...comparisonSections.days(comparison),
  ...comparisonSections.priceBook(comparison),
  ...comparisonSections.allowances(comparison),
  ...comparisonSections.terms(comparison),
  ...comparisonSections.moved(comparison),
  ...comparisonSections.records(comparison),
];

/** What the page and the sheet of a room show as tables. */
export function roomBlocks(look: LookUp): readonly Block[] {
  const [room] = look.book.rooms;
  if (!room) throw new Error('the demo house has no room');
  const selections = look.selectionsOf(room);
  const lines = quantityLines(look, selections);
  return [
    quantitiesOfRoom(room.name, lines, look),
    roomSupplies(room, look),
    roomCosts(room, selections, look),
    ...layoutTables(lines, look),
    ...layoutsOnPaper(lines, look).map((table) => ({ ...table, id: 'on-paper' as typeof table.id })),
  ];
}
