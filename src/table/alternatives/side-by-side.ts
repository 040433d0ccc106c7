import type { AlternativeLine, LookUp } from '../../core/book/index.js';
import {
  col,
  layOut,
  quiet,
  type Cell,
  type Column,
  type HouseBlock,
  type HouseCell,
  type Names,
} from '../../sheet/index.js';
import type { Cents } from '../../base/units/index.js';
import { namesOf } from '../names-of.js';
import { inOrder, openCell, optionCell, todayTitle } from './cells.js';

/** What each allowance still holds, today and with each alternative; only those that an alternative moves. */
export function allowancesBeside(look: LookUp): HouseBlock {
  const { alternatives, money } = look.book;
  const moved = money.allowances.filter(({ id }) =>
    alternatives.some((one) => one.allowances.some((each) => each.id === id)),
  );
  const left = (index: number, id: string, today: Cents): Cents =>
    alternatives[index]?.allowances.find((each) => each.id === id)?.left ?? today;
  return layOut<(typeof moved)[number], HouseCell>(
    {
      id: 'alternative-allowances',
      caption: 'What is left in each allowance; below zero, what is over',
      named: 'allowance',
      rowId: ({ id }) => id,
      columns: [
        col.words('allowance', 'Allowance', ({ id, name }) => ({ text: name, place: { to: 'allowance', id } }), {
          width: 'words',
        }),
        col.money('today', todayTitle, ({ balance }) => balance),
        ...alternatives.map(({ name }, index) =>
          col.money(keyOf(index), name, ({ id, balance }: (typeof moved)[number]) => left(index, id, balance)),
        ),
      ],
    },
    moved,
    namesOf(look),
  );
}

/** Places that stand alike today and with every alternative. */
interface Places {
  readonly id: string;
  readonly category: string;
  readonly rooms: readonly string[];
  readonly today: Cell;
  /** By alternative. */
  readonly beside: readonly Cell[];
}

/** What stands where: a line for the places of a category that stand alike in all of the houses. */
export function finishesBeside(look: LookUp): HouseBlock {
  const columns: readonly Column<Places, HouseCell>[] = [
    col.words('category', 'Finish', ({ category }, names) => names.category(category), { width: 'words' }),
    col.rooms('rooms', 'Rooms', ({ rooms }) => rooms),
    col.cell('words', 'today', todayTitle, ({ today }) => today, { width: 'words' }),
    ...look.book.alternatives.map(({ name }, index) =>
      col.cell('words', keyOf(index), name, ({ beside }: Places) => beside[index] ?? quiet(''), { width: 'words' }),
    ),
  ];
  const table = {
    id: 'alternative-finishes',
    caption: 'What stands where, in the house as it stands and with each alternative',
    named: 'category',
    rowId: ({ id }: Places) => id,
    columns,
  };
  return layOut<Places, HouseCell>(table, placesBeside(look), namesOf(look));
}

const keyOf = (index: number): string => `alternative${index + 1}`;

function placesBeside(look: LookUp): readonly Places[] {
  const { alternatives, selections } = look.book;
  const lines = alternatives.map((one) => new Map(one.lines.map((line) => [line.selection, line])));
  const names = namesOf(look);
  const alike = new Map<string, Places & { readonly rooms: string[] }>();
  for (const { id, category, room, counted, state } of selections) {
    const own = lines.map((byId) => byId.get(id));
    if (own.every((line) => line === undefined)) continue;
    const isOpen = state === 'open';
    const today = counted === undefined ? undefined : `${category}/${counted}`;
    const key = JSON.stringify([category, isOpen || today, ...own.map((line) => line && [line.option, line.isRest])]);
    const places = alike.get(key) ?? {
      id,
      category,
      rooms: [],
      today: isOpen ? openCell : optionCell(today, names),
      beside: own.map((line) => lineCell(line, names)),
    };
    const number = look.room(room)?.number ?? room;
    if (!places.rooms.includes(number)) places.rooms.push(number);
    alike.set(key, places);
  }
  return inOrder([...alike.values()], look);
}

/** What an alternative does not speak of stands as today. */
function lineCell(line: AlternativeLine | undefined, names: Names): Cell {
  if (!line) return quiet('as today');
  const cell = optionCell(line.option, names);
  return line.isRest ? { is: 'list', of: [cell, quiet('meanwhile')], parted: ', ' } : cell;
}
