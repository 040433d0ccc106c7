import { resolve } from 'node:path';
import { plusDays, workingDays } from '../../core/calendar/index.js';
import { hasErrors, printProblems } from '../../base/problem/index.js';
import { counted, joinWords, read, speakAs, type IsoDate } from '../../base/units/index.js';
import { beginHistory } from '../../disk/history/index.js';
import { composeBook, measureFiles } from '../../disk/load/index.js';
import { OutputRefused, refuseTaken, writeNewFolder } from '../../disk/store/index.js';
import {
  draftHouse,
  modelReport,
  readAnswers,
  readRoomLine,
  readRooms,
  readTyped,
  roomsOfLines,
  roomsOfModel,
  usualUse,
  type DraftedRoom,
  type HouseAnswers,
  type Question,
  type Refused,
  type RoomLine,
  type Typed,
} from '../../draft/index.js';
import type { Asker } from '../asker.js';
import type { Console } from '../console.js';
import { demoRecords } from '../demo-records.js';
import { readModel } from '../read-model.js';
import { shellWord } from '../shell-word.js';
import { UsageError } from '../usage-error.js';
import { readSignedIn } from './signed-amount.js';
import { houseQuestions, type HouseQuestion } from './house-questions.js';

/** Flags of `bookmatch new DIR`, as commander names them. */
export interface HouseFlags {
  readonly name?: string;
  readonly place?: string;
  readonly units?: string;
  readonly currency?: string;
  readonly climateZone?: string;
  readonly sum?: string;
  readonly owner?: string;
  readonly builder?: string;
  readonly ceiling?: string;
  readonly start?: string;
  readonly room: readonly string[];
  readonly from?: string;
  readonly yes?: boolean;
}

/** `bookmatch new DIR`: a house of one's own from a few answers. Nothing is written where one of them cannot be taken. The exit code: 1 where
 *  a model has spaces that are left out. */
export async function newHouse(dir: string, flags: HouseFlags, console: Console): Promise<number> {
  if (flags.from !== undefined && flags.room.length > 0)
    throw new UsageError('rooms come from --room or from the model of --from, not from both. Nothing was written.');
  await refusing(dir);
  const asker = flags.yes ? undefined : console.asker();
  const given = givenBy(flags);
  const start = usualStart(console.today());
  const usual = (question: HouseQuestion): string | undefined => question.usual?.({ start });
  if (!asker) refuseMissing(given, flags);
  refuseWrong(given, flags.room);
  const { typed, lines } = await askTheRest(given, flags, asker, usual);
  const { answers, rooms } = taken(typed, lines);
  speakAs(answers.locale);
  const drafted = flags.from === undefined ? ofLines(rooms, answers.ceiling) : await ofModel(flags.from);
  const files = draftHouse(answers, drafted, await demoRecords(), console.today());
  const records = files.filter(({ path }) => path.startsWith('content/'));
  const { problems } = composeBook(measureFiles(records), console.today());
  if (hasErrors(problems)) throw new UsageError(printProblems(problems).trimEnd());
  const texts = new Map(files.map(({ path, text }) => [path, text]));
  let history: History = { ok: true };
  await refuse(() =>
    writeNewFolder(dir, texts, async (folder) => {
      history = await beginHistory(folder, `${answers.name} begins`);
    }),
  );
  console.tell(told(dir, answers, drafted, history.ok));
  if (!history.ok) console.error(unkept(history));
  if (drafted.report !== '') console.out(drafted.report);
  return drafted.isWhole ? 0 : 1;
}

type History = Awaited<ReturnType<typeof beginHistory>>;

interface Drafted {
  readonly rooms: readonly DraftedRoom[];
  readonly levels: Parameters<typeof draftHouse>[1]['levels'];
  /** Rooms whose name does not tell what they are used for. */
  readonly guessed: readonly DraftedRoom[];
  /** What became of a model's spaces. */
  readonly report: string;
  readonly isWhole: boolean;
}

function ofLines(lines: readonly RoomLine[], ceiling: string): Drafted {
  const rooms = roomsOfLines(lines, ceiling);
  const guessed = rooms.filter((_, index) => lines[index]?.use === undefined);
  return { rooms, levels: [], guessed, report: '', isWhole: true };
}

