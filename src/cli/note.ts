import { Command, Option } from 'commander';
import { lookUp, type Book, type BookRoom } from '../core/book/index.js';
import { selectionId, type Records } from '../core/model/index.js';
import { appendProse, openMark, setKeys } from '../core/records/index.js';
import { placeWritten } from '../base/problem/index.js';
import { printDay, type IsoDate } from '../base/units/index.js';
import { personNamed } from '../signoff/index.js';
import { choiceText } from '../table/index.js';
import { changeRecords, type Change } from './change-records.js';
import { namePlace, roomNamed } from './choose/name-choice.js';
import type { Console } from './console.js';
import { withHouseOptions, type HouseOptions } from './house-options.js';
import { UsageError } from './usage-error.js';

interface NoteOptions extends HouseOptions {
  readonly say: string;
  readonly by?: string;
  readonly for?: 'book' | 'trades';
}

const help = `
For example:
  bookmatch note 'Great room' Floor --say 'Boards run north and south.'
  bookmatch note 'Great room' --say 'The picture rail stays where it is.' --by owner
  bookmatch note 'Great room' Floor --say ''    takes the remark away
`;

/** `bookmatch note ROOM PLACE --say WORDS`: the remark for the trade at a place; without a place, one more paragraph of what the room's record tells. */
export function note(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('note'))
    .argument('<room>', 'the room')
    .argument('[place]', 'its category, its place or both, as a page prints them; absent: the room itself')
    .requiredOption('--say <words>', 'the words; at a place, none take its remark away')
    .option('--by <person>', 'of a room: who says it, a name or a role among the people of content/house.md')
    .addOption(
      new Option('--for <readers>', 'of a room: who reads it; trades read it in their handouts as well').choices([
        'book',
        'trades',
      ]),
    )
    .addHelpText('after', help)
    .action(async (room: string, place: string | undefined, options: NoteOptions) => {
      const words = readWords(options.say);
      done(
        await changeRecords(options, console, ({ book, records, on }) =>
          place === undefined
            ? inRoom(roomNamed(book, room), words, options, { records, on })
            : atPlace(book, [room, place], words, options, records),
        ),
      );
    });
}

/** Lines of a paragraph. */
type Paragraph = readonly string[];

function readWords(text: string): readonly Paragraph[] {
  if (/<!--|-->/u.test(text)) throw wrong('--say  a note has no <!-- marks -->: --for says who reads it');
  const paragraphs = text.split(/\r?\n\s*\n/u).map(linesOf);
  if (paragraphs.flat().some((one) => /\p{Cc}/u.test(one)))
    throw wrong('--say  it has a character that cannot be printed: write it in letters, digits and signs');
  return paragraphs.filter(({ length }) => length > 0);
}

function linesOf(text: string): Paragraph {
  const lines = text.split(/\r?\n/u).map((line) => line.trim().replaceAll(/\s+/gu, ' '));
  return lines.filter((line) => line !== '');
}

/** In Markdown, where a line ends by itself only before what begins a list, a heading or a quotation. */
function inMarkdown(lines: Paragraph): string {
  return lines.reduce((text, line) => `${text}${/^(?:(?:[-*+]|#+|\d+[.)])\s|>)/u.test(line) ? '' : '\\'}\n${line}`);
}

/** Where a finish set gives the place to several rooms, the remark stands there, once. */
function atPlace(
  book: Book,
  named: readonly [string, string],
  words: readonly Paragraph[],
  options: NoteOptions,
  { rooms, sources }: Records,
): Change {
  if (options.by !== undefined || options.for !== undefined)
    throw wrong('--by and --for are of a room: what is said at a place is a remark for the trade that works there');
  const { id } = namePlace(book, named);
  const where = choiceText(id, lookUp(book));
  const found = rooms.flatMap((room) =>
    room.selections.flatMap((one) =>
      selectionId(room.slug, one) === id ? [{ ...placeWritten(room.origin, one.path), set: one.finishSet }] : [],
    ),
  );
  const [first] = found;
  if (!first) throw new Error('a selection of the Book is in no record');
  const { origin, path, set } = first;
  const text = sources.find((source) => source.path === origin.file)?.text ?? '';
  const said = words.flat().join(' ');
  const values = { note: said === '' ? undefined : said };
  const all = set === undefined ? '' : `, in all rooms of the finish set “${set}”`;
  return {
    written: [{ path: origin.file, text: setKeys(text, [{ in: path, values, after: [] }]) }],
    tells: said === '' ? `${where}${all}: no remark any more.` : `${where}${all}: ${said}`,
    already: said === '' ? `${where}: there is no remark.` : `${where}: that is its remark already.`,
  };
}

/** One more paragraph, or several, of the room's prose: with who says it, and when. */
function inRoom(
  { slug, name, number }: BookRoom,
  words: readonly Paragraph[],
  { by, for: readers = 'book' }: NoteOptions,
  { records: { rooms, house, sources }, on }: { readonly records: Records; readonly on: IsoDate },
): Change {
  const [first, ...rest] = words;
  if (first === undefined) throw wrong('--say  it is empty: write what is to be said');
  const person = by === undefined ? undefined : personNamed(house.people, by);
  if (person && !person.ok) throw wrong(`--by  ${person.why}`);
  const path = rooms.find((room) => room.slug === slug)?.origin.file ?? '';
  const text = sources.find((source) => source.path === path)?.text ?? '';
  const open = openMark(text);
  if (open) throw wrong(`${path}: <!-- ${open.name} --> is never closed, and would take in the note. Close it first`);
  const who = person?.ok === true ? `**${person.name}, ${printDay(on)}.** ` : '';
  const said = [[`${who}${first[0] ?? ''}`, ...first.slice(1)], ...rest].map(inMarkdown);
  const marked = readers === 'trades' ? [`<!-- trades -->\n${said.join('\n\n')}\n<!-- /trades -->`] : said;
  const isThere = text.replaceAll('\r\n', '\n').includes(`\n${marked.join('\n\n')}\n`);
  return {
    written: isThere ? [] : [{ path, text: appendProse(text, marked) }],
    tells: `${number} ${name}: ${first.join(' ')}`,
    already: `${number} ${name}: it says that already.`,
  };
}

function wrong(why: string): UsageError {
  return new UsageError(`${why}. Nothing was written.`);
}
