import { carries, factOf, makerText } from '../../fact/index.js';
import { doorFunctions, type OpeningMeasure } from '../../model/index.js';
import type { BookOption } from '../book.js';
import { groupBy } from '../group-by.js';
import { compareMarks } from './marks.js';
import type { HardwareSet } from './schedule.js';
import { standingId, standingOf } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

type SetDoor = HardwareSet['doors'][number];

interface Hung {
  readonly option: string;
  readonly opening: OpeningMeasure;
  readonly door: SetDoor;
}

/** A set for each hardware that stands on a door in one function, for one leaf or a pair: in the order of the options, then of
 *  the functions, with the doors that have it. */
export function hardwareSets(look: Unscheduled): readonly HardwareSet[] {
  const hung = groupBy(hungDoors(look), ({ option }) => option);
  const sets = look.book.options.flatMap((option) => {
    const own = hung.get(option.id) ?? [];
    const keys = [...new Set(own.map(({ opening }) => orderOf(opening)))].sort((a, b) => a - b);
    return keys.map((key) => ({ option, doors: own.filter(({ opening }) => orderOf(opening) === key) }));
  });
  return sets.flatMap(({ option, doors }, index) => setOf(`H${index + 1}`, option, doors, look) ?? []);
}

function setOf(set: string, option: BookOption, hung: readonly Hung[], look: Unscheduled): HardwareSet | undefined {
  const [first] = hung;
  if (!first) return undefined;
  const [finish, functions, holds] = [
    factOf(option, 'door-hardware', 'finish'),
    factOf(option, 'door-hardware', 'function'),
    factOf(option, 'door-hardware', 'holds'),
  ];
  const backset = factOf(option, 'door-hardware', 'backset');
  const leaves = first.opening.operation === 'double' ? 'pair' : 'single';
  const { function: locks } = first.opening.door ?? {};
  return {
    set,
    ...(locks && { function: locks }),
    leaves,
    option: option.id,
    name: option.name,
    product: makerText(option),
    ...(finish !== undefined && { finish }),
    ...(functions !== undefined && { functions }),
    ...(backset !== undefined && { backset }),
    ...(holds !== undefined && { holds }),
    more: leaves === 'pair' ? moreOfPair(option, look) : [],
    doors: hung.map(({ door }) => door).sort((a, b) => compareMarks(a.mark, b.mark)),
  };
}

/** Single leaves before pairs, each in the order of the functions; last what has none recorded. */
function orderOf({ operation, door }: OpeningMeasure): number {
  const locks = door?.function;
  const place = locks === undefined ? doorFunctions.length : doorFunctions.indexOf(locks);
  return (operation === 'double' ? 10 : 0) + place;
}

/** What the category's record says that goes with a pair. */
function moreOfPair({ category }: BookOption, look: Unscheduled): HardwareSet['more'] {
  return (look.category(category)?.measure.supplies ?? [])
    .filter(({ goesWith }) => goesWith === 'pairs')
    .map(({ what, usage }) => ({ what, count: usage.amount / usage.per, unit: usage.unit }));
}

/** Doors with the hardware on them, each once although two rooms may speak of it. */
function hungDoors({ book, category }: Unscheduled): readonly Hung[] {
  const openings = new Map(
    book.rooms.flatMap(({ measure }) => measure.openings.map((opening) => [opening.mark, opening] as const)),
  );
  const found = new Map<string, Hung>();
  for (const selection of book.selections) {
    const option = standingId(selection);
    if (option === undefined || !carries(category(selection.category), 'door-hardware', 'backset')) continue;
    for (const { id: mark } of selection.places) {
      const opening = openings.get(mark);
      const door = { mark, standing: standingOf(selection), supply: selection.supply };
      if (opening) found.set(`${option} ${mark}`, { option, opening, door });
    }
  }
  return [...found.values()];
}
