import type { AlternativeLine, BookHouseAlternative, LookUp } from '../../core/book/index.js';
import {
  col,
  layOut,
  money,
  type Cell,
  type HouseBlock,
  type HouseCell,
  type HouseTable,
  type Names,
  type Sum,
} from '../../sheet/index.js';
import type { Cents, IsoDate } from '../../base/units/index.js';
import { choiceTitle } from '../choice.js';
import { leftWords } from '../decision.js';
import { namesOf } from '../names-of.js';
import { houseSchedule } from '../schedule.js';
import { inOrder, openCell, optionCell } from './cells.js';

interface Line extends AlternativeLine {
  readonly alternative: string;
  readonly room: string;
  readonly place: string;
}

/** Every place that an alternative speaks of, with what stands there today. */
export const alternativeLines = houseSchedule<Line>(
  {
    id: 'alternative-lines',
    caption: 'What each alternative chooses, place by place',
    named: 'place',
    rowId: ({ alternative, selection }) => `${alternative}-${selection}`,
    group: ({ alternative }) => ({ title: alternative }),
    columns: [
      col.room('room', 'Room', ({ room }, names) => names.room(room), { width: 'short' }),
      col.words('place', 'Place', ({ place, selection: id }) => ({ text: place, place: { to: 'selection', id } }), {
        width: 'words',
      }),
      col.cell('words', 'today', 'Today', standsToday, { width: 'words' }),
      col.cell('words', 'then', 'With it', ({ option }, names) => optionCell(option, names), { width: 'words' }),
      col.words('why', 'Why', ({ isRest }) => (isRest ? restWord : undefined), { under: 'then' }),
      col.money('costToday', 'Cost today', ({ costToday }) => costToday),
      col.money('cost', 'Cost with it', ({ cost }) => cost),
      col.money('change', 'Change beside allowances', ({ change }) => change, { change: true }),
      col.money('restocking', 'Supplier keeps', ({ restocking }) => restocking),
      col.day('decideBy', 'Decide by', ({ decision }) => decision?.by),
    ],
  },
  (look) => look.book.alternatives.flatMap((one) => one.lines.map((line) => lineOf(line, one, look))),
);

/** It stands for the rest of an allowance meanwhile. */
const restWord = 'the rest of its allowance meanwhile';

function lineOf(line: AlternativeLine, { name }: BookHouseAlternative, look: LookUp): Line {
  const selection = look.selection(line.selection);
  return {
    ...line,
    alternative: name,
    room: selection?.room ?? '',
    place: selection ? choiceTitle(selection, look) : line.selection,
  };
}

function standsToday({ today, isOpen }: AlternativeLine, names: Names): Cell {
  return isOpen ? openCell : optionCell(today, names);
}

/** `for Hand trowel, soft`; of an open place nothing, but where it stands for the rest of an allowance. */
function insteadWords({ today, isOpen, isRest }: AlternativeLine, names: Names): string {
  if (isRest) return restWord;
  if (isOpen) return 'open today';
  return `in place of ${today === undefined ? 'none' : (names.option(today) ?? today)}`;
}

/** Lines of one category that change one option for another. */
interface Alike {
  readonly id: string;
  readonly category: string;
  readonly rooms: readonly string[];
  readonly line: AlternativeLine;
  readonly costToday?: Cents;
  readonly cost: Cents;
  readonly change: Cents;
  readonly by?: IsoDate;
}

/** Where the difference of one alternative to today comes from: its lines, the allowances that they draw on, what is shared,
 *  and what the contract adds on the net, down to the difference of the two totals. */
export function whatItMoves(one: BookHouseAlternative, look: LookUp): HouseBlock {
  const table: HouseTable<Alike> = {
    id: `alternative-${one.slug}-lines`,
    caption: `Where the difference comes from: ${one.name}`,
    named: 'category',
    rowId: ({ id }) => id,
    columns: [
      col.words('category', 'Finish', ({ category }, names) => names.category(category), { width: 'words' }),
      col.rooms('rooms', 'Rooms', ({ rooms }) => rooms, { width: 'words' }),
      col.cell('words', 'then', 'With it', ({ line }, names) => optionCell(line.option, names), { width: 'long' }),
      col.words('today', 'Instead of', ({ line }, names) => insteadWords(line, names), { under: 'then' }),
      col.money('costToday', 'Cost today', ({ costToday }) => costToday),
      col.money('cost', 'Cost with it', ({ cost }) => cost),
      col.money('change', 'Change beside allowances', ({ change }) => change, { change: true }),
      col.day('decideBy', 'Decide by', ({ by }) => by),
    ],
    sums: () => sumsOf(one, look),
  };
  return layOut(table, alike(one, look), namesOf(look));
}

function alike({ lines }: BookHouseAlternative, look: LookUp): readonly Alike[] {
  const groups = new Map<string, Alike[]>();
  for (const line of lines) {
    const { category = '', room = '' } = look.selection(line.selection) ?? {};
    const { option, today, isOpen, isRest, decision } = line;
    const key = JSON.stringify([category, option, today, isOpen, isRest, decision?.by]);
    const one: Alike = {
      ...line,
      id: line.selection,
      category,
      rooms: [look.room(room)?.number ?? room],
      line,
      ...(decision && { by: decision.by }),
    };
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return inOrder([...groups.values()].map(together), look);
}

function together(all: readonly Alike[]): Alike {
  const [first] = all as readonly [Alike, ...Alike[]];
  const sum = (of: (one: Alike) => number): Cents => all.reduce((total, one) => total + of(one), 0) as Cents;
  return {
    ...first,
    rooms: [...new Set(all.flatMap(({ rooms }) => rooms))],
    cost: sum(({ cost }) => cost),
    change: sum(({ change }) => change),
    ...(first.costToday !== undefined && { costToday: sum(({ costToday }) => costToday ?? 0) }),
  };
}

function sumsOf(
  { allowances, elsewhere, onNet, change }: BookHouseAlternative,
  look: LookUp,
): readonly Sum<HouseCell>[] {
  const moved = (what: string, amount: Cents, why?: string): readonly Sum<HouseCell>[] =>
    amount === 0 ? [] : [{ what, ...(why !== undefined && { why }), cells: { change: money(amount, true) } }];
  return [
    ...allowances.flatMap(({ id, change: by, left }) =>
      moved(`Allowance ${look.allowanceName(id)}`, by, `${leftWords(left, 'always')}${left < 0 ? '' : ' left'}`),
    ),
    ...moved('At other places', elsewhere, 'whole packs and freight that they share with these'),
    ...moved('Mark-up', onNet.markup, 'on the net of what no change order has yet'),
    ...moved('Contractor’s fee', onNet.fee, 'its share of what the cost changes'),
    { what: 'Against today', strong: true, cells: { change: money(change, true) } },
  ];
}
