import type { Command } from 'commander';
import { layers } from '../../core/model/index.js';
import { setKeys } from '../../core/records/index.js';
import { counted } from '../../base/units/index.js';
import { usualSlots } from '../../draft/index.js';
import type { Console } from '../console.js';
import { UsageError } from '../usage-error.js';
import { addingCommand, addRecords, openLibrary, openToAdd } from './add-records.js';

/** `bookmatch new slots`: what every room must have, by what is usual and by what the house knows, written into house.md. */
export function newSlots(console: Console, done: (code: number) => void): Command {
  return addingCommand('slots')
    .description('the usual list of what every room must have, in house.md')
    .action(async (flags: { readonly house: string }) => {
      const adding = await openToAdd(flags.house, 'slots', console);
      if (!adding) return done(1);
      const { house, categories, trades, sources } = adding.records;
      const path = house.origin.file;
      if (house.slots) throw new UsageError(`${path} has slots already: change them there. Nothing was written.`);
      const carried = trades.flatMap(({ carries = [] }) => carries.map(({ id }) => id));
      // A layer is asked for where something of the house is of that layer.
      const own = layers.filter((layer) => categories.some((category) => category.layer === layer));
      const names = new Set([...own, ...categories.map(({ slug }) => slug), ...carried]);
      const slots = usualSlots(await openLibrary(), names);
      if (slots.length === 0)
        throw new UsageError('no category of this house is in the usual list. Nothing was written.');
      const before = sources.find((source) => source.path === path)?.text ?? '';
      const text = setKeys(before, [{ in: [], values: { slots }, after: ['milestones'] }]);
      if (!(await addRecords(adding, [{ path, text }], console))) return done(1);
      console.tell(`${path}  ${counted(slots.length, 'slot')}\n\n  bookmatch check${adding.house}\n`);
      done(0);
    });
}
