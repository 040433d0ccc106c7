import { readFile } from 'node:fs/promises';
import { errorsIn } from '../base/problem/index.js';
import { counted } from '../base/units/index.js';
import { largestRecord } from '../core/records/index.js';
import { diffTexts } from '../disk/history/index.js';
import { oneAtATime, writeAtomically } from '../disk/store/index.js';
import type { Performed } from './performed.js';
import { fileOf } from './journal.js';
import { noRecordWords, type Unsaved } from './record-page.js';
import type { Said } from './said.js';
import { digestOfText, type Standing } from './standing.js';

/** Saves a record's text as it was written, right or wrong, unless it is no longer what the writer saw. What cannot be saved is shown again. */
export async function save(dir: string, form: URLSearchParams, standing: Standing): Promise<Performed> {
  const path = form.get('path') ?? '';
  const written = form.get('text') ?? '';
  const source = standing.sources.find((one) => one.path === path);
  // Only records that are there, inside the house.
  if (!source || path.startsWith('..')) return notSaved(path, { text: written }, noRecordWords(path, standing));
  const file = await fileOf(dir, path);
  return oneAtATime(dir, () => saveIn(file, path, written, form.get('digest') ?? '')).catch((error: unknown) =>
    notSaved(path, { text: written }, refusalWords(error)),
  );
}

async function saveIn(file: string, path: string, written: string, digest: string): Promise<Performed> {
  const theirs = await readFile(file, 'utf8').catch(() => undefined);
  if (theirs === undefined) return notSaved(path, { text: written }, 'The record is gone.');
  const text = withEndsOf(theirs, written);
  if (digestOfText(theirs) !== digest)
    return notSaved(path, await against(theirs, text), 'The record changed on disk since you opened it.');
  if (text === theirs) return { said: { isDone: true, words: 'It says what it said.' } };
  const why = unreadable(text) ?? (await refusedBy(() => writeAtomically(file, text)));
  if (why !== undefined) return notSaved(path, { text }, why);
  return { said: { isDone: true, words: `Saved ${path}` } };
}

async function against(theirs: string, text: string): Promise<Unsaved> {
  const told = await diffTexts([{ from: theirs, to: text }]);
  const [differs] = told.ok ? told.diffs : [];
  return { text, theirs, ...(differs !== undefined && { differs }) };
}

/** A text is saved right or wrong; that it is wrong is said with it. */
export function withErrors(said: Said, path: string, { problems, isEarlier }: Standing): Said {
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
  return write().then(() => undefined, refusalWords);
}

function refusalWords(error: unknown): string {
  const [why] = error instanceof Error ? error.message.split(',') : [];
  return `The disk would not take it${why === undefined ? '' : `: ${why}`}. The record is as it was.`;
}

/** Forms send lines that end in CR LF; a record keeps the ends that it had. */
function withEndsOf(before: string, text: string): string {
  const lines = text.replaceAll('\r\n', '\n').replaceAll('\r', '\n');
  return before.includes('\r\n') ? lines.replaceAll('\n', '\r\n') : lines;
}
