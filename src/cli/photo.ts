import { Command } from 'commander';
import type { Book, BookOption } from '../core/book/index.js';
import type { Option, Records } from '../core/model/index.js';
import { isShared, photoPath, setKeys } from '../core/records/index.js';
import { nearest } from '../base/problem/index.js';
import { joinWords, slugFor } from '../base/units/index.js';
import { readPhoto, type Photo } from '../photo/index.js';
import { digestOfBytes } from '../signoff/index.js';
import { changeRecords, type Change } from './change-records.js';
import type { Console } from './console.js';
import { withHouseOptions, type HouseOptions } from './house-options.js';
import { readNamed } from './read-named.js';
import { UsageError } from './usage-error.js';

interface PhotoOptions extends HouseOptions {
  readonly shows?: string;
  readonly remove?: boolean;
}

const help = `
A JPEG, PNG or WebP. It is copied into photos/, under a name of its own, without place, day and camera.

For example:
  bookmatch photo 'Stone facing' 'Cast ledge' IMG_2041.jpg --shows 'Four courses in the yard, wet'
  bookmatch photo 'Stone facing' 'Cast ledge' --remove
`;

/** `bookmatch photo CATEGORY OPTION FILE --shows WORDS`: puts a photograph to an option, in place of the one that it had. */
export function photo(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('photo'))
    .argument('<category>', 'its category, as a page prints it or by its file name')
    .argument('<option>', 'the option, in the same way')
    .argument('[file]', 'the photograph; absent: the one that is there, with other words')
    .option('--shows <words>', 'what it shows, for whoever does not see it')
    .option('--remove', 'take it away')
    .addHelpText('after', help)
    .action(async (category: string, name: string, file: string | undefined, options: PhotoOptions) => {
      const taken = file === undefined ? undefined : await readTaken(file);
      done(
        await changeRecords(options, console, ({ book, records }) => {
          const named = optionNamed(book, category, name);
          const option = records.options.find((one) => one.slug === named.slug && one.category === named.category);
          if (!option) throw new Error('an option of the Book is in no record');
          if (isShared(option.origin.file))
            throw wrong(`${option.origin.file} is shared with other houses, and is written where it lies`);
          if (options.remove === true) return removed(option, records);
          return put(option, taken, options.shows, records);
        }),
      );
    });
}

async function readTaken(file: string): Promise<Photo> {
  const photo = readPhoto(await readNamed(file, 'the photograph'));
  if (photo.ok) return photo.value;
  throw wrong(`${file}: ${photo.why}${photo.fix === undefined ? '' : `; ${photo.fix}`}`);
}

/** Whoever has the same bytes has the same name: what is at a name never changes. */
function put(option: Option, taken: Photo | undefined, shows: string | undefined, records: Records): Change {
  const before = option.photo;
  const words = (shows ?? before?.shows ?? '').trim().replaceAll(/\s+/gu, ' ');
  if (words === '' || /\p{Cc}/u.test(words)) throw wrong('--shows  say in words what the photograph shows');
  if (!taken && !before) throw wrong(`${option.name} has no photograph: name a file`);
  const file = taken ? `${option.slug}-${digestOfBytes(taken.bytes).slice(0, 8)}.${taken.kind}` : (before?.file ?? '');
  const [width, height] = taken ? [taken.width, taken.height] : [before?.width, before?.height];
  const come = new Map(taken ? [[photoPath(option.origin.file, file), taken.bytes] as const] : []);
  return {
    written: [withPhoto(option, { file, shows: words, width, height }, records)],
    tells: `${option.name}: ${words}`,
    already: `${option.name}: that is its photograph already.`,
    files: { come, go: before && before.file !== file ? unusedBy(option, before.file, records) : [] },
  };
}

function removed(option: Option, records: Records): Change {
  return {
    written: [withPhoto(option, undefined, records)],
    tells: `${option.name}: no photograph any more.`,
    already: `${option.name}: there is no photograph.`,
    files: { come: new Map(), go: option.photo ? unusedBy(option, option.photo.file, records) : [] },
  };
}

function withPhoto({ origin }: Option, photo: object | undefined, { sources }: Records): Change['written'][number] {
  const text = sources.find(({ path }) => path === origin.file)?.text ?? '';
  return {
    path: origin.file,
    text: setKeys(text, [{ in: [], values: { photo }, after: ['swatch', 'summary', 'name'] }]),
  };
}

/** The path of a file that an option leaves, unless another one shows it as well. */
function unusedBy({ slug, category, origin }: Option, file: string, { options }: Records): readonly string[] {
  const isUsed = options.some((one) => one.category === category && one.slug !== slug && one.photo?.file === file);
  return isUsed ? [] : [photoPath(origin.file, file)];
}

function optionNamed({ categories, options }: Book, category: string, name: string): BookOption {
  const isIt = (word: string, one: { readonly slug: string; readonly name: string }): boolean =>
    [one.slug, slugFor(one.name)].includes(slugFor(word));
  const of = categories.find((one) => isIt(category, one));
  if (!of) throw unknown('category', category, categories);
  const own = options.filter((one) => one.category === of.slug);
  const found = own.find(({ slug }) => slug === name) ?? own.find((one) => isIt(name, one));
  if (!found) throw unknown(`option of ${of.name}`, name, own);
  return found;
}

function unknown(
  what: string,
  word: string,
  all: readonly { readonly name: string; readonly slug: string }[],
): UsageError {
  const names = all.map(({ name }) => name);
  const meant = nearest(word, [...names, ...all.map(({ slug }) => slug)]);
  return wrong(
    `there is no ${what} '${word}': ${meant === undefined ? `there is ${joinWords(names)}` : `did you mean '${meant}'?`}`,
  );
}

function wrong(why: string): UsageError {
  return new UsageError(`${why}${why.endsWith('?') ? '' : '.'} Nothing was written.`);
}
