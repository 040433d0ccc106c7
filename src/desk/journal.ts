import { readFile, realpath, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Source } from '../core/model/index.js';
import { photoPath } from '../core/records/index.js';
import { readFileInside, writeAtomically } from '../disk/store/index.js';
import { digestOfBytes } from '../signoff/index.js';
import { choiceText } from '../table/index.js';
import { askNamed } from './ask-named.js';
import type { LastDone, Said } from './said.js';
import { digestOfText, inLocaleOf, type Standing } from './standing.js';

export interface Done extends LastDone {
  readonly files: readonly Written[];
}

/** A file that was written: what it was, as a text or, of a photograph, as bytes, and the digest of what it is; absent where there was or is none. */
export interface Written {
  readonly path: string;
  readonly before?: string | Uint8Array;
  readonly after?: string;
}

/** Puts back what was done last, unless it was changed since. */
export async function undo(dir: string, journal: Done[], form: URLSearchParams): Promise<Said> {
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

/** A link to a record stays a link: what it leads to is written. */
export function fileOf(dir: string, path: string): Promise<string> {
  return realpath(join(dir, path)).catch(() => join(dir, path));
}

/** The photograph of the option that a form is about, by its path; empty for any other form. */
export async function photosOf(dir: string, id: string, { view }: Standing): Promise<ReadonlyMap<string, Uint8Array>> {
  const [kind, ...of] = id.split('/');
  const option = kind === 'photo' || kind === 'no-photo' ? view?.optionById(of.join('/')) : undefined;
  if (!option?.photo) return new Map();
  const path = photoPath(option.source, option.photo.file);
  const bytes = await readFileInside(dir, path);
  return new Map(bytes ? [[path, bytes]] : []);
}

/** Files that came, and files that went. */
export function moved(
  before: ReadonlyMap<string, Uint8Array>,
  after: ReadonlyMap<string, Uint8Array>,
): readonly Written[] {
  const [gone, come] = [
    [...before].filter(([path]) => !after.has(path)),
    [...after].filter(([path]) => !before.has(path)),
  ];
  return [
    ...gone.map(([path, bytes]) => ({ path, before: bytes })),
    ...come.map(([path, bytes]) => ({ path, after: digestOfBytes(bytes) })),
  ];
}

export function differing(before: readonly Source[], after: readonly Source[]): readonly Written[] {
  const [was, is] = [before, after].map((all) => new Map(all.map(({ path, text }) => [path, text])));
  const paths = new Set([...(was?.keys() ?? []), ...(is?.keys() ?? [])]);
  return [...paths].flatMap((path) => {
    const [a, b] = [was?.get(path), is?.get(path)];
    return a === b || path.startsWith('..')
      ? []
      : [{ path, ...(a !== undefined && { before: a }), ...(b !== undefined && { after: digestOfText(b) }) }];
  });
}

/** What a form did, in the words that it had. */
export function whatOf(id: string, form: URLSearchParams, standing: Standing): string {
  if (id === 'save') return `saved ${form.get('path') ?? ''}`;
  if (id === 'slip') return 'took in a choice slip';
  const ask = askNamed(id, standing);
  if (!ask) return id;
  const place = placeOf(id, standing);
  const filled = ask.fields.find(({ name, kind }) => kind !== 'picked' && form.get(name));
  const value = form.get(filled?.name ?? '') ?? '';
  const words = filled?.choices?.find((choice) => choice.value === value)?.label ?? value;
  const said = words.replaceAll(/\s+/gu, ' ').slice(0, 60);
  return [place === undefined ? ask.title : `${ask.title}, ${place}`, said].filter((text) => text !== '').join(': ');
}

/** The place or the thing that a form is of, as pages name it. */
function placeOf(id: string, standing: Standing): string | undefined {
  const { view } = standing;
  const of = id.split('/').slice(1).join('/');
  if (!view || of === '') return undefined;
  if (view.selection(of)) return inLocaleOf(standing, () => choiceText(of, view));
  return view.room(of)?.name ?? view.optionById(of)?.name;
}
