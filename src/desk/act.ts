import { errorsIn } from '../base/problem/index.js';
import { readFile, realpath, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { counted } from '../base/units/index.js';
import type { Source } from '../core/model/index.js';
import { workingTree } from '../disk/history/index.js';
import { largestRecord, photoPath } from '../core/records/index.js';
import { oneAtATime, readFileInside, writeAtomically } from '../disk/store/index.js';
import { askConsider } from './ask-consider.js';
import { digestOfBytes } from '../signoff/index.js';
import { asksToAgree, committing } from './ask-agree.js';
import { askOption, askWalk, asksForNew } from './ask-new.js';
import { askRemark, askRoomNote } from './ask-note.js';
import { asksForPhoto } from './ask-photo.js';
import { askChoice } from './ask-place.js';
import { wordsOf, type Ask } from './ask.js';
import type { Posted } from './posted.js';
import { noRecordWords, type Unsaved } from './record-page.js';
import type { LastDone, Said } from './said.js';
import { digestOfText, inLocaleOf, type Standing, type Watched } from './standing.js';

/** Runs one command line of the program on the house, and answers whether it was done, and what it said. */
export type Run = (words: readonly string[]) => Promise<Said>;

/** What the desk does beside running commands. */
export interface Means {
  readonly run: Run;
  /** Commits records with a sentence, as whoever git says is here. */
  readonly commit: (files: readonly string[], sentence: string) => Promise<Said>;
  /** Holds a slip against the records, or takes it in; all of it, or what can be taken. */
  readonly slip: (text: string, how: TakingIn) => Promise<Said>;
  /** Lets a file that was sent be named on a command line, for as long as that runs. */
  readonly withFile: <T>(bytes: Uint8Array, use: (path: string) => Promise<T>) => Promise<T>;
  /** What the records on disk change against the last version, in words and money. */
  readonly difference: () => Promise<string | undefined>;
}

/** What of a slip is meant, and whether it is written. */
export interface TakingIn {
  readonly what: SlipPart;
  readonly isWritten: boolean;
}

/** All of a slip, or what of it nothing is against. */
export type SlipPart = 'all' | 'rest';

export interface Performed {
  readonly said: Said;
  /** Shown instead of leading back: what was written is still there. */
  readonly page?:
    | { readonly is: 'record'; readonly path: string; readonly unsaved: Unsaved }
    | { readonly is: 'slip'; readonly slip: string; readonly takes?: SlipPart };
}

export interface Act {
  /** One after the other: two forms that come at once never write into each other. */
  readonly perform: (form: URLSearchParams, file?: Uint8Array) => Promise<Performed>;
  readonly lastDone: () => LastDone | undefined;
  readonly unrecorded: () => Promise<{ readonly changed?: readonly string[]; readonly difference?: string }>;
}

interface Done extends LastDone {
  readonly files: readonly Written[];
}

/** A file that was written: what it was, as a text or, of a photograph, as bytes, and the digest of what it is; absent where there was or is none. */
interface Written {
  readonly path: string;
  readonly before?: string | Uint8Array;
  readonly after?: string;
}

/** How many things can be taken back. */
const mostUndone = 100;

export function actOn(dir: string, watched: Watched, means: Means): Act {
  const journal: Done[] = [];
  let count = 0;
  let line: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(act: () => Promise<T>): Promise<T> => {
    const next = line.then(act);
    line = next.catch(() => undefined);
    return next;
  };
  const perform = async (form: URLSearchParams, file?: Uint8Array): Promise<Performed> => {
    const before = await watched.refresh();
    const id = form.get('ask') ?? '';
    if (id === 'undo') return { said: await oneAtATime(dir, () => undo(dir, journal, form)) };
    const photosBefore = await photosOf(dir, id, before);
    const performed = await performOne(dir, id, { form, ...(file && { file }) }, before, means);
    // What is in a version is not taken back: another version says otherwise.
    if (id === 'version' && performed.said.isDone) journal.length = 0;
    const after = await watched.refresh();
    const photos = moved(photosBefore, await photosOf(dir, id, after));
    const differs = differing(before.sources, after.sources);
    // What an editor wrote in the same moment is not the desk's to take back.
    const files = id === 'save' ? differs.filter(({ path }) => path === form.get('path')) : differs;
    const done = { number: count + 1, what: whatOf(id, form, before), files: [...photos, ...files] };
    if (!isTakenBack(id, done, performed)) return performed;
    count += 1;
    journal.push(done);
    if (journal.length > mostUndone) journal.shift();
    return id === 'save'
      ? { ...performed, said: withErrors(performed.said, form.get('path') ?? '', after) }
      : performed;
  };
  return {
    perform: (form, file) => inTurn(() => perform(form, file)),
    lastDone: () => journal.at(-1),
    unrecorded: async () => {
      const tree = await workingTree(dir);
      if (!tree.ok) return {};
      const difference = tree.changed.length > 0 ? await means.difference() : undefined;
      return { changed: tree.changed, ...(difference !== undefined && { difference }) };
    },
  };
}

/** What git has is not taken back here: what was committed stays, and another commit says otherwise. Where git would not, the record was written all the same. */
function isTakenBack(id: string, { files }: Done, { said: { isDone } }: Performed): boolean {
  const isCommitted = committing.includes(id);
  return files.length > 0 && isDone !== isCommitted;
}

async function performOne(
  dir: string,
  id: string,
  { form, file }: Posted,
  standing: Standing,
  means: Means,
): Promise<Performed> {
  if (id === 'save') return save(dir, form, standing);
  if (id === 'version') return { said: await recordVersion(dir, form, standing, means) };
  if (id === 'slip') return takeSlip(form.get('slip') ?? '', form.get('do'), means);
  const ask = askNamed(id, standing);
  if (!ask) return { said: { isDone: false, words: 'There is no such form any more: the records changed.' } };
  if (ask.was !== undefined && ask.was !== (form.get('was') ?? '').replaceAll('\r\n', '\n')) {
    const [now, then] = [ask.was, form.get('was') ?? ''].map((text) => (text === '' ? 'empty' : text));
    return { said: { isDone: false, words: `It is ${now} meanwhile, no longer ${then}. Look again, then write.` } };
  }
  const filled = new URLSearchParams(form);
  // What the form is about stands in the form's own name, and is never taken from what was sent.
  for (const { name, kind, value = '' } of ask.fields) if (kind === 'picked') filled.set(name, value);
  // Where a file lies is nobody's to say.
  for (const { name } of ask.fields.filter(({ kind }) => kind === 'file')) filled.delete(name);
  const run = async (): Promise<Said> => inWordsOf(ask, await means.run(wordsOf(ask, filled)));
  if (!file) return { said: await run() };
  return means.withFile(file, async (path) => {
    for (const { name } of ask.fields.filter(({ kind }) => kind === 'file')) filled.set(name, path);
    const said = await run();
    return { said: { ...said, words: said.words.replaceAll(path, 'The photograph') } };
  });
}

/** What a command says of its flags, said of the fields of the form that filled them. */
function inWordsOf({ fields }: Ask, said: Said): Said {
  const labels = new Map(fields.map(({ as, label }) => [as as string, label]));
  const words = said.words.replaceAll(/(?<![\w-])--[a-z][a-z-]*/gu, (flag) => {
    const label = labels.get(flag);
    return label === undefined || label === '' ? flag : `'${label}'`;
  });
  return { ...said, words };
}

/** Takes a slip in where that is asked for; else tells what that would come to, of what can be taken where not all can. */
async function takeSlip(slip: string, asked: string | null, means: Means): Promise<Performed> {
  if (asked === 'all' || asked === 'rest') {
    const said = await means.slip(slip, { what: asked, isWritten: true });
    if (!said.isDone) return { said: { ...said, isWhole: true }, page: { is: 'slip', slip } };
    const isPart = asked === 'rest';
    return {
      said: { ...said, ...(isPart && { isWhole: true, head: 'What could be taken is written, the rest is not.' }) },
    };
  }
  const held = async (what: SlipPart, head: string): Promise<Performed> => {
    const said = await means.slip(slip, { what, isWritten: false });
    const takes = said.isDone && { takes: what };
    return { said: { ...said, isWhole: true, ...(said.isDone && { head }) }, page: { is: 'slip', slip, ...takes } };
  };
  const all = await held('all', 'It can be taken in. Nothing is written yet.');
  if (all.said.isDone) return all;
  const rest = await held('rest', 'Not all of it can be taken in. Nothing is written yet.');
  return rest.said.isDone ? rest : all;
}

function askNamed(id: string, standing: Standing): Ask | undefined {
  const { view } = standing;
  if (!view) return undefined;
  const [kind, ...of] = id.split('/');
  const selection = view.book.selections.find((one) => one.id === of.join('/'));
  if (selection && kind === 'choose') return askChoice(selection, standing);
  if (selection && kind === 'consider') return askConsider(selection, standing);
  if (selection && kind === 'remark') return askRemark(selection);
  const room = kind === 'note' ? view.room(of.join('/')) : undefined;
  if (room) return askRoomNote(room, standing);
  const option = kind === 'photo' || kind === 'no-photo' ? view.optionById(of.join('/')) : undefined;
  if (option) return asksForPhoto(option).find((ask) => ask.id === id);
  const category = kind === 'new-option' ? view.category(of.join('/')) : undefined;
  if (category) return inLocaleOf(standing, () => askOption(view, category));
  return [...asksForNew(view), askWalk(view), ...asksToAgree(view)].find((ask) => ask.id === id);
}

/** Saves a record's text as it was written, right or wrong, unless it is no longer what the writer saw. What cannot be saved is shown again. */
async function save(dir: string, form: URLSearchParams, standing: Standing): Promise<Performed> {
  const path = form.get('path') ?? '';
  const written = form.get('text') ?? '';
  const source = standing.sources.find((one) => one.path === path);
  // Only records that are there, inside the house.
  if (!source || path.startsWith('..')) return notSaved(path, { text: written }, noRecordWords(path, standing));
  const file = await fileOf(dir, path);
  return oneAtATime(dir, () => saveIn(file, path, written, form.get('digest') ?? ''));
}

async function saveIn(file: string, path: string, written: string, digest: string): Promise<Performed> {
  const theirs = await readFile(file, 'utf8').catch(() => undefined);
  if (theirs === undefined) return notSaved(path, { text: written }, 'The record is gone.');
  const text = withEndsOf(theirs, written);
  if (digestOfText(theirs) !== digest)
    return notSaved(path, { text, theirs }, 'The record changed on disk since you opened it.');
  if (text === theirs) return { said: { isDone: true, words: 'It says what it said.' } };
  const why = unreadable(text) ?? (await refusedBy(() => writeAtomically(file, text)));
  if (why !== undefined) return notSaved(path, { text }, why);
  return { said: { isDone: true, words: `Saved ${path}` } };
}

/** A text is saved right or wrong; that it is wrong is said with it. */
function withErrors(said: Said, path: string, { problems, isEarlier }: Standing): Said {
  const errors = errorsIn(problems).filter(({ file }) => file === path).length;
  if (!said.isDone || errors === 0) return said;
  const shown = isEarlier ? ' The book shows the records as they were before.' : '';
  return { ...said, head: `Saved, with ${counted(errors, 'error')}.${shown}` };
}

function notSaved(path: string, unsaved: Unsaved, words: string): Performed {
  return { said: { isDone: false, words }, page: { is: 'record', path, unsaved } };
}

/** Why a text would be no record when it is read again: it could not be mended here then. */
function unreadable(text: string): string | undefined {
  const bytes = Buffer.byteLength(text);
  if (bytes > largestRecord)
    return `The text has ${(bytes / 1_000_000).toFixed(1)} MB; a record has 1 MB at most. Keep long papers outside content/.`;
  if (text.includes('\0')) return 'The text holds a character without meaning (NUL). Take it out.';
  return undefined;
}

/** Why the disk would not; undefined where it did. */
function refusedBy(write: () => Promise<void>): Promise<string | undefined> {
  return write().then(
    () => undefined,
    (error: unknown) => {
      const [why] = error instanceof Error ? error.message.split(',') : [];
      return `The disk would not take it${why === undefined ? '' : `: ${why}`}. The record is as it was.`;
    },
  );
}

/** A link to a record stays a link: what it leads to is written. */
function fileOf(dir: string, path: string): Promise<string> {
  return realpath(join(dir, path)).catch(() => join(dir, path));
}

/** Forms send lines that end in CR LF; a record keeps the ends that it had. */
function withEndsOf(before: string, text: string): string {
  const lines = text.replaceAll('\r\n', '\n').replaceAll('\r', '\n');
  return before.includes('\r\n') ? lines.replaceAll('\n', '\r\n') : lines;
}

async function recordVersion(
  dir: string,
  form: URLSearchParams,
  { sources, problems }: Standing,
  { commit }: Means,
): Promise<Said> {
  const sentence = (form.get('sentence') ?? '').replaceAll(/\s+/gu, ' ').trim();
  if (sentence === '') return { isDone: false, words: 'Say in a sentence what changed.' };
  const tree = await workingTree(dir);
  if (!tree.ok) return { isDone: false, words: tree.why };
  if (tree.changed.length === 0) return { isDone: false, words: 'Nothing changed since the last version.' };
  if (sources.length === 0)
    return {
      isDone: false,
      words: 'There is no record in the folder any more: a version without them is not recorded here.',
    };
  const errors = errorsIn(problems).length;
  const said = await commit(tree.changed, sentence);
  return said.isDone && errors > 0
    ? { ...said, head: `Recorded, with ${counted(errors, 'error')} in the records.` }
    : said;
}

/** Puts back what was done last, unless it was changed since. */
async function undo(dir: string, journal: Done[], form: URLSearchParams): Promise<Said> {
  const last = journal.at(-1);
  if (!last) return { isDone: false, words: 'There is nothing to take back.' };
  // Another window may have done something since this one was shown.
  if (String(last.number) !== form.get('number'))
    return { isDone: false, words: `What was done last is another by now: ${last.what}. Look again.` };
  for (const { path, after } of last.files) {
    const now = await readFile(join(dir, path)).catch(() => undefined);
    if ((now && digestOfBytes(now)) !== after)
      return { isDone: false, words: `${path} changed since: it is not taken back.` };
  }
  for (const { path, before } of last.files)
    await (before === undefined ? rm(join(dir, path)) : writeAtomically(await fileOf(dir, path), before));
  journal.pop();
  return { isDone: true, words: `Taken back: ${last.what}` };
}

/** The photograph of the option that a form is about, by its path; empty for any other form. */
async function photosOf(dir: string, id: string, { view }: Standing): Promise<ReadonlyMap<string, Uint8Array>> {
  const [kind, ...of] = id.split('/');
  const option = kind === 'photo' || kind === 'no-photo' ? view?.optionById(of.join('/')) : undefined;
  if (!option?.photo) return new Map();
  const path = photoPath(option.source, option.photo.file);
  const bytes = await readFileInside(dir, path);
  return new Map(bytes ? [[path, bytes]] : []);
}

/** Files that came, and files that went. */
function moved(before: ReadonlyMap<string, Uint8Array>, after: ReadonlyMap<string, Uint8Array>): readonly Written[] {
  const [gone, come] = [
    [...before].filter(([path]) => !after.has(path)),
    [...after].filter(([path]) => !before.has(path)),
  ];
  return [
    ...gone.map(([path, bytes]) => ({ path, before: bytes })),
    ...come.map(([path, bytes]) => ({ path, after: digestOfBytes(bytes) })),
  ];
}

function differing(before: readonly Source[], after: readonly Source[]): readonly Written[] {
  const [was, is] = [before, after].map((all) => new Map(all.map(({ path, text }) => [path, text])));
  const paths = new Set([...(was?.keys() ?? []), ...(is?.keys() ?? [])]);
  return [...paths].flatMap((path) => {
    const [a, b] = [was?.get(path), is?.get(path)];
    return a === b || path.startsWith('..')
      ? []
      : [{ path, ...(a !== undefined && { before: a }), ...(b !== undefined && { after: digestOfText(b) }) }];
  });
}

function whatOf(id: string, form: URLSearchParams, standing: Standing): string {
  if (id === 'save') return `saved ${form.get('path') ?? ''}`;
  if (id === 'slip') return 'took in a choice slip';
  const option = form.get('option');
  const [, ...of] = id.split('/');
  const said = ['name', 'more', 'line', 'title', 'note', 'say']
    .map((name) => form.get(name))
    .find((text) => text !== null);
  const title = askNamed(id, standing)?.title.toLowerCase() ?? id;
  return id.startsWith('choose/')
    ? `${option ?? ''} at ${id.slice('choose/'.length)}`
    : `${title}: ${said?.replaceAll(/\s+/gu, ' ').slice(0, 60) ?? of.join('/')}`;
}
