import type { Command } from 'commander';
import type { House } from '../../core/model/index.js';
import { read, unread } from '../../base/units/index.js';
import {
  readRoomLine,
  readRoomName,
  readTyped,
  recordText,
  roomOfLine,
  selectionsFor,
  usualCeiling,
  usualUse,
  openWords,
  readWalk,
  type Walk,
} from '../../draft/index.js';
import { typed, type Console } from '../console.js';
import { eachGiven } from '../each-given.js';
import { UsageError } from '../usage-error.js';
import { addingCommand, addRecords, openToAdd } from './add-records.js';
import { take, valueOf } from './take.js';

interface RoomFlags {
  readonly house: string;
  readonly level?: string;
  readonly ceiling?: string;
  readonly wall: readonly string[];
}

/** `bookmatch new room "Loft 12' x 10'"`: one more room, with what is to be chosen in it; by its walls where it is no rectangle. */
export function newRoom(console: Console, done: (code: number) => void): Command {
  return addingCommand('room')
    .description('a room, with what is to be chosen in it')
    .argument(
      '[name-and-size]',
      `its name and size, such as "Loft 12' x 10'" or "Loft 3.6 x 3 m"; as study where the name does not tell`,
    )
    .option(
      '--wall <way-and-length>',
      `a wall as walked with a tape, clockwise, in place of the size: "east 14' 2\\""; again for each`,
      eachGiven,
      [],
    )
    .option('--level <level>', 'the level it is on')
    .option('--ceiling <height>', 'height of its ceiling')
    .action(async (line: string | undefined, flags: RoomFlags) => {
      const adding = await openToAdd(flags.house, 'room', console);
      if (!adding) return done(1);
      const { rooms, house, categories } = adding.records;
      const walk = walkOf(flags.wall);
      const readLine = walk ? readRoomName : readRoomLine;
      const said = await take(
        {
          line: {
            flag: walk ? 'its name' : `its name and size, such as "Loft 12' x 10'"`,
            given: line,
            asks: walk ? 'Name' : 'Name and size, east-west by north-south',
            example: walk ? 'Loft' : `Loft 12' x 10', or Loft 3.6 x 3 m`,
            read: (text) => {
              const room = readLine(text);
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
      const asked = walk
        ? { ...valueOf(readRoomName(said.line)), walls: walk.walls }
        : valueOf(readRoomLine(said.line));
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
      console.tell(
        `${path}  ${values.number} ${values.name}\n${guessed}${typed(`\n  bookmatch check${adding.house}\n`, console)}`,
      );
      done(0);
    });
}

/** Walls that come back to where they began; undefined where the room is said by its size. */
function walkOf(lines: readonly string[]): Walk | undefined {
  if (lines.length === 0) return undefined;
  const walk = readWalk(lines);
  if (!walk.ok)
    throw new UsageError(`--wall  ${walk.why}${walk.fix === undefined ? '' : `: ${walk.fix}`}. Nothing was written.`);
  const open = openWords(lines, walk.value);
  if (open === undefined) return walk.value;
  throw new UsageError(`--wall  ${open} Nothing was written.`);
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
