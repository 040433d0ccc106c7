import { didYouMean, problemIn, type Outcome, type Problem, type ProblemCode } from '../../base/problem/index.js';
import { slugFor } from '../../base/units/index.js';
import type { Source } from '../model/index.js';

export type RecordKind =
  'house' | 'rooms' | 'options' | 'categories' | 'trades' | 'alternatives' | 'price-lists' | 'changes' | 'issues';

/** What a record is, told by its folder and file name. */
export interface RecordPath {
  readonly kind: RecordKind;
  readonly slug: string;
  /** Of an option: its category. */
  readonly category?: string;
}

const folders = [
  'rooms',
  'options',
  'categories',
  'trades',
  'alternatives',
  'price-lists',
  'changes',
  'issues',
] as const;
/** Records whose name is their number. */
const numbered: readonly RecordKind[] = ['changes', 'issues'];
const slugForm = /^[a-z0-9]+(?:-[a-z0-9]+)*$/u;
const numberForm = /^(?!000)\d{3}$/u;

/** Number and folder of a numbered record by its path; undefined for any other. */
export function readNumbered(
  path: string,
): { readonly folder: 'issues' | 'changes'; readonly number: number } | undefined {
  const [, folder, number] = /^content\/(issues|changes)\/(\d{3})\.md$/u.exec(path) ?? [];
  return number === undefined ? undefined : { folder: folder as 'issues' | 'changes', number: Number(number) };
}

/** What a numbered record is of, by its lines: an issue its digest, a change order its versions. Its state may go on. */
export function identityOf(lines: readonly string[]): string {
  return lines.filter((line) => /^(digest|from|to): /u.test(line)).join('\n');
}

/** Folders of records that a shared folder has. */
export const sharedKinds = ['options', 'categories', 'trades', 'price-lists'] as const;

/** The path that a record of a shared folder would have in the house: `content/options/floor/oak.md` for `../our-book/options/floor/oak.md`.
 *  Any other path is its own. */
export function pathInHouse(path: string): string {
  if (!isShared(path)) return path;
  const [, own] = /^\.\.\/.*?\/((?:options|categories|trades|price-lists)\/.+)$/u.exec(path) ?? [];
  return own === undefined ? path : `content/${own}`;
}

/** Where a photograph of an option lies, by the path of the option's record: `photos/floor/oak.jpg`, `../our-book/photos/floor/oak.jpg`. */
export function photoPath(record: string, file: string): string {
  return record.replace(
    /(?:^content\/|(?<=\/))options\/([^/]+)\/[^/]+$/u,
    (_, category: string) => `photos/${category}/${file}`,
  );
}

/** Is it the path of a record in a shared folder? */
export function isShared(path: string): boolean {
  return path.startsWith('../');
}

/** Tells a record's kind and slug by its path. */
export function readPath(source: Source): Outcome<RecordPath> {
  const [root, folder = '', ...rest] = pathInHouse(source.path).split('/');
  const refuse = (code: ProblemCode, message: string, fix: string): Outcome<RecordPath> => ({
    problems: [pathProblem(source, code, message, fix)],
  });
  if (root !== 'content')
    return refuse('file-unknown', 'records live in content/', 'move the file into content/, or leave it out');
  if (rest.length === 0 && folder === 'house.md') return { value: { kind: 'house', slug: 'house' }, problems: [] };
  const known = folders.find((name) => name === folder);
  if (rest.length === 0) {
    const fix =
      didYouMean(folder, ['house.md']) ??
      'only house.md stands in content/ itself; drawings and papers go outside content/';
    return refuse('file-unknown', `no record is named ${folder}`, fix);
  }
  if (!known) {
    const fix = didYouMean(folder, folders) ?? `folders are ${folders.join(', ')}`;
    return refuse('folder-unknown', `content/ has no folder '${folder}'`, fix);
  }
  const file = rest[rest.length - 1] ?? '';
  const bare = file.replace(/\.(?:md|markdown|mdown|txt|md\.txt)$/iu, '');
  const isRecord = file === `${bare}.md`;
  if (bare === file)
    return refuse('file-unknown', `'${file}' is not a record`, 'a record is a Markdown file: its name ends in .md');
  if (rest.length !== (known === 'options' ? 2 : 1)) {
    const fix =
      known === 'options'
        ? 'options live in content/options/<category>/'
        : `these records live in content/${known}/ itself`;
    return refuse('file-misplaced', `'${file}' is in the wrong folder`, fix);
  }
  if (!isRecord) {
    const ending = refuse(
      'file-unknown',
      `'${file}' is not a record`,
      `a record's name ends in .md: ${slugFor(bare)}.md`,
    );
    return { ...ending, value: meantPath(known, bare, rest) };
  }
  const slug = bare;
  if (numbered.includes(known) && !numberForm.test(slug))
    return refuse('number-form', `'${slug}' is not a number`, `name it by its number, such as content/${known}/003.md`);
  const [category] = known === 'options' ? rest : [];
  for (const name of [slug, ...(category === undefined ? [] : [category])]) {
    if (!slugForm.test(name)) {
      const refused = refuse('slug-form', `'${name}' is not a slug`, slugFix(name, name === slug ? '.md' : ''));
      return slugFor(slug) === '' ? refused : { ...refused, value: meantPath(known, slug, rest) };
    }
  }
  return { value: { kind: known, slug, ...(category !== undefined && { category }) }, problems: [] };
}

/** What a record is that is there under a name that is slightly wrong: what refers to it is then no problem of its own. */
function meantPath(kind: (typeof folders)[number], name: string, rest: readonly string[]): RecordPath {
  const [category] = kind === 'options' ? rest : [];
  return { kind, slug: slugFor(name), ...(category !== undefined && { category: slugFor(category) }) };
}

/** Files of one wrong folder make one problem. */
export function oncePerFolder(problems: readonly Problem[]): readonly Problem[] {
  const seen = new Set<string>();
  return problems.filter(({ code, message }) => {
    if (code !== 'folder-unknown') return true;
    return seen.has(message) ? false : seen.add(message);
  });
}

function pathProblem(source: Source, code: ProblemCode, message: string, fix: string): Problem {
  // The file's text has nothing to do with it, so no line of it is shown.
  return problemIn({ file: source.path, text: '' }, { line: 1, column: 1 }, code, message, { fix });
}

function slugFix(name: string, ending: string): string {
  const meant = slugFor(name);
  return meant === '' ? 'name it in small letters, digits and single hyphens' : `name it ${meant}${ending}`;
}

/** The name of a record's file without its ending: of `content/rooms/great-room.md`, `great-room`. */
export function slugOfPath(path: string): string {
  return path.split('/').at(-1)?.replace(/\.md$/u, '') ?? '';
}
