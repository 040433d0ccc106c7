import type { Command } from 'commander';
import { appendItem } from '../../core/records/index.js';
import { draftMilestone, freshSlug, readName } from '../../draft/index.js';
import { meaningOf } from '../../manual/index.js';
import { lower } from '../../base/units/index.js';
import { typed, type Console } from '../console.js';
import { addingCommand, addRecords, openToAdd } from './add-records.js';
import { keysGiven, withKeyFlags } from './key-flags.js';
import { nameWanted, take, valueOf } from './take.js';

/** Made of the name, and the name itself. */
const named = ['id', 'name'];

/** `bookmatch new milestone 'Tile set' --after drywall --days 10`: a step of the job, written into house.md. */
export function newMilestone(console: Console, done: (code: number) => void): Command {
  const command = addingCommand('milestone')
    .description(`${lower(meaningOf('milestone')).replace(/\.$/u, '')}, in house.md`)
    .argument('[name]', 'its name');
  return withKeyFlags(command, 'milestone', named).action(
    async (given: string | undefined, flags: { readonly house: string }) => {
      const keys = keysGiven('milestone', named, { ...flags });
      const adding = await openToAdd(flags.house, 'milestone', console);
      if (!adding) return done(1);
      const { house, sources } = adding.records;
      const others = house.milestones.map(({ id, name }) => ({ slug: id, name }));
      const said = await take({ name: nameWanted('milestone', given, others) }, console.asker());
      const name = valueOf(readName(said.name));
      const ids = new Set(others.map(({ slug }) => slug));
      const id = freshSlug(name, ids, `milestone-${ids.size + 1}`);
      const path = house.origin.file;
      const before = sources.find((source) => source.path === path)?.text ?? '';
      const text = appendItem(before, 'milestones', draftMilestone(id, name, keys), ['calendar', 'allowances']);
      if (!(await addRecords(adding, [{ path, text }], console))) return done(1);
      console.tell(`${path}  milestone ${id}\n${typed(`\n  bookmatch calendar${adding.house}\n`, console)}`);
      done(0);
    },
  );
}
