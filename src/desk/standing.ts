import { join } from 'node:path';
import syntaxHighlight from '@11ty/eleventy-plugin-syntaxhighlight';
import { lastIssue, type Book } from '../core/book/index.js';
import type { Source } from '../core/model/index.js';
import { sortProblems, type Problem } from '../base/problem/index.js';
import { inLocale, keepBy, once, usualLocale, type IsoDate } from '../base/units/index.js';
import { bookOf, keepOpen, openHouse, recordsDigest, type LoadedHouse } from '../disk/load/index.js';
import { handoutProblems } from '../handout/index.js';
import { digestOfBytes } from '../signoff/index.js';
import {
  besidePages,
  bookPages,
  makeView,
  type Beside,
  type BookFile,
  type Desk,
  type Page,
  type View,
} from '../site/index.js';
import { packHouse } from '../try/index.js';
import { deskPaths } from './paths.js';
import { watchFolders } from './watch-folders.js';

/** A house as the desk has it now. */
export interface Standing {
  /** One more with every change of the records. */
  readonly number: number;
  readonly on: IsoDate;
  /** The records' text as it lies on disk. */
  readonly sources: readonly Source[];
  readonly problems: readonly Problem[];
  /** What handouts leave out, and what may stand in none: of these records, or of all. */
  readonly handouts: (records?: ReadonlySet<string>) => readonly Problem[];
  /** Of the records where they are sound, else of the last ones that were. */
  readonly view?: View;
  /** Are the pages those of earlier records, since these have errors? */
  readonly isEarlier: boolean;
  /** Text of a file of the book, by its path; undefined where there is none. */
  readonly file: (path: string) => string | undefined;
}

/** Does something in the locale of the house, as far as that is known. */
export function inLocaleOf<T>({ view }: Pick<Standing, 'view'>, work: () => T): T {
  return inLocale(view?.book.house ?? usualLocale, work);
}

type House = NonNullable<LoadedHouse['house']>;

/** What stands above a page of the book. */
type DeskOf = (page: Page, standing: Standing) => Desk;

/** A house that is looked at while it is worked on. */
export interface Watched {
  readonly now: () => Standing;
  /** Reads the records again; the same standing where nothing changed. */
  readonly refresh: () => Promise<Standing>;
  readonly onChange: (tell: (standing: Standing) => void) => () => void;
  /** Ends it, once what is being read is read and kept in the house's folder. */
  readonly close: () => Promise<void>;
}

export async function watchHouse(dir: string, today: () => IsoDate, desk: DeskOf): Promise<Watched> {
  const kept = keepOpen(dir);
  const listeners = new Set<(standing: Standing) => void>();
  const read = async (before: Standing | undefined): Promise<Standing> => {
    const on = today();
    if (before?.on === on && isSame(before.sources, await kept.files())) return before;
    const open = openHouse(dir);
    const current = await open.current();
    const { sources, house } = current;
    // Where the house itself is gone nothing is made, which would be kept there: the folder may come back.
    const { book, problems } = sources.length > 0 ? await bookOf(open, on) : { ...current, book: undefined };
    const number = (before?.number ?? 0) + 1;
    const view = book
      ? makeView(book, { ...besideOf(book), ...(house && { trying: tryingOf(house, book) }) })
      : before?.view;
    const handouts: Standing['handouts'] = (records) => (view ? handoutProblems(view.book, records) : []);
    const isEarlier = !book && view !== undefined;
    const standing = { number, on, sources, problems: sortProblems(problems), handouts, isEarlier };
    const pages = onDemand(() => (view ? bookPages(view, (page) => desk(page, whole)) : []));
    // Pictures are made when one is asked for: most pages show none of them.
    const beside = onDemand(() => (view ? besidePages(view) : []));
    const text = keepBy(
      (path: string) => path,
      (path: string) => textOf(pages().get(path) ?? beside().get(path)),
    );
    const whole: Standing = { ...standing, ...(view && { view }), file: text };
    return whole;
  };
  let standing = await read(undefined);
  let reading = Promise.resolve(standing);
  let isClosed = false;
  const refresh = (): Promise<Standing> => {
    if (isClosed) return reading;
    reading = reading.then(async (before) => {
      // What cannot be read now may be read the next time: what stood stays until then.
      const next = await read(before).catch(() => before);
      standing = next;
      if (next !== before) for (const tell of listeners) tell(next);
      return next;
    });
    return reading;
  };
  const stop = watchFolders(join(dir, 'content'), () => void refresh());
  return {
    now: () => standing,
    refresh,
    onChange: (tell) => {
      listeners.add(tell);
      return () => void listeners.delete(tell);
    },
    close: async () => {
      isClosed = true;
      stop();
      await reading;
      kept.end();
    },
  };
}

/** What is made when it is asked for (`BesideDesk`), and what changed since the last issue, if there is one. */
function besideOf(book: Book): Beside {
  return {
    pdf: 'book.pdf',
    handouts: 'handout/',
    changeOrders: 'change-orders/',
    ...(lastIssue(book) && { comparison: deskPaths.since }),
  };
}

/** The house as choices are tried with: packed when a page first picks. */
function tryingOf(house: House, book: Book): NonNullable<Beside['trying']> {
  const packed = once(() => packHouse({ ...house, snapshot: recordsDigest(book.sources) }, book));
  return {
    get house() {
      return packed();
    },
  };
}

function onDemand(files: () => readonly BookFile[]): () => ReadonlyMap<string, BookFile> {
  return once(() => new Map(files().map((file) => [file.path, file])));
}

function isSame(before: readonly Source[], now: readonly Source[]): boolean {
  if (before === now) return true;
  if (before.length !== now.length) return false;
  // What a command has just written may come in another order than the folder has it.
  const texts = new Map(before.map(({ path, text }) => [path, text]));
  return now.every(({ path, text }) => texts.get(path) === text);
}

function textOf(file: BookFile | undefined): string | undefined {
  return file?.text((language, text) =>
    syntaxHighlight.pairedShortcode(text, language, '', { trim: false, lineSeparator: '\n' }),
  );
}

/** What an editor saw of a record when it was opened. */
export function digestOfText(text: string): string {
  return digestOfBytes(new TextEncoder().encode(text));
}