async function ofModel(file: string): Promise<Drafted> {
  const { value: model, problems } = await readModel(file);
  if (!model) throw new UsageError(`${printProblems(problems).trimEnd()}\nNothing was written.`);
  if (model.files.size === 0) throw new UsageError(`${modelReport(model)}Nothing was written.`);
  const levels = model.levels.map((level) => ({ ...level, isKnown: true }));
  const isWhole = model.spaces.every(({ path }) => path !== undefined);
  return { ...roomsOfModel(model), report: `\n${modelReport({ ...model, levels })}`, isWhole };
}

function givenBy(flags: HouseFlags): Partial<Typed> {
  const { name, place, units, currency, climateZone: zone, sum, owner, builder, ceiling, start } = flags;
  const all = { name, place, units, currency, zone, sum, owner, builder, ceiling, start };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
}

/** The first working day a quarter of a year from now. */
function usualStart(today: IsoDate): IsoDate {
  return workingDays({ weekend: ['saturday', 'sunday'], holidays: 'us-federal', closed: [], reviewDays: 0 }).onOrAfter(
    plusDays(today, 90),
  );
}

function refuseMissing(given: Partial<Typed>, { room, from }: HouseFlags): void {
  const missing = houseQuestions.filter(({ is, usual }) => usual === undefined && given[is] === undefined);
  const flags = [...missing.map(({ flag }) => flag), ...(room.length === 0 && from === undefined ? [roomFlag] : [])];
  if (flags.length === 0) return;
  throw new UsageError(`A new house needs ${joinWords(flags)}. Nothing was written.`);
}

const roomFlag = `--room "Kitchen 14' x 12'" for each room (or --from FILE.ifc)`;

/** What was given with flags is looked at before anything is asked. */
function refuseWrong(given: Partial<Typed>, rooms: readonly string[]): void {
  const typed = { ...harmless, ...given };
  const house = readAnswers(typed);
  const refused = house.ok ? [] : house.refused;
  const isRead = !refused.some(({ question }) => question === 'units');
  const inRooms = isRead && rooms.length > 0 ? readRooms(rooms, localeOf(typed)).refused : [];
  const sum = given.sum === undefined ? undefined : readSignedIn(localeOf(typed), given.sum, readTyped.sum);
  const unsigned: readonly Refused[] = sum && !sum.ok && house.ok ? [{ question: 'sum', ...sum }] : [];
  tell([...refused, ...unsigned, ...inRooms]);
}

/** Answers that are taken whatever the others are. */
const harmless: Typed = {
  name: 'House',
  place: 'Place',
  units: 'feet',
  currency: 'USD',
  zone: '',
  sum: '',
  owner: 'Owner',
  builder: 'Builder',
  ceiling: '2.5 m',
  start: '2000-01-03',
};

function localeOf(typed: Typed): HouseAnswers['locale'] {
  const read = readAnswers({ ...harmless, units: typed.units, currency: typed.currency });
  return read.ok ? read.answers.locale : { units: 'customary', currency: 'USD' };
}

function tell(refused: readonly Refused[]): void {
  if (refused.length === 0) return;
  const lines = refused.map(({ question, why, fix }) => {
    const flag = question === 'room' ? '--room' : (houseQuestions.find(({ is }) => is === question)?.flag ?? question);
    return `${flag.split(' ')[0] ?? ''}  ${why}${fix === undefined ? '' : `: ${fix}`}`;
  });
  throw new UsageError(`${lines.join('\n')}\nNothing was written.`);
}

interface Answered {
  readonly typed: Typed;
  readonly lines: readonly string[];
}

/** Asks what no flag answered, one after another; where nobody is to be asked, what usually holds. */
async function askTheRest(
  given: Partial<Typed>,
  { room, from }: HouseFlags,
  asker: Asker | undefined,
  usual: (question: HouseQuestion) => string | undefined,
): Promise<Answered> {
  const answered: Record<Question, string> = { ...harmless };
  for (const question of houseQuestions) {
    const { is } = question;
    answered[is] = given[is] ?? (asker ? await ask(question, usual(question), asker) : (usual(question) ?? ''));
    // From here on, lengths and money are read as this house has them.
    if (is === 'currency')
      speakAs(taken({ ...harmless, units: answered.units, currency: answered.currency }, []).answers.locale);
  }
  const lines = asker && room.length === 0 && from === undefined ? await askRooms(asker) : room;
  return { typed: answered, lines };
}

