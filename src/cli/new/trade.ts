import type { Command } from 'commander';
import { draftTrade, freshSlug, readName } from '../../draft/index.js';
import { typed, type Console } from '../console.js';
import { addingCommand, addRecords, openLibrary, openToAdd } from './add-records.js';
import { isNamed, nameWanted, take, valueOf } from './take.js';

/** `bookmatch new trade masonry`: who does a kind of work. One that the program knows comes with what it does and carries. */
export function newTrade(console: Console, done: (code: number) => void): Command {
  return addingCommand('trade')
    .description('who does a kind of work')
    .argument('[name]', 'its name, or one that the program knows, such as masonry')
    .option('--contact <contact>', 'whom to ask, by role')
    .action(async (named: string | undefined, flags: { readonly house: string; readonly contact?: string }) => {
      const adding = await openToAdd(flags.house, 'trade', console);
      if (!adding) return done(1);
      const { trades } = adding.records;
      const known =
        named !== undefined && !isNamed(named, trades) ? (await openLibrary()).take('trades', named) : undefined;
      const ask = async (): Promise<ReturnType<typeof draftTrade>> => {
        const said = await take(
          {
            name: nameWanted('trade', named, trades),
            contact: {
              flag: '--contact',
              given: flags.contact,
              asks: 'Whom to ask, by role?',
              usual: 'Not known yet',
              read: readName,
            },
          },
          console.asker(),
        );
        const name = valueOf(readName(said.name));
        const slug = freshSlug(name, new Set(trades.map((trade) => trade.slug)), `trade-${trades.length + 1}`);
        return draftTrade(slug, name, valueOf(readName(said.contact)));
      };
      const trade = known ?? (await ask());
      if (!(await addRecords(adding, [trade], console))) return done(1);
      console.tell(`${trade.path}\n${typed(`\n  bookmatch new category${adding.house}\n`, console)}`);
      done(0);
    });
}
