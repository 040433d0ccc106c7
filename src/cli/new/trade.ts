import type { Command } from 'commander';
import { unread } from '../../base/units/index.js';
import { draftTrade, freshSlug, readName } from '../../draft/index.js';
import type { Console } from '../console.js';
import { addingCommand, addRecords, openLibrary, openToAdd } from './add-records.js';
import { take, valueOf } from './take.js';

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
      const has = (name: string): boolean =>
        trades.some((one) => one.slug === name || one.name.toLowerCase() === name.toLowerCase());
      const known = named !== undefined && !has(named) ? (await openLibrary()).take('trades', named) : undefined;
      const ask = async (): Promise<ReturnType<typeof draftTrade>> => {
        const said = await take(
          {
            name: {
              flag: 'its name',
              given: named,
              asks: 'What is it called?',
              read: (text) => {
                const name = readName(text);
                return name.ok && has(text.trim())
                  ? unread(`there is a trade '${name.value}' already`, 'give it another name')
                  : name;
              },
            },
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
      console.out(`${trade.path}\n\n  bookmatch new category${adding.house}\n`);
      done(0);
    });
}
