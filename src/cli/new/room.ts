import type { Command } from 'commander';
import type { House } from '../../core/model/index.js';
import { read, unread } from '../../base/units/index.js';
import {
  readRoomLine,
  readTyped,
  recordText,
  roomOfLine,
  selectionsFor,
  usualCeiling,
  usualUse,
} from '../../draft/index.js';
import type { Console } from '../console.js';
import { addingCommand, addRecords, openToAdd } from './add-records.js';
import { take, valueOf } from './take.js';

interface RoomFlags {
  readonly house: string;
  readonly level?: string;
  readonly ceiling?: string;
}

/** `bookmatch new room "Loft 12' x 10'"`: one more rectangular room, with what is to be chosen in it. */
export function newRoom(console: Console, done: (code: number) => void): Command {
  return addingCommand('room')
    .description('a rectangular room, with what is to be chosen in it')
    .argument(
      '[name-and-size]',
      `its name and size, such as "Loft 12' x 10'" or "Loft 3.6 x 3 m"; as study where the name does not tell`,
    )
    .option('--level <level>', 'the level it is on')
    .option('--ceiling <height>', 'height of its ceiling')
    .action(async (line: string | undefined, flags: RoomFlags) => {
      const adding = await openToAdd(flags.house, 'room', console);
      if (!adding) return done(1);
      const { rooms, house, categories } = adding.records;
      const said = await take(
        {
          line: {
            flag: `its name and size, such as "Loft 12' x 10'"`,
            given: line,
            asks: 'Name and size, east-west by north-south',
            example: `Loft 12' x 10', or Loft 3.6 x 3 m`,
            read: (text) => {
              const room = readRoomLine(text);
              if (!room.ok || !rooms.some(({ name }) => name.toLowerCase() === room.value.name.toLowerCase()))
                return room;
              return unread(`there is a room '${room.value.name}' already`, 'give it another name');
            },
          },
          level: levelWanted(house, flags.level),
          ceiling: {
            flag: '--ceiling',
            given: flags.ceiling,
            asks: 'How high is its ceiling?',
            usual: usualCeiling(),
            read: readTyped.ceiling,
          },
        },
        console.asker(),
      );
      const asked = valueOf(readRoomLine(said.line));
      const { slug, values } = roomOfLine(asked, {
        number: nextNumber(rooms.map(({ number }) => number)),
        level: said.level,
        ceiling: valueOf(readTyped.ceiling(said.ceiling)),
        taken: new Set(rooms.map((room) => room.slug)),
      });
      const allowances = new Map(house.allowances.flatMap(({ id, categories: all }) => all.map((one) => [one, id])));
      const selections = selectionsFor(values.use, new Set(categories.map((category) => category.slug)), allowances);
      const path = `content/rooms/${slug}.md`;
      const text = recordText(selections.length === 0 ? values : { ...values, selections });
      if (!(await addRecords(adding, [{ path, text }], console))) return done(1);
      const guessed =
        asked.use === undefined ? `It is written as ${usualUse}: change use there if it is something else.\n` : '';
      console.tell(`${path}  ${values.number} ${values.name}\n${guessed}\n  bookmatch check${adding.house}\n`);
      done(0);
    });
}

function levelWanted({ levels }: House, given: string | undefined): Parameters<typeof take>[0][string] {
  const ids = levels.map(({ id }) => id);
  const [only, ...others] = ids;
  return {
    flag: `--level ${ids.join('|')}`,
    given,
    asks: 'On which level?',
    choices: levels.map(({ id, name }) => ({ value: id, label: name })),
    ...(only !== undefined && others.length === 0 && { given: given ?? only }),
    read: (text) =>
      ids.includes(text) ? read(text) : unread(`there is no level '${text}'`, `levels are ${ids.join(', ')}`),
  };
}

/** One more than the highest number of a room; letters behind numbers are no numbers. */
function nextNumber(numbers: readonly string[]): string {
  const counted = numbers.filter((number) => /^\d{1,9}$/u.test(number)).map(Number);
  return String(Math.max(100, ...counted) + 1);
}