function ask({ is, asks, example }: HouseQuestion, usual: string | undefined, asker: Asker): Promise<string> {
  if (is === 'units') {
    return asker.choice(asks, [
      { value: 'feet', label: 'Feet and inches' },
      { value: 'metres', label: 'Metres' },
    ]);
  }
  const shown = { ...(example !== undefined && { example }), ...(usual !== undefined && { usual }) };
  return asker.text({ asks, read: readTyped[is], ...shown });
}

/** Rooms one by one, until an empty answer. */
async function askRooms(asker: Asker): Promise<readonly string[]> {
  const lines: string[] = [];
  for (;;) {
    const isFirst = lines.length === 0;
    const line = await asker.text({
      asks: isFirst ? 'First room: name and size, east-west by north-south' : 'Next room; nothing when that is all',
      ...(isFirst ? { example: "Kitchen 14' x 12', or Kitchen 4.2 x 3.6 m" } : { usual: '' }),
      read: (text) => (text.trim() === '' && !isFirst ? read('') : readNext(lines, text)),
    });
    if (line.trim() === '') return lines;
    lines.push(line);
  }
}

function readNext(before: readonly string[], line: string): ReturnType<typeof readRoomLine> {
  const room = readRoomLine(line);
  const names = before.flatMap((text) => nameOf(text) ?? []);
  if (!room.ok || !names.includes(room.value.name.toLowerCase())) return room;
  return { ok: false, why: `there is a room '${room.value.name}' already`, fix: `name it ${room.value.name} 2` };
}

function nameOf(line: string): string | undefined {
  const room = readRoomLine(line);
  return room.ok ? room.value.name.toLowerCase() : undefined;
}

function taken(
  typed: Typed,
  lines: readonly string[],
): { readonly answers: HouseAnswers; readonly rooms: readonly RoomLine[] } {
  const house = readAnswers(typed);
  if (!house.ok) {
    tell(house.refused);
    throw new UsageError('Nothing was written.');
  }
  const { rooms, refused } = readRooms(lines, house.answers.locale);
  tell(refused);
  return { answers: house.answers, rooms };
}

/** A folder that cannot become a new one is wrong usage. */
export function refusing(dir: string): Promise<void> {
  return refuse(() => refuseTaken(dir));
}

async function refuse(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (error instanceof OutputRefused) throw new UsageError(`${error.message}. Nothing was written.`);
    throw error;
  }
}

/** What was made, what was taken for granted, and how to go on. */
function told(dir: string, { name }: HouseAnswers, { rooms, guessed }: Drafted, isKept: boolean): string {
  const unsure = guessed.map(({ slug, values }) => `${values.name} (content/rooms/${slug}.md)`);
  const uses =
    unsure.length === 0
      ? ''
      : `${joinWords(unsure)} ${unsure.length === 1 ? 'is' : 'are'} written as ${usualUse}: change use there if it is something else.\n`;
  const kept = isKept ? 'It is under git, with its first commit.\n' : '';
  const house = dir === '.' ? '' : ` --house ${shellWord(dir)}`;
  return (
    `${resolve(dir)}  ${name}, ${counted(rooms.length, 'room')}; README.md there says what is what\n${uses}${kept}\n` +
    `  bookmatch check${house}\n  bookmatch new option floor${house}\n  bookmatch build${house}\n`
  );
}

/** Why there is no first commit, and what makes one. */
function unkept({ isUnderGit, why }: Extract<History, { ok: false }>): string {
  return isUnderGit
    ? `It is under git without a commit yet, as ${why}:\n` +
        '  git config user.name "Your name"; git config user.email you@example.org; git commit -m "The house begins"\n'
    : `It is not under git yet (${why}): git init, git add --all and git commit keep its history.\n`;
}
