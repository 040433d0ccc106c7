import { errorsIn, newProblems } from '../base/problem/index.js';
import { counted } from '../base/units/index.js';
import type { Comparison } from '../core/compare/index.js';
import { workingTree } from '../disk/history/index.js';
import { oneAtATime } from '../disk/store/index.js';
import { committing } from './ask-agree.js';
import { askNamed } from './ask-named.js';
import { wordsOf, type Ask } from './ask.js';
import { differing, moved, photosOf, undo, whatOf, type Done, type Written } from './journal.js';
import type { Performed, SlipPart } from './performed.js';
import type { Posted } from './posted.js';
import type { LastDone, Said } from './said.js';
import { save, withErrors } from './save-record.js';
import type { Standing, Watched } from './standing.js';

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
  /** What the records on disk change against a version; undefined where that cannot be told. */
  readonly difference: (from: string) => Promise<Comparison | undefined>;
}

/** What of a slip is meant, and whether it is written. */
export interface TakingIn {
  readonly what: SlipPart;
  readonly isWritten: boolean;
}

export interface Act {
  /** One after the other: two forms that come at once never write into each other. */
  readonly perform: (form: URLSearchParams, file?: Uint8Array) => Promise<Performed>;
  readonly lastDone: () => LastDone | undefined;
  readonly unrecorded: () => Promise<{ readonly changed?: readonly string[]; readonly difference?: Comparison }>;
  /** What changed since an issue. */
  readonly since: (issue: number) => Promise<Comparison | undefined>;
  /** When all that was begun is done. */
  readonly ended: () => Promise<unknown>;
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
    const said = performed.said.isDone ? withNews(performed.said, before, after, files) : performed.said;
    if (!isTakenBack(id, done, performed)) return { ...performed, said };
    count += 1;
    journal.push(done);
    if (journal.length > mostUndone) journal.shift();
    const { number, what } = done;
    return {
      ...performed,
      said: { ...(id === 'save' ? withErrors(said, form.get('path') ?? '', after) : said), undo: { number, what } },
    };
  };
  return {
    perform: (form, file) => inTurn(() => perform(form, file)),
    since: (issue) => means.difference(`issue-${issue}`),
    ended: () => line,
    lastDone: () => journal.at(-1),
    unrecorded: async () => {
      const tree = await workingTree(dir);
      if (!tree.ok) return {};
      const difference = tree.changed.length > 0 ? await means.difference('HEAD') : undefined;
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
  const nothing = nothingPicked(ask, form);
  if (nothing !== undefined) return { said: { isDone: false, words: nothing } };
  const filled = new URLSearchParams(form);
  // What the form is about stands in the form's own name, and is never taken from what was sent.
  for (const { name, kind, value = '' } of ask.fields) if (kind === 'picked') filled.set(name, value);
  // Where a file lies is nobody's to say.
  for (const { name } of ask.fields.filter(({ kind }) => kind === 'file')) filled.delete(name);
  const later = ask.fields.find(({ name, latest }) => latest !== undefined && (filled.get(name) ?? '') > latest);
  if (later) return { said: { isDone: false, words: `'${later.label}' is a day that has not come yet.` } };
  // A browser asks for no tick; what a command takes where nothing is said is nobody's answer here.
  const unticked = ask.fields.find(
    ({ kind, name, isOptional }) => kind === 'several' && isOptional !== true && !filled.has(name),
  );
  if (unticked) return { said: { isDone: false, words: `'${unticked.label}': tick one at least.` } };
  const run = async (): Promise<Said> => {
    const said = inWordsOf(ask, await means.run(wordsOf(ask, filled)));
    return said.isDone && ask.shown ? { ...said, shown: ask.shown } : said;
  };
  if (!file) return { said: await run() };
  return means.withFile(file, async (path) => {
    for (const { name } of ask.fields.filter(({ kind }) => kind === 'file')) filled.set(name, path);
    const said = await run();
    return { said: { ...said, words: said.words.replaceAll(path, 'The photograph') } };
  });
}

/** That a form of a choice asks for what stands; undefined where it asks for another. */
function nothingPicked({ chooses, was, fields }: Ask, form: URLSearchParams): string | undefined {
  if (chooses === undefined || form.get('option') !== was) return undefined;
  const name = fields.flatMap(({ choices = [] }) => choices).find(({ value }) => value === was)?.label;
  const stands = was === 'open' ? 'The choice is open, as it was' : `${name ?? was ?? ''} is chosen already`;
  return `Nothing else was picked. ${stands}: pick what shall stand there, then write the choice.`;
}

/** What a command says of its flags, said of the fields of the form that filled them. */
function inWordsOf({ fields }: Ask, said: Said): Said {
  const labels = new Map(fields.map(({ as, label }) => [as as string, label]));
  const words = said.words.replaceAll(/(?<![\w-])(--[a-z][a-z-]*)( {2})?/gu, (all, flag: string, gap?: string) => {
    const label = labels.get(flag);
    if (label === undefined || label === '') return all;
    return gap === undefined ? `'${label}'` : `'${label}': `;
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
      said: { ...said, isWhole: true, ...(isPart && { head: 'What could be taken is written, the rest is not.' }) },
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

/** What the house and the handouts say to what was written, and did not say before. */
function withNews(said: Said, before: Standing, after: Standing, written: readonly Written[]): Said {
  const records = new Set(written.map(({ path }) => path));
  const leftOut = after.handouts(records);
  const leftOutBefore = leftOut.length === 0 ? [] : before.handouts(records);
  const news = newProblems([...before.problems, ...leftOutBefore], [...after.problems, ...leftOut]);
  return news.length === 0 ? said : { ...said, news };
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
