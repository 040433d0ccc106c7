import { carries, factOf } from '../../fact/index.js';
import { compareMarks } from './marks.js';
import type { HardwareSet } from './schedule.js';
import { standingId, standingOf } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

/** A set for each hardware that stands on a door, in the order of the options, with the doors that have it. */
export function hardwareSets(look: Unscheduled): readonly HardwareSet[] {
  const doors = doorsByOption(look);
  const used = look.book.options.filter(({ id }) => doors.has(id));
  return used.map((option, index): HardwareSet => {
    const [finish, functions, holds] = [
      factOf(option, 'door-hardware', 'finish'),
      factOf(option, 'door-hardware', 'function'),
      factOf(option, 'door-hardware', 'holds'),
    ];
    const backset = factOf(option, 'door-hardware', 'backset');
    return {
      set: `H${index + 1}`,
      option: option.id,
      name: option.name,
      product: `${option.maker} ${option.model}`,
      ...(finish !== undefined && { finish }),
      ...(functions !== undefined && { functions }),
      ...(backset !== undefined && { backset }),
      ...(holds !== undefined && { holds }),
      doors: doors.get(option.id) ?? [],
    };
  });
}

/** Doors by the hardware on them, each once although two rooms may speak of it, in order of mark. */
function doorsByOption({ book, category }: Unscheduled): ReadonlyMap<string, HardwareSet['doors']> {
  const found = new Map<string, Map<string, HardwareSet['doors'][number]>>();
  for (const selection of book.selections) {
    const id = standingId(selection);
    if (id === undefined || !carries(category(selection.category), 'door-hardware', 'backset')) continue;
    const doors = found.get(id) ?? new Map<string, HardwareSet['doors'][number]>();
    for (const { id: mark } of selection.places) {
      doors.set(mark, { mark, standing: standingOf(selection), supply: selection.supply });
    }
    found.set(id, doors);
  }
  return new Map(
    [...found].map(([id, doors]) => [id, [...doors.values()].sort((a, b) => compareMarks(a.mark, b.mark))]),
  );
}
